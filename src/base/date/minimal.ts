import { circleIn } from "./differences.ts";
import type { Difference, Statement, Step } from "./differences.ts";

/** Up to how many statements all sets of them are tried. */
export const fewStatements = 15;

/** Whether all statements can be true together. */
export function canAllBeTrue(statements: readonly Statement[]): boolean {
  return circleIn(statements) === null;
}

/**
 * A set of statements that cannot all be true, though any fewer of them can: those of a circle, each dropped in turn
 * (methods G). Then a smaller set is looked for: among all where there are few statements, else by the circles of
 * fewest steps through the same events. Null when all can be true.
 */
export function smallestImpossible<S extends Statement>(statements: readonly S[]): readonly S[] | null {
  const circle = circleIn(statements);
  if (circle === null) return null;
  const alone = statements.find((one) => !canAllBeTrue([one]));
  if (alone !== undefined) return [alone];
  const found = filtered(statementsOf(circle));
  if (found.length === 1) return found;
  if (statements.length <= fewStatements) {
    for (const set of setsBySize(statements, found.length - 1)) if (!canAllBeTrue(set)) return set;
    return found;
  }
  const shorter = shortestThrough(statements, found);
  return shorter !== null && shorter.length < found.length ? shorter : found;
}

/** Every minimal set of statements that cannot all be true, smallest first; for few statements only. */
export function allImpossible<S extends Statement>(statements: readonly S[]): readonly (readonly S[])[] {
  if (statements.length > fewStatements)
    throw new Error(`allImpossible: ${statements.length} statements, expected at most ${fewStatements}`);
  const found: (readonly S[])[] = [];
  for (const set of setsBySize(statements, statements.length)) {
    if (found.some((smaller) => smaller.every((one) => set.includes(one)))) continue;
    if (!canAllBeTrue(set)) found.push(set);
  }
  return found;
}

/** The statements of a circle, each once, in the order of its steps. */
export function statementsOf<S extends Statement>(circle: readonly Step<S>[]): readonly S[] {
  return [...new Set(circle.map((step) => step.statement))];
}

/** The deletion filter: what the rest can do without goes. */
function filtered<S extends Statement>(statements: readonly S[]): readonly S[] {
  let left = statements;
  for (const one of statements) {
    const without = left.filter((other) => other !== one);
    if (!canAllBeTrue(without)) left = without;
  }
  return left;
}

function* setsBySize<S>(statements: readonly S[], most: number): Generator<readonly S[]> {
  for (let size = 1; size <= most; size++) yield* setsOf(statements, size, 0);
}

function* setsOf<S>(statements: readonly S[], size: number, from: number): Generator<readonly S[]> {
  if (size === 0) yield [];
  for (let at = from; size > 0 && at <= statements.length - size; at++) {
    const first = statements.slice(at, at + 1);
    for (const rest of setsOf(statements, size - 1, at + 1)) yield [...first, ...rest];
  }
}

/** The minimal set of the circle with fewest steps, among those through an event that `found` is about. */
function shortestThrough<S extends Statement>(
  statements: readonly S[],
  found: readonly S[],
): readonly S[] | null {
  const steps = statements.flatMap((statement) =>
    statement.says.map((difference): Step<S> => ({ difference, statement })),
  );
  const events = new Set(found.flatMap((one) => one.says.flatMap(({ from, to }) => [from, to])));
  let most = (circleIn(found)?.length ?? 1) - 1;
  let best: readonly Step<S>[] | null = null;
  for (const event of events) {
    const walk = shortestWalk(steps, event, most);
    if (walk === null) continue;
    best = walk;
    most = walk.length - 1;
  }
  return best === null ? null : filtered(statementsOf(best));
}

interface Walk<S extends Statement> {
  readonly sum: number;
  readonly strict: boolean;
  readonly last: Step<S>;
  readonly before: Walk<S> | null;
}

/** The closed walk with fewest steps from an event to before itself; null when none has at most so many. */
function shortestWalk<S extends Statement>(
  steps: readonly Step<S>[],
  start: string,
  most: number,
): readonly Step<S>[] | null {
  let at = new Map<string, Walk<S> | null>([[start, null]]);
  for (let count = 1; count <= most; count++) {
    const next = new Map<string, Walk<S> | null>();
    for (const step of steps) {
      const before = at.get(step.difference.from);
      if (before === undefined) continue;
      const walk = onwards(before, step);
      const known = next.get(step.difference.to);
      if (known === undefined || known === null || isLess(walk, known)) next.set(step.difference.to, walk);
    }
    const home = next.get(start);
    if (home && isLess(home, { sum: 0, strict: false })) return stepsOf(home);
    at = next;
  }
  return null;
}

function onwards<S extends Statement>(before: Walk<S> | null, step: Step<S>): Walk<S> {
  const { most, strict }: Difference = step.difference;
  return {
    sum: (before?.sum ?? 0) + most,
    strict: strict === true || before?.strict === true,
    last: step,
    before,
  };
}

function isLess(
  one: Pick<Walk<never>, "sum" | "strict">,
  other: Pick<Walk<never>, "sum" | "strict">,
): boolean {
  if (Math.abs(one.sum - other.sum) > 1e-9) return one.sum < other.sum;
  return one.strict && !other.strict;
}

function stepsOf<S extends Statement>(walk: Walk<S>): readonly Step<S>[] {
  const steps: Step<S>[] = [];
  for (let at: Walk<S> | null = walk; at !== null; at = at.before) steps.unshift(at.last);
  return steps;
}
