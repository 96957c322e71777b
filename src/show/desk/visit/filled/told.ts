import type { Action } from "../../../../link/edit/action.ts";
import { folded } from "../../../../link/dimension.ts";
import type { Graph } from "../../../../link/graph.ts";
import { say } from "../../../../base/text/said/said.ts";
import type { VisitAsked } from "../asked.ts";
import { measurableIn } from "../sheet/keys.ts";
import { unitFor } from "../sheet/units.ts";
import { actionFor } from "./action.ts";
import { isTouched, nearestOf } from "./filled.ts";
import type { Filled, MeasuredFields } from "./filled.ts";
import { readingsTold } from "./readings.ts";
import type { ReadingsTold } from "./readings.ts";
import { recordsFor } from "./records.ts";
import type { Coming } from "./records.ts";
import { isOpenThing } from "./signable.ts";
import { signedBy } from "./who.ts";
import type { HeadTrouble } from "./who.ts";

/** What was filled in on a visit comes to, as the corpus now is. */
export interface VisitTold {
  /** By the keys of the rows in which something was written. */
  readonly measured: Readonly<Record<string, ReadingsTold>>;
  readonly head: readonly HeadTrouble[];
  /** Rows that say nothing new: the same person has the same value of the same day in the corpus. */
  readonly already: readonly string[];
  readonly coming: Coming["counts"];
  /** How many rows cannot come in as they are. */
  readonly bad: number;
  /** What is to be done to the corpus, as one step; null where nothing would come in. */
  readonly action: Action | null;
}

/** Reads what was filled in, sums the readings up, and says what it adds to the corpus. */
export function visitTold(graph: Graph, asked: VisitAsked, filled: Filled): VisitTold {
  const { signed, troubles } = signedBy(graph, filled);
  const rows = Object.entries(filled.measured).filter(([, fields]) => isTouched(fields));
  const measured = rows.map(([key, fields]) => [key, readingsIn(graph, key, fields, filled)] as const);
  const good = measured.flatMap(([key, told]) => (told.value === null ? [] : [[key, told] as const]));
  const coming = signed && recordsFor(graph, { filled, signed, measured: good });
  const bad = measured.filter(([, told]) => told.troubles.length > 0).length;
  return {
    measured: Object.fromEntries(measured),
    head: troubles,
    already: coming?.already ?? [],
    coming: coming?.counts ?? { measurements: 0, observations: 0, images: 0, arguments: 0 },
    bad,
    action: coming && signed ? actionFor(graph, asked, coming, signed.day) : null,
  };
}

function readingsIn(graph: Graph, key: string, fields: MeasuredFields, filled: Filled): ReadingsTold {
  const about = measurableIn(key);
  if (!about || !isOpenThing(graph, about.of)) {
    const message = say`Unknown thing in a row of the sheet, expected one that the corpus has`;
    const troubles = [{ at: null, message, fix: null }];
    return { troubles, readings: [], value: null, quantity: null, nearest: "", summary: null };
  }
  const dimension = graph.dimensionName(about.dimension);
  const kind = graph.dimensionKind(dimension);
  const told = readingsTold(fields.readings, {
    context: graph.settings.quantities,
    kind,
    unit: fields.unit === "" ? unitFor(kind, []) : fields.unit,
    nearest: nearestOf(fields, filled),
    own: fields.nearest.trim() !== "",
  });
  const { quantity } = told;
  const anySign = graph.settings.dimensions.some(
    (one) => one.anySign && folded(one.name) === folded(dimension),
  );
  const sized = quantity?.kind === "length" || quantity?.kind === "mass";
  if (quantity === null || !sized || anySign || quantity.value > 0) return told;
  const message = say`Unexpected \`${told.value ?? ""}\`, expected a value above 0`;
  return { ...told, value: null, troubles: [{ at: null, message, fix: null }] };
}
