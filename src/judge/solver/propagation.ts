import type { Evaluation, Program, Rows } from "./program.ts";

/** The three values of an atom. */
export const FALSE = 0;
export const UNDEFINED = 1;
export const TRUE = 2;

/** The count of a rule that can no longer work: below any that subtraction reaches. */
const DEAD = -(2 ** 30);

/** An evaluation under way: atoms are decided once, in the order of `trail`, and passed on from `at` to `end`. */
export type State = {
  readonly value: Uint8Array;
  /** For each rule how many atoms of its body are not yet as it needs them; below 0 when one is decided against it. */
  readonly missing: Int32Array;
  /** For each atom how many of its rules can still work. */
  readonly support: Int32Array;
  readonly trail: Int32Array;
  at: number;
  end: number;
};

/** What holds up each undecided atom that lies on a circle of atoms that need one another. */
export type Sources = {
  readonly rulesFor: Rows;
  /** The circle of each atom, or -1. */
  readonly circle: Int32Array;
  /** The rule that each atom was last founded by; following these from atom to atom never comes back. */
  readonly source: Int32Array;
  /** Atoms whose source rule died since they were last looked at. */
  readonly lost: number[];
  /** Scratch, all 0 between uses: the atoms being founded, and for each rule how many of those it still waits for. */
  readonly unfounded: Uint8Array;
  readonly waits: Int32Array;
};

/** Decides an atom that is undecided; any other is left as it is. */
export function decide(state: State, atom: number, value: number): void {
  if (state.value[atom] !== UNDEFINED) return;
  state.value[atom] = value;
  state.trail[state.end++] = atom;
}

/** The state in which facts are true, atoms without a rule false, and nothing is passed on yet. */
export function startOf(program: Program, { without }: Evaluation): State {
  const { atomCount, ruleCount, heads, positive, negative } = program;
  const state: State = {
    value: new Uint8Array(atomCount).fill(UNDEFINED),
    missing: new Int32Array(ruleCount),
    support: new Int32Array(atomCount),
    trail: new Int32Array(atomCount),
    at: 0,
    end: 0,
  };
  const { missing, support } = state;
  const [needed, barred] = [positive.start, negative.start];
  for (let rule = 0; rule < ruleCount; rule++) {
    const head = heads[rule]!;
    const needs = needed[rule + 1]! - needed[rule]! + (barred[rule + 1]! - barred[rule]!);
    if (without !== undefined && without[head] === 1) missing[rule] = DEAD;
    else {
      missing[rule] = needs;
      support[head]!++;
      if (needs === 0) decide(state, head, TRUE);
    }
  }
  for (let atom = 0; atom < atomCount; atom++) if (support[atom] === 0) decide(state, atom, FALSE);
  return state;
}

/** Passes every decided atom on to the rules it stands in, until nothing more follows from rule bodies alone. */
export function propagate(program: Program, state: State, sources?: Sources): void {
  const { heads } = program;
  const { start: needStart, items: needs } = program.neededBy;
  const { start: barStart, items: bars } = program.barredBy;
  const { value, missing, support, trail } = state;
  let { at, end } = state;
  while (at < end) {
    const atom = trail[at++]!;
    const holds = value[atom] === TRUE;
    const helpStart = holds ? needStart : barStart;
    const helped = holds ? needs : bars;
    const killStart = holds ? barStart : needStart;
    const killed = holds ? bars : needs;
    for (let next = helpStart[atom]!, last = helpStart[atom + 1]!; next < last; next++) {
      const rule = helped[next]!;
      if (--missing[rule]! !== 0) continue;
      const head = heads[rule]!;
      if (value[head] === UNDEFINED) {
        value[head] = TRUE;
        trail[end++] = head;
      }
    }
    for (let next = killStart[atom]!, last = killStart[atom + 1]!; next < last; next++) {
      const rule = killed[next]!;
      if (missing[rule]! <= 0) continue;
      missing[rule] = DEAD;
      const head = heads[rule]!;
      if (--support[head]! === 0) {
        if (value[head] === UNDEFINED) {
          value[head] = FALSE;
          trail[end++] = head;
        }
      } else if (sources !== undefined && sources.source[head] === rule) sources.lost.push(head);
    }
  }
  state.at = at;
  state.end = end;
}
