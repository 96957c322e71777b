import type { Id } from "../../base/finding.ts";
import { rulesByHead } from "../../judge/solver/program.ts";
import type { PlanBench } from "../plan.ts";

/** How many steps lie between something in the record and the answer that it bears on; infinite where it bears on none. */
export type Nearness = (id: Id) => number;

/**
 * Steps along premises, inputs and whatever attacks or defends them, as the rules of the judgement have them. Open
 * answers count before all others.
 */
export function nearnessToAnswers({ graph, judgement }: PlanBench): Nearness {
  const { atoms, program } = judgement.compiled;
  const steps = new Int32Array(program.atomCount).fill(-1);
  const eachBelow = belowIn(judgement.compiled);
  const reached = new Int32Array(program.atomCount);
  let end = 0;
  const spread = (from: readonly Id[], first: number): void => {
    let at = end;
    const reach = (atom: number, step: number): void => {
      if (steps[atom] !== -1) return;
      steps[atom] = step;
      reached[end++] = atom;
    };
    for (const id of from) reach(atoms.get(id) ?? -1, first);
    for (; at < end; at++) {
      const atom = reached[at] ?? 0;
      const next = (steps[atom] ?? 0) + 1;
      eachBelow(atom, (below) => reach(below, next));
    }
  };
  const answers = graph.list("questions").flatMap((one) => one.values.answers);
  spread(
    answers.filter((claim) => judgement.standings.get(claim) === "open"),
    0,
  );
  const farthest = end === 0 ? 0 : (steps[reached[end - 1] ?? 0] ?? 0);
  spread(answers, farthest + 1);
  return (id) => {
    const found = steps[atoms.get(id) ?? -1] ?? -1;
    return found === -1 ? Infinity : found;
  };
}

/** Visits the atoms in the rules of an atom, and for a claim the arguments against it. */
function belowIn({
  atoms,
  program,
  contra,
  arguments: argued,
}: PlanBench["judgement"]["compiled"]): (atom: number, visit: (below: number) => void) => void {
  const rules = rulesByHead(program);
  const { positive, negative } = program;
  const against = new Map(
    [...contra].map(([id, places]) => [
      atoms.get(id) ?? -1,
      places.map((at) => atoms.get(argued[at]?.id ?? "") ?? -1),
    ]),
  );
  return (atom, visit) => {
    for (let at = rules.start[atom] ?? 0; at < (rules.start[atom + 1] ?? 0); at++) {
      const rule = rules.items[at] ?? 0;
      for (const { start, items } of [positive, negative]) {
        for (let place = start[rule] ?? 0; place < (start[rule + 1] ?? 0); place++) visit(items[place] ?? 0);
      }
    }
    for (const attacker of against.get(atom) ?? []) visit(attacker);
  };
}
