import type { Id } from "../../base/finding.ts";
import type { Derivations } from "../../derive/derive.ts";
import type { Graph } from "../../link/graph.ts";
import type { Judgement } from "../judge.ts";
import { failedAttacks, workingAttacks } from "./attack.ts";
import type { FailedAttack, WorkingAttack } from "./attack.ts";
import { coreOf } from "./core/core.ts";
import type { Core } from "./core/core.ts";
import { evaluationOf } from "./evaluation.ts";
import { lacksOf } from "./lack.ts";
import type { Lack } from "./lack.ts";
import { reasonOf } from "./reason.ts";
import type { Reason } from "./reason.ts";
import { supportOf } from "./support/support.ts";
import type { Support } from "./support/support.ts";

/** Why something has its standing, whole: the reason in one sentence, and what bears it out. */
export type Explanation = { readonly id: Id; readonly reason: Reason } & (
  | {
      readonly standing: "stands";
      readonly support: Support;
      /** The attacks on the records of the support; all of them fail. */
      readonly failed: readonly FailedAttack[];
    }
  | { readonly standing: "falls"; readonly attacks: readonly WorkingAttack[] }
  | { readonly standing: "open"; readonly core: Core }
  | { readonly standing: "unsupported"; readonly lacks: readonly Lack[] }
);

/** The explanation of a claim, an argument or a piece of evidence; null where nothing of that name is judged. */
export function explain(
  graph: Graph,
  derivations: Derivations,
  judgement: Judgement,
  id: Id,
): Explanation | null {
  const standing = judgement.standings.get(id);
  if (standing === undefined) return null;
  const evaluation = evaluationOf(judgement);
  const reason = reasonOf(graph, derivations, judgement, id);
  switch (standing) {
    case "stands": {
      const support = supportOf(graph, evaluation, id);
      return { id, reason, standing, support, failed: failedAttacks(graph, derivations, judgement, support) };
    }
    case "falls":
      return { id, reason, standing, attacks: workingAttacks(graph, derivations, judgement, id) };
    case "open":
      return { id, reason, standing, core: coreOf(graph, evaluation, id) };
    case "unsupported":
      return { id, reason, standing, lacks: lacksOf(graph, derivations, judgement, id) };
  }
}
