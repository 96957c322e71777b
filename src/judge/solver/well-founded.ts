import type { Evaluation, Program } from "./program.ts";
import { startOf, propagate, FALSE, TRUE, UNDEFINED, type State } from "./propagation.ts";
import { foundedSources, loseUnfounded } from "./unfounded.ts";

export { FALSE, TRUE, UNDEFINED };

/**
 * The well-founded model (Van Gelder, Ross & Schlipf 1991): for each atom 0 false, 1 undefined, 2 true.
 * Bodies are propagated by counters in linear time; what is left undecided is searched for atoms that
 * hold one another up in a circle, and from then on only circles that lost a support are looked at again.
 */
export function wellFounded(program: Program, options: Evaluation = {}): Uint8Array {
  return decided(program, options).value;
}

/**
 * The well-founded model with the order in which its atoms are decided: each after all that decides it, those that
 * fall together for want of support at one time; -1 for what stays undefined.
 */
export function decidedInOrder(
  program: Program,
  options: Evaluation = {},
): {
  readonly values: Uint8Array;
  readonly order: Int32Array;
} {
  const together: (readonly [first: number, end: number])[] = [];
  const { value, trail, end } = decided(program, options, (first, last) => together.push([first, last]));
  const order = new Int32Array(program.atomCount).fill(-1);
  for (let at = 0; at < end; at++) order[trail[at]!] = at;
  for (const [first, last] of together) for (let at = first; at < last; at++) order[trail[at]!] = first;
  return { values: value, order };
}

/** Decides all that follows; `fell` is told the stretch of the trail where atoms fell together. */
function decided(
  program: Program,
  options: Evaluation,
  fell: (first: number, end: number) => void = () => undefined,
): State {
  const state = startOf(program, options);
  propagate(program, state);
  if (state.end < program.atomCount && leansOnUndecided(program, state)) {
    let first = state.end;
    const sources = foundedSources(program, state);
    let more = true;
    while (more) {
      fell(first, state.end);
      propagate(program, state, sources);
      first = state.end;
      more = loseUnfounded(program, state, sources);
    }
  }
  return state;
}

/** Whether an undecided atom has a rule that needs an undecided one, without which there are no circles. */
function leansOnUndecided({ heads, positive, ruleCount }: Program, { value, missing }: State): boolean {
  for (let rule = 0; rule < ruleCount; rule++) {
    if (missing[rule]! <= 0 || value[heads[rule]!] !== UNDEFINED) continue;
    for (let at = positive.start[rule]!; at < positive.start[rule + 1]!; at++) {
      if (value[positive.items[at]!] === UNDEFINED) return true;
    }
  }
  return false;
}

/** The least model of the rules with everything they need to be false left out of them: 1 for each atom in it, else 0. */
export function leastWithoutAttacks(program: Program, { without }: Evaluation = {}): Uint8Array {
  const { atomCount, ruleCount, heads, positive, neededBy } = program;
  const holds = new Uint8Array(atomCount);
  const missing = new Int32Array(ruleCount);
  const found = new Int32Array(atomCount);
  let end = 0;
  const fire = (rule: number): void => {
    const head = heads[rule]!;
    if (holds[head] === 1 || without?.[head] === 1) return;
    holds[head] = 1;
    found[end++] = head;
  };
  for (let rule = 0; rule < ruleCount; rule++) {
    missing[rule] = positive.start[rule + 1]! - positive.start[rule]!;
    if (missing[rule] === 0) fire(rule);
  }
  for (let at = 0; at < end; at++) {
    const atom = found[at]!;
    for (let next = neededBy.start[atom]!; next < neededBy.start[atom + 1]!; next++) {
      const rule = neededBy.items[next]!;
      if (--missing[rule]! === 0) fire(rule);
    }
  }
  return holds;
}
