import { yearText } from "../../../base/date/year.ts";
import { labelOf } from "../../../link/label.ts";
import type { Rule } from "../rule.ts";
import { tell } from "../tell.ts";
import { words, byScholar, clashes } from "./clashes.ts";

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
