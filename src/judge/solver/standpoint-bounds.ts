import type { Program, Rows } from "./program.ts";

/** A program with its rules found by their head. */
export type Searched = Program & { readonly rulesFor: Rows };

/** A branch of the search: atoms it takes as true, as not true, and as false. */
export type Bounds = {
  readonly certain: Uint8Array;
  readonly refused: Uint8Array;
  readonly denied: Uint8Array;
};

/** What can still become of a branch: `reachable` are the atoms that can be true in a model of it. */
export type Tightened = Bounds & { readonly reachable: Uint8Array };

type Closing = {
  /** A rule with one of these among what it needs to be false does not count. */
  readonly barred: Uint8Array;
  /** Atoms held without a rule. */
  readonly given?: Uint8Array;
  /** Atoms that cannot be held. */
  readonly excluded?: Uint8Array;
};

/** The least set closed under the rules that count. */
export function closed(program: Program, { barred, given, excluded }: Closing): Uint8Array {
  const { atomCount, ruleCount, heads, positive, negative, neededBy } = program;
  const holds = new Uint8Array(atomCount);
  const missing = new Int32Array(ruleCount);
  const order: number[] = [];
  const hold = (atom: number): void => {
    if (holds[atom] === 1 || excluded?.[atom] === 1) return;
    holds[atom] = 1;
    order.push(atom);
  };
  for (let rule = 0; rule < ruleCount; rule++) {
    missing[rule] = anyOf(negative, rule, barred, 1) ? -1 : positive.start[rule + 1]! - positive.start[rule]!;
    if (missing[rule] === 0) hold(heads[rule]!);
  }
  if (given !== undefined) for (let atom = 0; atom < atomCount; atom++) if (given[atom] === 1) hold(atom);
  for (let at = 0; at < order.length; at++) {
    const atom = order[at]!;
    for (let next = neededBy.start[atom]!; next < neededBy.start[atom + 1]!; next++) {
      const rule = neededBy.items[next]!;
      if (missing[rule]! > 0 && --missing[rule]! === 0) hold(heads[rule]!);
    }
  }
  return holds;
}

/**
 * Draws what follows for every model of the branch, or null when it can have none. With T the true atoms and P the
 * possible ones, lower and upper bounds of both close in on each other (T = least(P), P = least(T), T within P), and
 * what has only one way left to be true, or to be false, takes it. Where certain and reachable atoms are the same, they are
 * those of a model: then least(T) lies between the bounds of P, which are one, and T is least(P).
 */
export function boundsOf(program: Searched, node: Bounds, spend: (cost: number) => void): Tightened | null {
  const size = program.atomCount + program.ruleCount;
  let certain: Uint8Array = node.certain.slice();
  const denied = node.denied.slice();
  let reachable: Uint8Array = new Uint8Array(program.atomCount).fill(1);
  for (let before = -1, now = 0; before !== now;) {
    spend(4 * size);
    before = now;
    const possible = closed(program, { barred: certain, excluded: denied });
    certain = closed(program, { barred: possible, given: certain });
    const unavoidable = closed(program, { barred: reachable, given: certain });
    const excluded = node.refused.map((mark, atom) => mark | (1 - possible[atom]!));
    reachable = closed(program, { barred: unavoidable, excluded });
    for (let atom = 0; atom < program.atomCount; atom++) {
      if (certain[atom]! > reachable[atom]! || unavoidable[atom]! > possible[atom]!) return null;
      if (possible[atom] === 0) denied[atom] = 1;
    }
    const sets = { certain, denied, reachable, unavoidable };
    for (let atom = 0; atom < program.atomCount; atom++) {
      if (certain[atom] === 1) forceWay(program, atom, sets);
      else if (denied[atom] === 1) forceFailures(program, atom, sets);
    }
    now = count(certain) + count(denied) + program.atomCount - count(reachable) + count(unavoidable);
  }
  return { certain, refused: node.refused, denied, reachable };
}

type Sets = {
  readonly certain: Uint8Array;
  readonly denied: Uint8Array;
  readonly reachable: Uint8Array;
  readonly unavoidable: Uint8Array;
};

/** When a single rule can still make a true atom true, its body holds. */
function forceWay(program: Searched, atom: number, { certain, denied, reachable, unavoidable }: Sets): void {
  const { rulesFor, positive, negative } = program;
  let only = -1;
  for (let next = rulesFor.start[atom]!; next < rulesFor.start[atom + 1]!; next++) {
    const rule = rulesFor.items[next]!;
    if (anyOf(positive, rule, reachable, 0) || anyOf(negative, rule, unavoidable, 1)) continue;
    if (only !== -1) return;
    only = rule;
  }
  if (only === -1) return;
  for (let at = positive.start[only]!; at < positive.start[only + 1]!; at++) certain[positive.items[at]!] = 1;
  for (let at = negative.start[only]!; at < negative.start[only + 1]!; at++) denied[negative.items[at]!] = 1;
}

/** When a rule for a false atom can fail by a single atom of its body, it fails by that. */
function forceFailures(
  program: Searched,
  atom: number,
  { certain, denied, reachable, unavoidable }: Sets,
): void {
  const { rulesFor, positive, negative } = program;
  for (let next = rulesFor.start[atom]!; next < rulesFor.start[atom + 1]!; next++) {
    const rule = rulesFor.items[next]!;
    if (anyOf(positive, rule, denied, 1) || anyOf(negative, rule, certain, 1)) continue;
    let ways = 0;
    let need = -1;
    let bar = -1;
    for (let at = positive.start[rule]!; at < positive.start[rule + 1]!; at++) {
      if (unavoidable[positive.items[at]!] === 1) continue;
      need = positive.items[at]!;
      ways++;
    }
    for (let at = negative.start[rule]!; at < negative.start[rule + 1]!; at++) {
      if (reachable[negative.items[at]!] === 0) continue;
      bar = negative.items[at]!;
      ways++;
    }
    if (ways === 1 && need !== -1) denied[need] = 1;
    else if (ways === 1) certain[bar] = 1;
  }
}

function anyOf({ start, items }: Rows, row: number, marks: Uint8Array, mark: number): boolean {
  for (let at = start[row]!; at < start[row + 1]!; at++) if (marks[items[at]!] === mark) return true;
  return false;
}

function count(marks: Uint8Array): number {
  let sum = 0;
  for (let at = 0; at < marks.length; at++) sum += marks[at]!;
  return sum;
}
