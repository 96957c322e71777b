import { yearText } from "../../../base/date/year.ts";
import { labelOf } from "../../../link/names/label.ts";
import type { Stance } from "../../argument.ts";
import type { Rule } from "../rule.ts";
import { inWords, tell } from "../tell.ts";
import { words, byScholar, clashes } from "./clashes.ts";

export const selfContradiction: Rule = {
  id: "self-contradiction",
  level: "warning",
  title: "A scholar takes two stances at one time that cannot be taken together.",
  doc: "Read both passages again: often one of them is hedged, or belongs to another edition. If both are meant, the review should say so in neutral words.",
  find: (view) => {
    const { graph } = view;
    const findings = [...byScholar(view)].flatMap(([scholar, list]) => {
      const pairs = clashes(view, list).filter(([first, second]) => first.year === second.year);
      return tied(pairs).map((group) => {
        const [first] = group;
        const when = first.year === null ? "" : ` in ${yearText(first.year)}`;
        const says = group.map((one) => `${words[one.stance]} “${labelOf(graph, one.claim)}”`);
        const one = group.length === 2 ? "one or the other" : "one of them";
        const message = `${labelOf(graph, scholar)} ${inWords(says)}${when}, expected ${one}.`;
        const about = [...new Set(group.map(({ position }) => position))].toReversed();
        return tell(graph, "self-contradiction", "warning", about, message, { path: ["stance"] });
      });
    });
    return { findings };
  },
};

/** Stances that clash with one another, directly or by way of others, in the order in which they are met. */
function tied(pairs: readonly (readonly [Stance, Stance])[]): readonly (readonly [Stance, ...Stance[]])[] {
  let groups: (readonly [Stance, ...Stance[]])[] = [];
  for (const [first, second] of pairs) {
    const touched = groups.filter((group) => group.includes(first) || group.includes(second));
    const [head = first, ...others] = [...new Set([...touched.flat(), first, second])];
    groups = [...groups.filter((group) => !touched.includes(group)), [head, ...others]];
  }
  return groups;
}
