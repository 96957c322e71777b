import type { Standing } from "../../../judge/judge.ts";
import { kindOf } from "../../../read/grammar/kinds.ts";
import type { ClaimChange, Publication } from "./history.ts";

const verbs: readonly (readonly [Standing, string, string])[] = [
  ["falls", "falls", "fall"],
  ["open", "opens", "open"],
  ["stands", "comes to stand", "come to stand"],
  ["unsupported", "loses its support", "lose their support"],
];

/** What became of claims, in a few words: `3 claims fall, 1 opens, 2 are named for the first time`. */
export function changesInWords(changes: readonly ClaimChange[]): string {
  const changed = changes.filter(({ was }) => was !== null);
  const named = changes.length - changed.length;
  const parts = [
    ...verbs.map(([standing, one, more]) => {
      const count = changed.filter(({ is }) => is === standing).length;
      return { count, verb: count === 1 ? one : more };
    }),
    { count: named, verb: `${named === 1 ? "is" : "are"} named for the first time` },
  ].filter(({ count }) => count > 0);
  if (parts.length === 0) return "no claim changes";
  return parts
    .map(({ count, verb }, place) => {
      const noun = place > 0 ? "" : count === 1 ? " claim" : " claims";
      return `${count}${noun} ${verb}`;
    })
    .join(", ");
}

const until: Readonly<Record<Standing, string>> = {
  stands: "stood until then",
  open: "was open until then",
  falls: "fell until then",
  unsupported: "was unsupported until then",
};

/** What a claim was before it changed. */
export function wasInWords(was: ClaimChange["was"]): string {
  return was === null ? "named for the first time" : until[was];
}

/** How many records a publication brought, by kind: `3 claims, 1 argument`. */
export function broughtInWords(brought: Publication["brought"]): string {
  if (brought.length === 0) return "nothing that is recorded";
  return brought
    .map(({ list, count }) => `${count} ${count === 1 ? kindOf(list).singular : list}`)
    .join(", ");
}
