import { yearWords } from "../../../base/date/year-words.ts";
import type { Id } from "../../../base/finding.ts";
import { row, say } from "../../../base/text/said/said.ts";
import type { Said } from "../../../base/text/said/said.ts";
import type { Graph } from "../../../link/graph.ts";
import { labelText } from "../../../link/names/label.ts";
import type { Stance } from "../../argument.ts";
import type { Rule } from "../rule.ts";
import { tell } from "../tell.ts";
import { byScholar, clashes, stanceOn } from "./clashes.ts";

export const selfContradiction: Rule = {
  id: "self-contradiction",
  level: "warning",
  title: say`A scholar takes two stances at one time that cannot be taken together.`,
  doc: say`Read both passages again: often one of them is hedged, or belongs to another edition. If both are meant, the review should say so in neutral words.`,
  find: (view) => {
    const { graph } = view;
    const findings = [...byScholar(view)].flatMap(([scholar, list]) => {
      const pairs = clashes(view, list).filter(([first, second]) => first.year === second.year);
      return tied(pairs).map((group) => {
        const message = takes(graph, scholar, group);
        const about = [...new Set(group.map(({ position }) => position))].toReversed();
        return tell(graph, "self-contradiction", "warning", about, message, { path: ["stance"] });
      });
    });
    return { findings };
  },
};

function takes(graph: Graph, scholar: Id, group: readonly [Stance, ...Stance[]]): Said {
  const who = labelText(graph, scholar);
  const says = row(group.map((one) => stanceOn(graph, one)));
  const [{ year }] = group;
  if (year === null)
    return group.length === 2
      ? say`${who} ${says}, expected one or the other.`
      : say`${who} ${says}, expected one of them.`;
  return group.length === 2
    ? say`${who} ${says} in ${yearWords(year)}, expected one or the other.`
    : say`${who} ${says} in ${yearWords(year)}, expected one of them.`;
}

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
