import type { Id } from "../../../base/finding.ts";
import { labelOf } from "../../../link/names/label.ts";
import { apart } from "../acceptance.ts";
import type { Rule, View } from "../rule.ts";
import { byCause, fewOf, inWords, tell } from "../tell.ts";

/** A rule on claims that rest on exactly one thing of a sort. */
export function resting(
  id: string,
  sort: string,
  belongs: (view: View, origin: Id) => boolean,
  doc: string,
): Rule {
  return {
    id,
    level: "note",
    title: `A claim that stands would not without one ${sort}.`,
    doc,
    find: (view) => {
      const found = [...view.restsOn].flatMap(([claim, losses]) => {
        const those = losses.filter((loss) => belongs(view, loss));
        const only = those.length === 1 ? those[0] : undefined;
        return only === undefined ? [] : [{ claim, only }];
      });
      const side = apart(view.graph, id);
      const findings = byCause(found, ({ claim, only }) => `${only}\n${side(claim)}`).map((group) => {
        const [{ only }] = group;
        const names = group.map(({ claim }) => `“${labelOf(view.graph, claim)}”`);
        const stand = names.length === 1 ? "stands" : "stand";
        const message = `${inWords(fewOf(names, "more claims"))} ${stand} on one ${sort}, ${labelOf(view.graph, only)}, and would not without it.`;
        return tell(view.graph, id, "note", [...group.map(({ claim }) => claim), only], message);
      });
      return { findings };
    },
  };
}
