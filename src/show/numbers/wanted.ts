import type { Id } from "../../base/finding.ts";
import { say } from "../../base/text/said/said.ts";
import type { Text } from "../../base/text/said/said.ts";
import { fieldsOf, membersOf, textOf } from "../../base/json.ts";
import type { Json } from "../../base/json.ts";
import type { Derived } from "../../derive/derived/derived.ts";
import { folded } from "../../link/dimension.ts";
import type { DerivationRecord, Graph } from "../../link/graph.ts";
import { labelText } from "../../link/names/label.ts";
import { followsIn } from "../../judge/rules/measurements/ties/follows.ts";
import { few } from "../../base/text/said/rows.ts";
import type { Plugin } from "../../plugin.ts";
import { sizeWords } from "../artefacts/si-words.ts";
import { withheldIn } from "../withhold.ts";

/** A dimension that nobody measured, and that would enter a number if somebody did. */
export interface WantedLine {
  readonly thing: { readonly id: Id; readonly text: Text };
  readonly dimension: string;
  /** What is measured of the same kind: the counterpart it would be paired with; null for one of a row. */
  readonly counterpart: { readonly id: Id; readonly text: Text } | null;
  /** What it comes to exactly by measured dimensions, which it does not enter with; null where it does not follow. */
  readonly follows: { readonly from: Text; readonly size: string } | null;
}

/**
 * What could be measured for a number: what a measured dimension lacks as its counterpart, and the things of a selection
 * that are of the same kind as those measured, part of the same whole, and have no such measurement.
 */
export function wantedFor(
  graph: Graph,
  record: DerivationRecord,
  derived: Derived,
  plugin: Plugin | undefined,
  counts: (id: Id) => boolean = () => true,
): readonly WantedLine[] {
  if (plugin === undefined || (derived.status !== "computed" && derived.status !== "refused")) return [];
  const withheld = withheldIn(graph);
  const measured = dimensionsMeasured(graph);
  const lines = plugin.inputs.flatMap(({ name, kind, pairedWith }): readonly Wanting[] => {
    const selection = selectionOf(graph, record, name);
    if (kind !== "measurements" || selection === null) return [];
    const other = pairedWith ?? plugin.inputs.find((one) => one.pairedWith === name)?.name;
    if (other === undefined) return ofTheRow(graph, selection, measured);
    const beside = selectionOf(graph, record, other);
    return beside === null ? [] : counterparts(graph, selection, beside, measured);
  });
  const once = new Map(lines.map((line) => [`${line.thing.id}\n${line.dimension}`, line]));
  const follows = followsIn(graph, (id) => counts(id) && !withheld(id));
  return [...once.values()]
    .filter(
      ({ thing, counterpart }) => !withheld(thing.id) && (counterpart === null || !withheld(counterpart.id)),
    )
    .map((line) => ({ ...line, follows: followingWords(graph, line, follows) }));
}

/** What could be measured, before it is known what follows from others. */
type Wanting = Omit<WantedLine, "follows">;

function followingWords(
  graph: Graph,
  { thing, dimension }: Wanting,
  follows: ReturnType<typeof followsIn>,
): WantedLine["follows"] {
  const found = follows(thing.id, dimension);
  const kind = found?.from[0]?.measured.quantity.kind;
  if (found === null || kind === undefined) return null;
  const from = found.from.map((one) =>
    one.thing === thing.id ? one.dimension : say`${one.dimension} of ${labelText(graph, one.thing)}`,
  );
  return { from: say`${few(from)}`, size: sizeWords(found.value, found.u, kind) };
}

/** The things of a selection by the place under the one it names, and the dimensions it takes. */
interface Selection {
  readonly things: ReadonlyMap<Id, string>;
  readonly dimensions: readonly string[];
}

/** An input written as things with a dimension; null for any other, and where only some people's or sources' readings enter. */
function selectionOf(graph: Graph, { values }: DerivationRecord, name: string): Selection | null {
  const input = fieldsOf(fieldsOf(values.inputs)[name] ?? null);
  const dimensions = textsIn(input["dimension"]).map((one) => graph.dimensionName(one));
  if (dimensions.length === 0 || "from" in input || "by" in input) return null;
  const things = new Map<Id, string>();
  for (const whole of textsIn(input["of"])) {
    for (const thing of input["parts"] === "false" ? [whole] : graph.withParts(whole)) {
      if (!things.has(thing)) things.set(thing, thing === whole ? "" : (thing.split("/").at(-1) ?? thing));
    }
  }
  return { things, dimensions };
}

type IsMeasured = (thing: Id, dimension: string) => boolean;

function dimensionsMeasured(graph: Graph): IsMeasured {
  const keyOf = (thing: Id, dimension: string): string => `${thing}\n${folded(dimension)}`;
  const known = new Set(
    graph.list("measurements").map(({ values }) => keyOf(values.of, graph.dimensionName(values.dimension))),
  );
  return (thing, dimension) => known.has(keyOf(thing, dimension));
}

/** What is measured beside, and not here, though there is a thing at the same place. */
function counterparts(
  graph: Graph,
  own: Selection,
  beside: Selection,
  isMeasured: IsMeasured,
): readonly Wanting[] {
  const others = new Map([...beside.things].map(([thing, place]) => [place, thing]));
  return [...own.things].flatMap(([thing, place]) => {
    const other = others.get(place);
    if (other === undefined || other === thing) return [];
    return own.dimensions
      .filter((dimension) => isMeasured(other, dimension) && !isMeasured(thing, dimension))
      .map((dimension) => ({ thing: named(graph, thing), dimension, counterpart: named(graph, other) }));
  });
}

/** What is of the same kind as things measured of the same whole, and is not measured itself. */
function ofTheRow(
  graph: Graph,
  { things, dimensions }: Selection,
  isMeasured: IsMeasured,
): readonly Wanting[] {
  const kindOf = (thing: Id): string | null => {
    const record = graph.records.get(thing);
    const whole = graph.wholeOf.get(thing);
    const kind = record?.list === "artefacts" ? record.values.kind : undefined;
    return whole === undefined || kind === undefined ? null : `${whole}\n${kind}`;
  };
  return dimensions.flatMap((dimension) => {
    const kinds = new Set([...things.keys()].filter((one) => isMeasured(one, dimension)).map(kindOf));
    return [...things.keys()]
      .filter((thing) => !isMeasured(thing, dimension) && kindOf(thing) !== null && kinds.has(kindOf(thing)))
      .map((thing) => ({ thing: named(graph, thing), dimension, counterpart: null }));
  });
}

function named(graph: Graph, id: Id): WantedLine["thing"] {
  return { id, text: labelText(graph, id) };
}

function textsIn(value: Json | undefined): readonly string[] {
  if (value === undefined) return [];
  return typeof value === "string" ? [value] : membersOf(value).map(textOf);
}
