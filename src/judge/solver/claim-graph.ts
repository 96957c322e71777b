import { placesOf } from "./framework.ts";
import { programOf, type Program, type Rule } from "./program.ts";

/** A claim graph by name: `contraries` [x, y] say that x speaks against y, `undercuts` [u, i] that u speaks against inference i. */
export type ClaimGraph = {
  readonly claims: readonly string[];
  readonly premises: readonly string[];
  readonly inferences: readonly {
    readonly id: string;
    readonly premises: readonly string[];
    readonly conclusion: string;
  }[];
  readonly contraries: readonly (readonly [claim: string, against: string])[];
  readonly undercuts: readonly (readonly [claim: string, inference: string])[];
};

/**
 * The program of a claim graph, as `format.md` 5 puts it into the format; claim `i` is atom `i`. A premise is an
 * argument from an observation of its own, an inference an argument, a contrary an argument against every argument
 * for its target, an undercut one against an inference. An unknown name throws.
 */
export function claimGraphProgram(graph: ClaimGraph): Program {
  const claim = placesOf(graph.claims, "claim");
  const inference = placesOf(
    graph.inferences.map(({ id }) => id),
    "inference",
  );
  let atomCount = graph.claims.length;
  const rules: Rule[] = [];
  const argument = (because: readonly number[], conclusion?: number) => {
    const made = { atom: atomCount++, because, conclusion, attackers: [] as number[] };
    if (conclusion !== undefined) rules.push({ head: conclusion, positive: [made.atom], negative: [] });
    return made;
  };
  const premises = graph.premises.map((name) => {
    const observation = atomCount++;
    rules.push({ head: observation, positive: [], negative: [] });
    return argument([observation], claim(name));
  });
  const inferences = graph.inferences.map((step) =>
    argument(step.premises.map(claim), claim(step.conclusion)),
  );
  const supports = [...premises, ...inferences];
  const contraries = graph.contraries.map(([from, target]) => {
    const against = argument([claim(from)]);
    for (const support of supports)
      if (support.conclusion === claim(target)) support.attackers.push(against.atom);
    return against;
  });
  const undercuts = graph.undercuts.map(([from, target]) => {
    const against = argument([claim(from)]);
    inferences[inference(target)]!.attackers.push(against.atom);
    return against;
  });
  for (const { atom, because, attackers } of [...supports, ...contraries, ...undercuts]) {
    rules.push({ head: atom, positive: because, negative: attackers });
  }
  return programOf(atomCount, rules);
}
