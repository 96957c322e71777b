import type { Id } from "../../../base/finding.ts";
import { say } from "../../../base/text/said/said.ts";
import type { Said } from "../../../base/text/said/said.ts";
import type { Graph } from "../../../link/graph.ts";
import { stances } from "../../argument.ts";
import type { Stance } from "../../argument.ts";
import type { View } from "../rule.ts";
import { quotedLabel } from "../tell.ts";

/** A stance on a claim: `holds “A”`. */
export function stanceOn(graph: Graph, { stance, claim }: Stance): Said {
  const name = quotedLabel(graph, claim);
  switch (stance) {
    case "holds":
      return say`holds ${name}`;
    case "rejects":
      return say`rejects ${name}`;
    case "doubts":
      return say`doubts ${name}`;
    case "leaves-open":
      return say`leaves open ${name}`;
  }
}

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
