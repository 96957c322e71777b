import type { Id } from "../../../../base/finding.ts";
import { byText } from "../../../../base/order.ts";
import { folded } from "../../../../link/dimension.ts";
import type { Graph } from "../../../../link/graph.ts";
import { labelText } from "../../../../link/names/label.ts";
import type { InputDeclaration } from "../../../../plugin.ts";
import { withheldIn } from "../../../withhold.ts";
import type { Choice } from "./choice.ts";
import { say } from "../../../../base/text/said/said.ts";
import type { Text } from "../../../../base/text/said/said.ts";

/** The artefacts that have something an input takes, in themselves or in a part, in the order of the corpus. */
export function thingsFor(graph: Graph, { kind, takesObservations }: InputDeclaration): readonly Choice[] {
  const withheld = withheldIn(graph);
  const measured = kind === "measurements" ? graph.list("measurements").map(({ values }) => values.of) : [];
  const seen =
    kind === "observations" || takesObservations === true
      ? graph.list("observations").flatMap(({ values }) => values.of)
      : [];
  const having = new Set<Id>();
  for (const thing of [...measured, ...seen]) {
    for (let at: Id | undefined = thing; at !== undefined && !having.has(at); at = graph.wholeOf.get(at))
      having.add(at);
  }
  return graph
    .list("artefacts")
    .filter(({ id }) => !withheld(id) && (kind === "dates" || having.has(id)))
    .map(({ id }) => ({ value: id, text: thingText(graph, id) }));
}

/** A part is told with its whole. */
export function thingText(graph: Graph, id: Id): Text {
  const whole = graph.wholeOf.get(id);
  const own = labelText(graph, id);
  return whole === undefined || withheldIn(graph)(whole) ? own : say`${own} (${labelText(graph, whole)})`;
}

/** The dimensions that were measured of some things and their parts, or of anything where none is named. */
export function dimensionsOf(graph: Graph, things: readonly Id[]): readonly Choice[] {
  const withheld = withheldIn(graph);
  const meant = meantBy(graph, things);
  const measured = graph.list("measurements").filter(({ id, values }) => meant(values.of) && !withheld(id));
  return named(measured.map(({ values }) => graph.dimensionName(values.dimension)));
}

/** The kinds of trace that were seen or looked for on some things and their parts, or on anything. */
export function featuresOf(graph: Graph, things: readonly Id[]): readonly Choice[] {
  const withheld = withheldIn(graph);
  const meant = meantBy(graph, things);
  const seen = graph.list("observations").filter(({ id, values }) => values.of.some(meant) && !withheld(id));
  return named(
    seen.flatMap(({ values }) => (values.feature === undefined ? [] : [graph.featureName(values.feature)])),
  );
}

function meantBy(graph: Graph, things: readonly Id[]): (thing: Id) => boolean {
  if (things.length === 0) return () => true;
  const all = new Set(things.flatMap((thing) => graph.withParts(thing)));
  return (thing) => all.has(thing);
}

/** Each name once, by its alphabet, with how many there are. */
function named(names: readonly string[]): readonly Choice[] {
  const counts = new Map<string, { readonly name: string; n: number }>();
  for (const name of names) {
    const known = counts.get(folded(name));
    if (known) known.n += 1;
    else counts.set(folded(name), { name, n: 1 });
  }
  return [...counts.values()]
    .toSorted((a, b) => byText(a.name, b.name))
    .map(({ name, n }) => ({ value: name, text: `${name} (${n})` }));
}
