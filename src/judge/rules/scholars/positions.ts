import type { Id } from "../../../base/finding.ts";
import { yearText } from "../../../base/date/year.ts";
import { labelOf } from "../../../link/label.ts";
import { stances } from "../../argument.ts";
import type { Stance } from "../../argument.ts";
import type { Rule, View } from "../../rule.ts";
import { tell } from "../../tell.ts";

const words = {
  holds: "holds",
  rejects: "rejects",
  doubts: "doubts",
  "leaves-open": "leaves open",
} as const;

/** One scholar's stances, in the order of their years. */
function byScholar(view: View): ReadonlyMap<Id, readonly Stance[]> {
  const lists = new Map<Id, Stance[]>();
  for (const one of stances(view.graph, view.judgement.counts)) {
    lists.set(one.scholar, [...(lists.get(one.scholar) ?? []), one]);
  }
  for (const list of lists.values()) list.sort((a, b) => (a.year ?? -Infinity) - (b.year ?? -Infinity));
  return lists;
}

/** Pairs of stances that cannot be taken together: on one claim, or on two that cannot both be right. */
function clashes(view: View, list: readonly Stance[]): readonly (readonly [Stance, Stance])[] {
  return list.flatMap((first, place) =>
    list.slice(place + 1).flatMap((second) => {
      const sameClaim = first.claim === second.claim && first.stance !== second.stance;
      const bothHeld = first.stance === "holds" && second.stance === "holds";
      const rivals = bothHeld && view.graph.rivalsOf(first.claim).includes(second.claim);
      return sameClaim || rivals ? [[first, second] as const] : [];
    }),
  );
}

export const selfContradiction: Rule = {
  id: "self-contradiction",
  level: "warning",
  title: "A scholar takes two stances at one time that cannot be taken together.",
  doc: "Read both passages again: often one of them is hedged, or belongs to another edition. If both are meant, the review should say so in neutral words.",
  find: (view) => {
    const { graph } = view;
    const findings = [...byScholar(view)].flatMap(([scholar, list]) =>
      clashes(view, list).flatMap(([first, second]) => {
        if (first.year !== second.year) return [];
        const when = first.year === null ? "" : ` in ${yearText(first.year)}`;
        const message = `${labelOf(graph, scholar)} ${words[first.stance]} “${labelOf(graph, first.claim)}” and ${words[second.stance]} “${labelOf(graph, second.claim)}”${when}, expected one or the other.`;
        return [
          tell(graph, "self-contradiction", "warning", [second.position, first.position], message, {
            path: ["stance"],
          }),
        ];
      }),
    );
    return { findings };
  },
};

export const changedPosition: Rule = {
  id: "changed-position",
  level: "note",
  title: "A scholar changed position over time.",
  doc: "No fault: the latest position counts as the present one. Cite the right one, and ask what changed the scholar's mind; that argument is often the strongest in the dispute.",
  find: (view) => {
    const { graph } = view;
    const findings = [...byScholar(view)].flatMap(([scholar, list]) => {
      const told = new Set<string>();
      return clashes(view, list).flatMap(([first, second]) => {
        if (first.year === null || second.year === null || first.year === second.year) return [];
        // A scholar who rejects one answer and holds its rival in one year changed once.
        if (told.has(`${second.year}`)) return [];
        told.add(`${second.year}`);
        const message = `${labelOf(graph, scholar)} ${words[second.stance]} “${labelOf(graph, second.claim)}” from ${yearText(second.year)}, having said in ${yearText(first.year)}: ${words[first.stance]} “${labelOf(graph, first.claim)}”.`;
        return [
          tell(graph, "changed-position", "note", [second.position, first.position], message, {
            path: ["stance"],
          }),
        ];
      });
    });
    return { findings };
  },
};
