import type { Id } from "../../../../base/finding.ts";
import { byText } from "../../../../base/order.ts";
import { objectOf } from "../../../../base/json.ts";
import type { Json } from "../../../../base/json.ts";
import { asMap } from "../../../../derive/prepare/settings.ts";
import type { Graph } from "../../../../link/graph.ts";
import { labelText } from "../../../../link/names/label.ts";
import { withheldIn } from "../../../withhold.ts";
import type { Choice } from "./choice.ts";
import { inEnglish } from "../../../../base/text/said/english.ts";

/** By what a selection can be narrowed: only what would leave something of it. */
export interface Narrowing {
  readonly bases: readonly string[];
  readonly states: readonly string[];
  readonly presences: readonly string[];
  readonly people: readonly Choice[];
  readonly sources: readonly Choice[];
  /** Some of it is the spread of several things, which is left out unless asked for. */
  readonly spread: boolean;
}

/** Words of a selection that say what it is of; the others narrow it. */
const whole: readonly string[] = ["of", "parts", "dimension", "feature"];

/** A selection without anything that narrows it. */
export function unnarrowed(selection: Json): Json {
  return objectOf(Object.entries(asMap(selection)).filter(([word]) => whole.includes(word)));
}

/** What the records of a selection, told by their ids, can be parted by. */
export function narrowingOf(graph: Graph, ids: readonly Id[]): Narrowing {
  const withheld = withheldIn(graph);
  const shown = ids.filter((id) => !withheld(id));
  const records = shown.flatMap((id) => graph.records.get(id) ?? []);
  const measured = records.filter((one) => one.list === "measurements");
  const observed = records.filter((one) => one.list === "observations");
  const bases = [...measured, ...observed].flatMap(({ values }) => values.basis ?? []);
  const said = shown.map((id) => graph.provenance(id));
  const choices = (all: readonly Id[]): readonly Choice[] =>
    [...new Set(all)]
      .filter((id) => !withheld(id))
      .map((id) => ({ value: id, text: labelText(graph, id) }))
      .toSorted((a, b) => byText(inEnglish(a.text), inEnglish(b.text)));
  return {
    bases: distinctOf(bases),
    states: distinctOf(measured.map(({ values }) => values.state ?? "complete")),
    presences: distinctOf(observed.map(({ values }) => values.present ?? "true")),
    people: choices(said.flatMap((one) => one.scholars)),
    sources: choices(said.flatMap((one) => one.sources)),
    spread: measured.some(({ values }) => values.spread === true),
  };
}

function distinctOf(values: readonly string[]): readonly string[] {
  return [...new Set(values)].sort(byText);
}
