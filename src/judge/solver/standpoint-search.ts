import { rulesByHead, type Program } from "./program.ts";
import { boundsOf, closed, type Bounds, type Searched } from "./standpoint-bounds.ts";

/** A partial stable model: the atoms true in it, and those neither true nor false in it, both ascending. */
export type Model = { readonly holds: readonly number[]; readonly open: readonly number[] };

export type Search = { readonly limit: number; readonly effort: number; readonly maximal: boolean };
export type Found = { readonly models: readonly Model[]; readonly truncated: boolean };

/** What a search may still cost, in visits of rules and atoms; `empty` once it had to stop for that. */
export type Purse = { left: number; empty: boolean };

/**
 * Finds the partial stable models of a program, or those with the most true atoms; a model more than `limit` is not
 * laid out.
 */
export function searchModels(bare: Program, { limit, effort, maximal }: Search): Found {
  const purse = { left: effort, empty: false };
  const models: Model[] = [];
  let more = false;
  for (const model of eachModel({ ...bare, rulesFor: rulesByHead(bare) }, { maximal }, purse)) {
    more = models.length === limit;
    if (more) break;
    models.push(model);
  }
  return { models: models.sort(inOrder), truncated: more || purse.empty };
}

/**
 * The partial stable models one after another, or only those with the most true atoms among them, by branching on
 * whether an atom is true, true first: a model that another contains is then never met before the other. `from` takes
 * atoms for true, not true or false beforehand.
 */
export function* eachModel(
  program: Searched,
  { maximal, from = {} }: { readonly maximal: boolean; readonly from?: Partial<Bounds> },
  purse: Purse,
): Generator<Model> {
  const { atomCount } = program;
  const weight = Array.from({ length: atomCount }, (_, atom) => {
    return program.barredBy.start[atom + 1]! - program.barredBy.start[atom]!;
  });
  const byWeight = weight.map((_, atom) => atom).sort((a, b) => weight[b]! - weight[a]! || a - b);
  const found: Uint8Array[] = [];
  const none = new Uint8Array(atomCount);
  const waiting: Bounds[] = [{ certain: none, refused: none, denied: none, ...from }];
  while (waiting.length > 0) {
    purse.empty = purse.left <= 0;
    if (purse.empty) return;
    const node = waiting.pop()!;
    const bounds = boundsOf(program, node, (cost) => (purse.left -= cost));
    if (bounds === null || (maximal && found.some((certain) => isSubset(bounds.reachable, certain))))
      continue;
    const branch = byWeight.find((atom) => bounds.reachable[atom] === 1 && bounds.certain[atom] === 0);
    if (branch !== undefined) {
      const { certain, refused, denied } = bounds;
      waiting.push({ certain, refused: marked(refused, branch), denied });
      waiting.push({ certain: marked(certain, branch), refused, denied });
      continue;
    }
    const { certain } = bounds;
    if (maximal) found.push(certain);
    yield modelOf({ certain, possible: closed(program, { barred: certain }) });
  }
}

function modelOf({ certain, possible }: { certain: Uint8Array; possible: Uint8Array }): Model {
  const atoms = [...certain.keys()];
  return {
    holds: atoms.filter((atom) => certain[atom] === 1),
    open: atoms.filter((atom) => certain[atom] === 0 && possible[atom] === 1),
  };
}

function inOrder({ holds: a }: Model, { holds: b }: Model): number {
  const at = a.findIndex((atom, place) => atom !== b[place]);
  return at === -1 ? a.length - b.length : a[at]! - (b[at] ?? -1);
}

function marked(atoms: Uint8Array, atom: number): Uint8Array {
  const copy = atoms.slice();
  copy[atom] = 1;
  return copy;
}

function isSubset(small: Uint8Array, large: Uint8Array): boolean {
  return small.every((mark, atom) => mark <= large[atom]!);
}
