import { grouped, rulesByHead, type Program, type Rows } from "./program.ts";
import { decide, FALSE, UNDEFINED, type Sources, type State } from "./propagation.ts";
import { circlesOf } from "./strong-components.ts";

const NONE = -1;

/**
 * Finds for each undecided atom a rule that founds it when every `not` is granted, makes the atoms that
 * have none false, and returns the rules found, for the circles to be watched.
 */
export function foundedSources(program: Program, state: State): Sources {
  const { atomCount, ruleCount } = program;
  const undecided: number[] = [];
  for (let atom = 0; atom < atomCount; atom++) if (state.value[atom] === UNDEFINED) undecided.push(atom);
  const source = new Int32Array(atomCount).fill(NONE);
  const scratch = { unfounded: new Uint8Array(atomCount), waits: new Int32Array(ruleCount) };
  const sources = { rulesFor: rulesByHead(program), source, lost: [], circle: new Int32Array(0), ...scratch };
  for (const atom of undecided) sources.unfounded[atom] = 1;
  found(program, state, sources, undecided);
  for (const atom of undecided) if (source[atom] === NONE) decide(state, atom, FALSE);
  const circle = circlesOf(needsOfUndecided(program, state));
  for (const atom of undecided) if (circle[atom] === -1) source[atom] = NONE;
  return { ...sources, circle };
}

/**
 * Looks for another founding rule for every atom that lost its own, makes the atoms that find none false
 * and tells whether there were any. Only atoms of the same circle can have lost it with them.
 */
export function loseUnfounded(program: Program, state: State, sources: Sources): boolean {
  const { circle, source, unfounded } = sources;
  const { heads, neededBy } = program;
  const lost: number[] = [];
  const lose = (atom: number): void => {
    if (state.value[atom] !== UNDEFINED || unfounded[atom] === 1) return;
    unfounded[atom] = 1;
    source[atom] = NONE;
    lost.push(atom);
  };
  for (const atom of sources.lost.splice(0)) lose(atom);
  for (let at = 0; at < lost.length; at++) {
    const atom = lost[at]!;
    for (let next = neededBy.start[atom]!; next < neededBy.start[atom + 1]!; next++) {
      const rule = neededBy.items[next]!;
      const head = heads[rule]!;
      if (source[head] === rule && circle[head] === circle[atom]) lose(head);
    }
  }
  found(program, state, sources, lost);
  const before = state.end;
  for (const atom of lost) if (source[atom] === NONE) decide(state, atom, FALSE);
  return state.end > before;
}

/** Founds the given atoms in turn by rules that need none of them or only such as were founded before. */
function found(
  program: Program,
  { value, missing }: State,
  sources: Sources,
  atoms: readonly number[],
): void {
  const { positive, neededBy, heads } = program;
  const { rulesFor, source, unfounded, waits } = sources;
  const order: number[] = [];
  const foundBy = (rule: number): void => {
    const head = heads[rule]!;
    if (source[head] !== NONE) return;
    source[head] = rule;
    order.push(head);
  };
  for (const atom of atoms) {
    for (let next = rulesFor.start[atom]!; next < rulesFor.start[atom + 1]!; next++) {
      const rule = rulesFor.items[next]!;
      if (missing[rule]! <= 0) continue;
      for (let at = positive.start[rule]!; at < positive.start[rule + 1]!; at++) {
        const need = positive.items[at]!;
        if (value[need] === UNDEFINED && unfounded[need] === 1) waits[rule]!++;
      }
      if (waits[rule] === 0) foundBy(rule);
    }
  }
  for (let at = 0; at < order.length; at++) {
    const atom = order[at]!;
    for (let next = neededBy.start[atom]!; next < neededBy.start[atom + 1]!; next++) {
      const rule = neededBy.items[next]!;
      if (waits[rule]! > 0 && --waits[rule]! === 0) foundBy(rule);
    }
  }
  for (const atom of atoms) {
    unfounded[atom] = 0;
    for (let next = rulesFor.start[atom]!; next < rulesFor.start[atom + 1]!; next++)
      waits[rulesFor.items[next]!] = 0;
  }
}

/** For each undecided atom the undecided atoms that its rules need. */
function needsOfUndecided(program: Program, { value, missing }: State): Rows {
  const { heads, positive, ruleCount, atomCount } = program;
  const from: number[] = [];
  const to: number[] = [];
  for (let rule = 0; rule < ruleCount; rule++) {
    if (missing[rule]! <= 0 || value[heads[rule]!] !== UNDEFINED) continue;
    for (let at = positive.start[rule]!; at < positive.start[rule + 1]!; at++) {
      const need = positive.items[at]!;
      if (value[need] !== UNDEFINED) continue;
      from.push(heads[rule]!);
      to.push(need);
    }
  }
  return grouped(atomCount, Int32Array.from(from), Int32Array.from(to));
}
