import type { Id } from "../../base/finding.ts";
import { inEnglish } from "../../base/text/said/english.ts";
import { count, first, row, say } from "../../base/text/said/said.ts";
import type { Hole, Said, Text } from "../../base/text/said/said.ts";
import type { Graph } from "../graph.ts";
import { labelText } from "../names/label.ts";
import { withheldIn } from "../withheld.ts";
import type { SupposedFeature } from "./outcome.ts";

/** Names in a row, as in a sentence; what is withheld is passed over. */
export function inRow(graph: Graph, ids: readonly Id[]): Hole {
  const withheld = withheldIn(graph);
  const named = ids.filter((id) => !withheld(id)).map((id) => labelText(graph, id));
  const names = [...new Map(named.map((name) => [inEnglish(name), name])).values()];
  if (names.length <= 3) return row(names);
  return say`${row(names.slice(0, 2), "comma")} and ${count(names.length - 2)} others`;
}

/** How a proposed second look is made: what touches nothing comes first. */
export const methods = {
  lookAgain: (things: Hole) => say`look again at ${things}: by eye, without touching`,
  lookInGround: (things: Hole) => say`look again at ${things}, as far as can be seen without digging`,
  measureAgain: (dimension: string, thing: Text) =>
    say`measure the ${dimension} of ${thing} again, without touching it where that can be done`,
  measure: (dimensions: Hole, things: Hole) =>
    say`measure the ${dimensions} of ${things}, without touching where that can be done`,
  lookFor: (number: Text) => say`look for what is missing for ${number}: by eye, without touching`,
} as const;

/** A claim's words in quotation marks, whole. */
const quoted = (claim: Text): Hole => ({ mention: claim, words: 10_000, quoted: true });

/** What may come of a proposed examination. */
export const outcomes = {
  asRecorded: (what: Text) => say`It is as recorded: ${what}.`,
  notSo: (what: Text) => say`It is not as recorded: ${what}.`,
  allAsRecorded: (thing: Text) => say`All that is recorded of ${thing} is so.`,
  nothingSo: (thing: Text) => say`Nothing that is recorded of ${thing} is so.`,
  reading: (dimension: string, thing: Text, value: string) => say`The ${dimension} of ${thing} is ${value}.`,
  supports: (number: Text, claim: Text) => first(say`${number} supports ${quoted(claim)}.`),
  disputes: (number: Text, claim: Text) => first(say`${number} disputes ${quoted(claim)}.`),
} as const;

const seen: Readonly<Record<SupposedFeature["present"], Said>> = {
  true: say`seen`,
  false: say`looked for and not there`,
  unclear: say`looked for, cannot be told`,
  "not-reported": say`not reported`,
};

/** A supposed observation of a feature as a sentence. */
export function sightText({ feature, present }: SupposedFeature): Said {
  return first(say`${feature}: ${seen[present]}.`);
}
