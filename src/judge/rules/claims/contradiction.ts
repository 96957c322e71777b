import type { Id } from "../../../base/finding.ts";
import { labelOf } from "../../../link/label.ts";
import { latestPositions } from "../../argument.ts";
import type { Rule, View } from "../../rule.ts";
import { tell } from "../../tell.ts";

/** Claims that cannot both be right, both of them alive. */
export const contradiction: Rule = {
  id: "contradiction",
  level: "warning",
  title: "Two claims that cannot both be right are both held by someone or both argued for.",
  doc: "That is what a dispute is, so it is no mistake. It asks for an argument that chooses, or for the sentence in your review that says why none does. Two claims are rivals when they answer one exclusive question or one names the other as incompatible.",
  find: (view) => {
    const { graph, judgement } = view;
    const alive = livingClaims(view);
    const findings = graph.list("claims").flatMap(({ id }) =>
      graph.rivalsOf(id).flatMap((rival) => {
        if (!(id < rival) || !alive.has(id) || !alive.has(rival) || !judgement.counts(rival)) return [];
        const message = `“${labelOf(graph, id)}” and “${labelOf(graph, rival)}” cannot both be right, and both are held or argued for.`;
        return [tell(graph, "contradiction", "warning", [id, rival], message)];
      }),
    );
    return { findings };
  },
};

/** Claims held by somebody's latest position, or with an argument for them that works or is open. */
function livingClaims({ graph, judgement }: View): ReadonlySet<Id> {
  const { compiled, standings, counts } = judgement;
  const held = latestPositions(graph, counts).filter((one) => one.stance === "holds");
  const alive = new Set(held.map((one) => one.claim));
  for (const [claim, places] of compiled.pro) {
    const lives = places.some((at) => {
      const standing = standings.get(compiled.arguments[at]?.id ?? "");
      return standing === "stands" || standing === "open";
    });
    if (lives) alive.add(claim);
  }
  return alive;
}
