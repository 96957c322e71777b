import type { Id } from "../../../base/finding.ts";
import { labelOf } from "../../../link/label.ts";
import type { Rule, View } from "../rule.ts";
import { tell } from "../tell.ts";

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
      const findings = [...view.restsOn].flatMap(([claim, losses]) => {
        const those = losses.filter((loss) => belongs(view, loss));
        const only = those.length === 1 ? those[0] : undefined;
        if (only === undefined) return [];
        const message = `“${labelOf(view.graph, claim)}” stands on one ${sort}, ${labelOf(view.graph, only)}, and would not without it.`;
        return [tell(view.graph, id, "note", [claim, only], message)];
      });
      return { findings };
    },
  };
}
