import type { Id } from "../../../base/finding.ts";
import { labelOf } from "../../../link/label.ts";
import { latestPositions } from "../../argument.ts";
import type { Argument } from "../../argument.ts";
import type { Rule, View } from "../../rule.ts";
import { inWords, tell } from "../../tell.ts";

const patience = 10;

/** Old objections to what somebody holds that nobody has argued against. */
export const unansweredArgument: Rule = {
  id: "unanswered-argument",
  level: "note",
  title:
    "An argument against what a scholar holds has been in print ten years, and no argument is against it.",
  doc: "Either it was overlooked, or nobody could answer it; the review should say which. Ten years are counted back from the year asked for, else from the newest source.",
  find: (view) => {
    const { graph, judgement, lens } = view;
    const { compiled, counts } = judgement;
    const now =
      lens.asOf ?? Math.max(...[...graph.sources.values()].flatMap((source) => source.year ?? []), -Infinity);
    const held = new Map<Id, Set<Id>>();
    for (const { claim, scholar, stance } of latestPositions(graph, counts)) {
      if (stance === "holds") held.set(claim, (held.get(claim) ?? new Set<Id>()).add(scholar));
    }
    const findings = compiled.arguments.flatMap((argument, place) => {
      const year = graph.provenance(argument.from).year;
      if (year === null || year > now - patience || (compiled.attackers[place] ?? []).some(isAgainst))
        return [];
      const own = new Set(graph.provenance(argument.from).scholars);
      const against = targets(view, argument).filter((claim) => held.has(claim));
      const holders = [...new Set(against.flatMap((claim) => [...(held.get(claim) ?? [])]))].filter(
        (who) => !own.has(who),
      );
      if (holders.length === 0) return [];
      const who = inWords(holders.map((one) => labelOf(graph, one)));
      const names = inWords(against.map((claim) => `“${labelOf(graph, claim)}”`));
      const message = `${labelOf(graph, argument.id)} is against ${names}, which ${who} ${holders.length === 1 ? "holds" : "hold"}, and no argument is against it.`;
      return [tell(graph, "unanswered-argument", "note", [argument.from, ...against], message)];

      function isAgainst(at: number): boolean {
        return compiled.arguments[at]?.against.includes(argument.id) ?? false;
      }
    });
    return { findings };
  },
};

/** The claims that an argument is against: named so, or argued for by the arguments it is against. */
function targets({ graph, judgement }: View, argument: Argument): readonly Id[] {
  const conclusions = new Map(judgement.compiled.arguments.map((one) => [one.id, one.therefore]));
  return argument.against.flatMap((target) =>
    graph.records.get(target)?.list === "claims" ? [target] : (conclusions.get(target) ?? []),
  );
}
