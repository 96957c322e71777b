import { rowsOf, type Rows } from "../program.ts";

/** The body of a rule whose head is known. */
export type Body = { readonly positive: readonly number[]; readonly negative: readonly number[] };

/**
 * All the rules that each atom named is to have, instead of those it has; other atoms keep theirs. Atoms from
 * `atomCount` on are new; one that is not named has no rule.
 */
export type Edit = ReadonlyMap<number, readonly Body[]>;

/** Bodies of rules in rows. */
export type Bodies = { readonly positive: Rows; readonly negative: Rows };

/** An edit in rows: the rules of the head at a place of `heads` are `start[place]` up to `start[place + 1]`. */
export type Laid = Bodies & { readonly heads: readonly number[]; readonly start: readonly number[] };

/** Lays an edit out in rows, so that its rules are read as those of a program are. */
export function laidOut(edit: Edit): Laid {
  const bodies: Body[] = [];
  const start = [0];
  for (const list of edit.values()) start.push(bodies.push(...list));
  return {
    heads: [...edit.keys()],
    start,
    positive: rowsOf(bodies.map((body) => body.positive)),
    negative: rowsOf(bodies.map((body) => body.negative)),
  };
}
