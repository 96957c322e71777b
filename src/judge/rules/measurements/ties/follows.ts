import type { Id } from "../../../../base/finding.ts";
import type { Graph } from "../../../../link/graph.ts";
import { allGiven, isAltered, sumOf } from "./compared.ts";
import type { Given } from "./compared.ts";
import { partsByWhole, takingOf, tiesOf } from "./tied.ts";
import type { Tied } from "./tied.ts";

/** What a dimension that nobody measured comes to by a tie, in SI with its standard uncertainty, and the dimensions that give it. */
export interface Following {
  readonly value: number;
  readonly u: number;
  readonly from: readonly Given[];
}

/** Tells what an unmeasured dimension of a thing comes to by measured ones; it is no measurement and enters nothing. */
export function followsIn(
  graph: Graph,
  counts: (id: Id) => boolean,
): (thing: Id, dimension: string) => Following | null {
  if (graph.ties.length === 0) return () => null;
  const taking = takingOf(graph, counts);
  const parts = partsByWhole(graph);
  return (thing, dimension) => {
    const whole = graph.wholeOf.get(thing);
    const things = whole === undefined ? [thing] : [thing, whole];
    for (const tied of things.flatMap((one) => tiesOf(graph, one, parts.get(one) ?? []))) {
      const found = solved(graph, tied, { thing, dimension }, taking);
      if (found !== null) return found;
    }
    return null;
  };
}

function solved(
  graph: Graph,
  { whole, others }: Tied,
  wanted: { readonly thing: Id; readonly dimension: string },
  taking: ReturnType<typeof takingOf>,
): Following | null {
  const all = [whole, ...others.map((one) => ({ ...one, factor: -one.factor }))];
  const own = all.find((one) => one.thing === wanted.thing && one.dimension === wanted.dimension);
  if (own === undefined) return null;
  const rest = all.filter((one) => one !== own).map((one) => ({ ...one, factor: -one.factor / own.factor }));
  const from = allGiven(rest, taking);
  const sum = from === null || isAltered(graph, from) ? null : sumOf(from);
  if (from === null || sum === null || sum.open !== null) return null;
  const kind = graph.dimensionKind(wanted.dimension) ?? from[0]?.measured.quantity.kind;
  const signed = graph.settings.dimensions.some((one) => one.name === wanted.dimension && one.anySign);
  if ((kind === "length" || kind === "mass") && !signed && !(sum.value > 0)) return null;
  return { value: sum.value, u: sum.u, from };
}
