import type { Id } from "../../base/finding.ts";
import type { Graph } from "../graph.ts";
import { labelOf } from "../names/label.ts";
import { withheldIn } from "../withheld.ts";
import type { SupposedFeature } from "./outcome.ts";

/** Names in a row, as in a sentence; what is withheld is passed over. */
export function inRow(graph: Graph, ids: readonly Id[]): string {
  const withheld = withheldIn(graph);
  const names = [...new Set(ids.filter((id) => !withheld(id)).map((id) => labelOf(graph, id)))];
  if (names.length <= 2) return names.join(" and ");
  if (names.length === 3) return `${names.slice(0, -1).join(", ")} and ${names.at(-1) ?? ""}`;
  return `${names.slice(0, 2).join(", ")} and ${names.length - 2} others`;
}

/** How a proposed second look is made: what touches nothing comes first. */
export const methods = {
  lookAgain: (things: string) => `look again at ${things}: by eye, without touching`,
  lookInGround: (things: string) => `look again at ${things}, as far as can be seen without digging`,
  measureAgain: (dimension: string, thing: string) =>
    `measure the ${dimension} of ${thing} again, without touching it where that can be done`,
  measure: (dimensions: string, things: string) =>
    `measure the ${dimensions} of ${things}, without touching where that can be done`,
  lookFor: (number: string) => `look for what is missing for ${number}: by eye, without touching`,
} as const;

/** What may come of a proposed examination. */
export const outcomes = {
  asRecorded: (what: string) => `It is as recorded: ${what}.`,
  notSo: (what: string) => `It is not as recorded: ${what}.`,
  allAsRecorded: (thing: string) => `All that is recorded of ${thing} is so.`,
  nothingSo: (thing: string) => `Nothing that is recorded of ${thing} is so.`,
  reading: (dimension: string, thing: string, value: string) => `The ${dimension} of ${thing} is ${value}.`,
  supports: (number: string, claim: string) => `${upper(number)} supports “${claim}”.`,
  disputes: (number: string, claim: string) => `${upper(number)} disputes “${claim}”.`,
} as const;

const seen: Readonly<Record<SupposedFeature["present"], string>> = {
  true: "seen",
  false: "looked for and not there",
  unclear: "looked for, cannot be told",
  "not-reported": "not reported",
};

/** A supposed observation of a feature as a sentence. */
export function sightText({ feature, present }: SupposedFeature): string {
  return `${upper(feature)}: ${seen[present]}.`;
}

function upper(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
