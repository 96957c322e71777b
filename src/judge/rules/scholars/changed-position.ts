import { yearWords } from "../../../base/date/year-words.ts";
import { say } from "../../../base/text/said/said.ts";
import { labelText } from "../../../link/names/label.ts";
import type { Rule } from "../rule.ts";
import { tell } from "../tell.ts";
import { byScholar, clashes, stanceOn } from "./clashes.ts";

export const changedPosition: Rule = {
  id: "changed-position",
  level: "note",
  title: say`A scholar changed position over time.`,
  doc: say`No fault: the latest position counts as the present one. Cite the right one, and ask what changed the scholar's mind; that argument is often the strongest in the dispute.`,
  find: (view) => {
    const { graph } = view;
    const findings = [...byScholar(view)].flatMap(([scholar, list]) => {
      const told = new Set<string>();
      return clashes(view, list).flatMap(([first, second]) => {
        if (first.year === null || second.year === null || first.year === second.year) return [];
        // A scholar who rejects one answer and holds its rival in one year changed once.
        if (told.has(`${second.year}`)) return [];
        told.add(`${second.year}`);
        const message = say`${labelText(graph, scholar)} ${stanceOn(graph, second)} from ${yearWords(second.year)}, having said in ${yearWords(first.year)}: ${stanceOn(graph, first)}.`;
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
