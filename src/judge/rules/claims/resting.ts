import type { Id } from "../../../base/finding.ts";
import { count, say } from "../../../base/text/said/said.ts";
import type { Hole, Said, Text } from "../../../base/text/said/said.ts";
import { labelText } from "../../../link/names/label.ts";
import { apart } from "../acceptance.ts";
import type { Rule, View } from "../rule.ts";
import { few } from "../../../base/text/said/rows.ts";
import { byCause, quotedLabel, tell } from "../tell.ts";

/** A rule on claims that rest on exactly one thing of a sort; `says` tells one or several of them. */
export function resting(
  id: string,
  title: Text,
  doc: Text,
  belongs: (view: View, origin: Id) => boolean,
  says: (claims: Hole, only: Text, several: boolean) => Said,
): Rule {
  return {
    id,
    level: "note",
    title,
    doc,
    find: (view) => {
      const { graph } = view;
      const found = [...view.restsOn].flatMap(([claim, losses]) => {
        const those = losses.filter((loss) => belongs(view, loss));
        const only = those.length === 1 ? those[0] : undefined;
        return only === undefined ? [] : [{ claim, only }];
      });
      const side = apart(graph, id);
      const findings = byCause(found, ({ claim, only }) => `${only}\n${side(claim)}`).map((group) => {
        const [{ only }] = group;
        const claims = few(
          group.map(({ claim }) => quotedLabel(graph, claim)),
          (shown, others) => say`${shown} and ${count(others)} more claims`,
        );
        const message = says(claims, labelText(graph, only), group.length > 1);
        return tell(graph, id, "note", [...group.map(({ claim }) => claim), only], message);
      });
      return { findings };
    },
  };
}
