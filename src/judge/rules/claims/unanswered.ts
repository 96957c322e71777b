import type { Id } from "../../../base/finding.ts";
import { say } from "../../../base/text/said/said.ts";
import type { Graph } from "../../../link/graph.ts";
import { labelText } from "../../../link/names/label.ts";
import { latestPositions } from "../../argument.ts";
import type { Argument } from "../../argument.ts";
import type { Judgement } from "../../judge.ts";
import type { Rule } from "../rule.ts";
import { labels, quotedLabels, tell } from "../tell.ts";

const patience = 10;

/** Old objections to what somebody holds that nobody has argued against. */
export const unansweredArgument: Rule = {
  id: "unanswered-argument",
  level: "note",
  title: say`An argument against what a scholar holds has been in print ten years, and no argument is against it.`,
  doc: say`Either it was overlooked, or nobody could answer it; the review should say which. Ten years are counted back from the year asked for, else from the newest source.`,
  find: ({ graph, judgement, lens }) => {
    const now =
      lens.asOf ?? Math.max(...[...graph.sources.values()].flatMap((source) => source.year ?? []), -Infinity);
    const findings = objectionsIn(graph, judgement).flatMap(
      ({ argument, year, against, holders, replies }) => {
        if (year > now - patience || replies.length > 0) return [];
        const label = labelText(graph, argument.id);
        const [names, who] = [quotedLabels(graph, against), labels(graph, holders)];
        const message =
          holders.length === 1
            ? say`${label} is against ${names}, which ${who} holds, and no argument is against it.`
            : say`${label} is against ${names}, which ${who} hold, and no argument is against it.`;
        return [tell(graph, "unanswered-argument", "note", [argument.from, ...against], message)];
      },
    );
    return { findings };
  },
};

/** An argument in print against what scholars other than its author hold, and the arguments against it. */
export interface Objection {
  readonly argument: Argument;
  readonly year: number;
  /** The claims it is against, as far as somebody holds them. */
  readonly against: readonly Id[];
  readonly holders: readonly Id[];
  readonly replies: readonly Argument[];
}

/** Every objection in print to what somebody holds, in the order of the arguments. */
export function objectionsIn(graph: Graph, judgement: Judgement): readonly Objection[] {
  const { compiled, counts } = judgement;
  const held = new Map<Id, Set<Id>>();
  for (const { claim, scholar, stance } of latestPositions(graph, counts)) {
    if (stance === "holds") held.set(claim, (held.get(claim) ?? new Set<Id>()).add(scholar));
  }
  const conclusions = new Map(compiled.arguments.map((one) => [one.id, one.therefore]));
  return compiled.arguments.flatMap((argument, place) => {
    const { year, scholars: own } = graph.provenance(argument.from);
    if (year === null) return [];
    const against = targets(graph, conclusions, argument).filter((claim) => held.has(claim));
    const holders = [...new Set(against.flatMap((claim) => [...(held.get(claim) ?? [])]))].filter(
      (who) => !own.includes(who),
    );
    const replies = (compiled.attackers[place] ?? []).flatMap((at) => {
      const attacker = compiled.arguments[at];
      return attacker?.against.includes(argument.id) ? [attacker] : [];
    });
    return holders.length > 0 ? [{ argument, year, against, holders, replies }] : [];
  });
}

/** The claims that an argument is against: named so, or argued for by the arguments it is against. */
function targets(graph: Graph, conclusions: ReadonlyMap<Id, Id | null>, argument: Argument): readonly Id[] {
  return argument.against.flatMap((target) =>
    graph.records.get(target)?.list === "claims" ? [target] : (conclusions.get(target) ?? []),
  );
}
