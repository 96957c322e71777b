import type { Finding, Id } from "../../../base/finding.ts";
import { say } from "../../../base/text/said/said.ts";
import type { Graph } from "../../../link/graph.ts";
import { latestPositions } from "../../argument.ts";
import type { Rule, View } from "../rule.ts";
import { quotedLabels, tell } from "../tell.ts";

/** Claims that cannot both be right, both of them alive. */
export const contradiction: Rule = {
  id: "contradiction",
  level: "warning",
  title: say`Two claims that cannot both be right are both held by someone or both argued for.`,
  doc: say`That is what a dispute is, so it is no mistake. It asks for an argument that chooses, or for the sentence in your review that says why none does. Two claims are rivals when they answer one exclusive question or one names the other as incompatible.`,
  find: (view) => {
    const { graph, judgement } = view;
    const alive = livingClaims(view);
    const lives = (id: Id): boolean => alive.has(id) && judgement.counts(id);
    const told = new Set<string>();
    const findings = graph.list("questions").flatMap(({ values }) => {
      const answers = [...new Set(values.answers)].filter(lives);
      if (values.exclusive === false || answers.length < 2) return [];
      for (const a of answers) for (const b of answers) told.add(`${a}\n${b}`);
      return [clash(graph, answers)];
    });
    for (const { id } of graph.list("claims")) {
      for (const rival of graph.rivalsOf(id)) {
        if (lives(id) && lives(rival) && !told.has(`${id}\n${rival}`)) {
          told.add(`${rival}\n${id}`);
          findings.push(clash(graph, [id, rival]));
        }
      }
    }
    return { findings };
  },
};

function clash(graph: Graph, claims: readonly Id[]): Finding {
  const names = quotedLabels(graph, claims);
  const message =
    claims.length === 2
      ? say`${names} cannot both be right, and both are held or argued for.`
      : say`${names} cannot be right together, and all are held or argued for.`;
  return tell(graph, "contradiction", "warning", claims, message);
}

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
