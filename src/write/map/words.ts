import type { Standing } from "../../judge/judge.ts";
import type { BandName, BoxState } from "../../show/map/scene.ts";

/** Names of the bands, as they stand at the inner edge. */
export const bandWords: Readonly<Record<BandName, string>> = {
  things: "things",
  seen: "seen and measured",
  computed: "computed",
  claims: "claims",
  answers: "answers",
};

/** Over a bow that joins rivals. */
export const rivalWords = "not both";

/** How the words of a mark begin whose line, cut, joins what cannot be right together. */
const collisions = { rivals: `${rivalWords}: `, conflict: "disagrees: " } as const;

/** What a mark's cut line joins: rivals, measurements in conflict, or nothing that collides. */
export function collisionOf(words: string): keyof typeof collisions | null {
  if (words.startsWith(collisions.rivals)) return "rivals";
  return words.startsWith(collisions.conflict) ? "conflict" : null;
}

/** What changed since the step before: `now open, was stands`. */
export function changeWords(now: Standing | null, was: NonNullable<BoxState["was"]>): string {
  if (was === "not there") return now === null ? "not there before" : `now ${now}, not there before`;
  return now === null ? `was ${was}` : `now ${now}, was ${was}`;
}
