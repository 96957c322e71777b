import type { Id } from "../../base/finding.ts";
import type { Text } from "../../base/text/said/said.ts";
import type { Plan, Planned } from "../../plan/plan.ts";
import { permitsOf } from "../../plan/visit/cautions.ts";
import { askedOf } from "../../plan/visit/trips.ts";
import { named } from "../judged/standpoints/named.ts";
import type { Named } from "../judged/standpoints/named.ts";
import { toldOnce } from "./line.ts";
import type { Lines } from "./line.ts";
import { bitsFigure, costInWords } from "./wording.ts";

/** What can be looked at with one keeper, what uses nothing up first. */
export interface TripTable {
  /** Null where the record names nobody to ask. */
  readonly keeper: string | null;
  readonly rows: readonly TripRow[];
  /** The sum of the costs that are known. */
  readonly cost: string | null;
  readonly uncosted: number;
  /** What so many of them are expected to tell together of a question, in bits: less than each by itself, added up. */
  readonly together: { readonly count: number; readonly bits: string; readonly question: Named } | null;
}

/** One look of a trip. */
export interface TripRow {
  readonly id: Id;
  readonly method: Text;
  readonly things: readonly Named[];
  readonly destructive: boolean;
  readonly permits: readonly string[];
  readonly leadTimes: readonly string[];
  readonly cost: string | null;
}

/** The trips of a plan, a table for each keeper. */
export function tripTables(lines: Lines, { recorded, trips }: Plan): readonly TripTable[] {
  const byId = new Map(recorded.map((one) => [one.examination.id, one]));
  return trips.map(({ keeper, examinations, cost, uncosted, together }) => ({
    keeper,
    rows: examinations.flatMap((id) => byId.get(id) ?? []).map((one) => tripRow(lines, one, keeper)),
    cost: costInWords(cost, lines.costsIn),
    uncosted,
    together: together && {
      count: together.examinations.length,
      bits: bitsFigure(together.bits),
      question: named(lines.graph, together.question),
    },
  }));
}

function tripRow({ graph, methodOf, costsIn }: Lines, planned: Planned, keeper: string | null): TripRow {
  const { examination } = planned;
  const places = planned.places.filter((one) => askedOf(one) === keeper);
  return {
    id: examination.id,
    method: methodOf(examination.id),
    things: places.map((one) => named(graph, one.artefact)),
    destructive: examination.destructive,
    permits: toldOnce(permitsOf(examination, places)),
    leadTimes: [...new Set(places.flatMap((one) => one.leadTime ?? []))],
    cost: costInWords(examination.cost, costsIn),
  };
}
