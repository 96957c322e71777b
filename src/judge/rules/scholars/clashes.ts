import type { Id } from "../../../base/finding.ts";
import { stances } from "../../argument.ts";
import type { Stance } from "../../argument.ts";
import type { View } from "../rule.ts";

/** How each stance is said. */
export const words = {
  holds: "holds",
  rejects: "rejects",
  doubts: "doubts",
  "leaves-open": "leaves open",
} as const;

/** One scholar's stances, in the order of their years. */
export function byScholar(view: View): ReadonlyMap<Id, readonly Stance[]> {
  const lists = new Map<Id, Stance[]>();
  for (const one of stances(view.graph, view.judgement.counts)) {
    lists.set(one.scholar, [...(lists.get(one.scholar) ?? []), one]);
  }
  for (const list of lists.values()) list.sort((a, b) => (a.year ?? -Infinity) - (b.year ?? -Infinity));
  return lists;
}

/** Pairs of stances that cannot be taken together: on one claim, or on two that cannot both be right. */
export function clashes(view: View, list: readonly Stance[]): readonly (readonly [Stance, Stance])[] {
  return list.flatMap((first, place) =>
    list.slice(place + 1).flatMap((second) => {
      const sameClaim = first.claim === second.claim && first.stance !== second.stance;
      const bothHeld = first.stance === "holds" && second.stance === "holds";
      const rivals = bothHeld && view.graph.rivalsOf(first.claim).includes(second.claim);
      return sameClaim || rivals ? [[first, second] as const] : [];
    }),
  );
}
