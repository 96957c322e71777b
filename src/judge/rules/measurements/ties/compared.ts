import type { Id } from "../../../../base/finding.ts";
import { commonError } from "../../../../base/outcome/propagation.ts";
import { ownU } from "../../../../derive/prepare/select.ts";
import type { Selected } from "../../../../derive/prepare/select.ts";
import type { Graph } from "../../../../link/graph.ts";
import type { Measured } from "../../../../plugin.ts";
import { alteredBetween } from "../compare.ts";
import type { Member, Taking, Tied } from "./tied.ts";

/** A dimension with what is taken of it. */
export interface Given extends Member {
  readonly measured: Measured;
  readonly ids: readonly Id[];
}

/** A value that others give, in SI, with its standard uncertainty, errors they share in it; `open` where it is only a bound. */
export interface FromOthers {
  readonly value: number;
  readonly u: number;
  readonly open: "more" | "less" | null;
}

/** A dimension beside what it should equal, in SI. */
export interface Compared {
  readonly tied: Tied;
  readonly whole: Given;
  readonly others: readonly Given[];
  readonly expected: FromOthers;
  /** The dimension less what the others give. */
  readonly by: number;
  /** Twice the combined standard uncertainty, reproducibility included. */
  readonly allowed: number;
  /** They differ by more than is allowed; of a bound, they lie wholly on its wrong side. */
  readonly disagrees: boolean;
}

/**
 * A dimension held against what it should equal, by linear propagation (GUM 5.1.2, 5.2.2: what names one cause is fully
 * correlated). Null where one of them is not measured, where bounds leave everything open, or where a thing was altered
 * between the years of two of the measurements.
 */
export function comparedIn(graph: Graph, tied: Tied, taking: Taking): Compared | null {
  const whole = given(tied.whole, taking);
  const others = allGiven(tied.others, taking);
  if (whole === null || others === null || isAltered(graph, [whole, ...others])) return null;
  const expected = sumOf(others);
  const difference = sumOf([whole, ...others.map(turned)]);
  if (expected === null || difference === null) return null;
  const r = graph.settings.reproducibility;
  const repeated = [whole, ...others].map(({ factor, measured }) => r * factor * measured.quantity.value);
  const bounds = [whole, ...others].map((one) => one.factor * errorOfBound(graph, one));
  const allowed = 2 * Math.hypot(difference.u, ...bounds, ...repeated);
  const { value: by, open } = difference;
  const most = allowed * (1 + dust);
  const disagrees = (open !== "more" && -by > most) || (open !== "less" && by > most);
  return { tied, whole, others, expected, by, allowed, disagrees };
}

/** What sums of binary fractions may be off by, as a share: a difference of just what is allowed is none. */
const dust = 1e-9;

/** Standard uncertainty with which what is preserved was measured: as a bound it has none of its own. */
function errorOfBound(graph: Graph, { measured, ids }: Given): number {
  if (measured.quantity.u !== null) return 0;
  const records = ids.map((id) => graph.records.get(id));
  return Math.max(...records.map((one) => (one?.list === "measurements" ? (ownU(one) ?? 0) : 0)));
}

/** What is taken of each dimension; null where of one there is nothing. */
export function allGiven(members: readonly Member[], taking: Taking): readonly Given[] | null {
  const all = members.map((member) => given(member, taking));
  const found = all.filter((one) => one !== null);
  return found.length === all.length ? found : null;
}

function given(member: Member, taking: Taking): Given | null {
  const taken: Selected | null = taking(member);
  return taken === null ? null : { ...member, measured: taken.measured, ids: taken.ids };
}

/** The same, taken away. */
export function turned(one: Given): Given {
  return { ...one, factor: -one.factor };
}

/** A sum of measured dimensions; null where bounds leave it open at both ends. */
export function sumOf(members: readonly Given[]): FromOthers | null {
  let [up, down] = [false, false];
  for (const { factor, measured } of members) {
    const { form } = measured.quantity;
    up ||= form === (factor > 0 ? "at-least" : "at-most");
    down ||= form === (factor > 0 ? "at-most" : "at-least");
  }
  if (up && down) return null;
  const amounts = members.map(({ factor, measured }) => factor * measured.quantity.value);
  const common = commonError(
    members.map(({ measured }, at) => ({ power: amounts[at] ?? 0, shared: measured.quantity.shared })),
  );
  return {
    value: amounts.reduce((sum, one) => sum + one, 0),
    u: Math.hypot(common, ...members.map(({ factor, measured }) => factor * (measured.quantity.u ?? 0))),
    open: up ? "more" : down ? "less" : null,
  };
}

/** Whether any of the things was altered between the years of two of the measurements taken. */
export function isAltered(graph: Graph, members: readonly Given[]): boolean {
  const records = members.flatMap(({ ids }) =>
    ids.flatMap((id) => {
      const record = graph.records.get(id);
      return record?.list === "measurements" ? [record] : [];
    }),
  );
  return records.some((one, at) => records.slice(at + 1).some((other) => alteredBetween(one, other, graph)));
}
