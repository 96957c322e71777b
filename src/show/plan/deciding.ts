import type { Id } from "../../base/finding.ts";
import { row, say } from "../../base/text/said/said.ts";
import type { Said } from "../../base/text/said/said.ts";
import { quotedLabel } from "../../judge/rules/tell.ts";
import type { Plan } from "../../plan/plan.ts";
import type { Named } from "../judged/standpoints/named.ts";
import type { Lines } from "./line.ts";
import { costInWords } from "./wording.ts";

/** An examination that decides one of some claims, or changes it, and which of them. */
export interface Decider extends Named {
  readonly decides: Said;
  readonly cost: string | null;
  readonly destructive: boolean;
}

/** The recorded examinations that can make one of the claims stand or fall, in the order of the plan; without any, the suggested ones. */
export function decidersOf(
  { graph, methodOf, costsIn }: Lines,
  plan: Plan,
  claims: readonly Id[],
): readonly Decider[] {
  const found = [plan.recorded, plan.proposed].map((list) =>
    list.flatMap(({ examination: { id, cost, destructive }, outcomes, idle }): readonly Decider[] => {
      if (idle) return [];
      const decided = claims.filter((claim) => outcomes.some(({ changes }) => settles(changes.get(claim))));
      if (decided.length === 0) return [];
      return [
        {
          id,
          text: methodOf(id),
          decides: say`${row(decided.map((one) => quotedLabel(graph, one)))}`,
          cost: costInWords(cost, costsIn),
          destructive,
        },
      ];
    }),
  );
  return found.find((list) => list.length > 0) ?? [];
}

function settles(change: readonly [string, string] | undefined): boolean {
  return change !== undefined && (change[1] === "stands" || change[1] === "falls");
}
