import type { Model } from "../../solver/standpoint-search.ts";
import { rowsOf } from "../../solver/program.ts";
import type { Part } from "../../solver/standpoints.ts";
import { circlesOf } from "../../solver/strong-components.ts";
import { leaningsOf } from "./followers.ts";
import { waysOf } from "./ways.ts";
import type { Ways } from "./ways.ts";

/** A choice that is free of every other: contradictions at its root, and what hangs on nothing else. */
export interface Factor {
  /** The circles that lean on nothing outside. */
  readonly roots: readonly (readonly number[])[];
  readonly atoms: readonly number[];
  readonly count: bigint;
  readonly exact: boolean;
  /** What becomes of these atoms in each way; null where there are too many to lay out. */
  readonly ways: readonly Model[] | null;
}

/** A part of what is open as free choices, with the atoms that hang on more than one of them and on which. */
export interface Factored {
  readonly factors: readonly Factor[];
  readonly shared: ReadonlyMap<number, readonly number[]>;
}

/**
 * Takes a part apart into the contradictions at its root. These are free of one another; where every combination of
 * their ways leaves one way for all the rest, they are the factors, and what hangs on one of them goes with it. Where
 * something further down leaves a choice of its own, the part is one factor.
 */
export function factorsOf(part: Part, ways: Ways, limit: number, effort: number): Factored {
  const roots = rootsIn(part);
  const all = [...part.atoms.keys()];
  const under = rootsUnder(part, roots);
  const found = ways.whole ? seenIn(ways.models, roots) : foundAlone(part, roots, under, ways, limit, effort);
  if (roots.length < 2 || found === null) {
    const models = ways.whole ? ways.models : null;
    return {
      factors: [{ roots, atoms: all, count: ways.count, exact: ways.exact, ways: models }],
      shared: new Map(),
    };
  }
  const on = all.map((atom): readonly number[] => {
    const told = found.hangsOn(atom);
    return told.length > 0 ? told : (under[atom] ?? []);
  });
  const shared = new Map([...on.entries()].filter(([, places]) => places.length > 1));
  const factors = roots.map((root, place): Factor => {
    const atoms = all.filter((atom) => on[atom]?.length === 1 && on[atom][0] === place);
    const own = new Set(atoms);
    const only = (locals: readonly number[]): readonly number[] => locals.filter((atom) => own.has(atom));
    const models = found.examples[place] ?? [];
    return {
      roots: [root],
      atoms,
      count: BigInt(models.length),
      exact: true,
      ways: models.map(({ holds, open }) => ({ holds: only(holds), open: only(open) })),
    };
  });
  return { factors, shared };
}

/** For each root an example of each of its ways, and on which roots an atom is seen to hang. */
interface Found {
  readonly examples: readonly (readonly Model[])[];
  readonly hangsOn: (atom: number) => readonly number[];
}

/** Looks at all ways of the part: whether they are every combination of what becomes of the roots, each once. */
function seenIn(models: readonly Model[], roots: readonly (readonly number[])[]): Found | null {
  const marked = models.map(valuesIn);
  const seen = roots.map((): Map<string, number> => new Map());
  const vectors = marked.map((values) =>
    roots.map((root, place) => {
      const look = root.map((atom) => values.get(atom) ?? 0).join("");
      const known = seen[place];
      if (!known) return 0;
      const index = known.get(look) ?? known.size;
      known.set(look, index);
      return index;
    }),
  );
  if (seen.reduce((product, ways) => product * ways.size, 1) !== models.length) return null;
  const at = new Map(vectors.map((vector, model) => [vector.join(" "), model]));
  if (at.size !== models.length) return null;
  const otherwise = (vector: readonly number[], place: number, way: number): number =>
    at.get(vector.with(place, way).join(" ")) ?? 0;
  const [first = []] = vectors;
  /** For each root and each model the model that differs in how that root is decided: in its first way. */
  const base = roots.map((_, place) => vectors.map((vector) => otherwise(vector, place, 0)));
  return {
    examples: roots.map((_, place) =>
      [...(seen[place]?.values() ?? [])].flatMap((way) => models[otherwise(first, place, way)] ?? []),
    ),
    hangsOn: (atom) =>
      base.flatMap((others, place) =>
        others.some((other, model) => marked[model]?.get(atom) !== marked[other]?.get(atom)) ? [place] : [],
      ),
  };
}

function valuesIn({ holds, open }: Model): ReadonlyMap<number, number> {
  return new Map([...holds.map((atom) => [atom, 2] as const), ...open.map((atom) => [atom, 1] as const)]);
}

/** Looks at each root alone, with what leans on it and on no other: whether their ways multiply to those of the part. */
function foundAlone(
  part: Part,
  roots: readonly (readonly number[])[],
  under: readonly (readonly number[])[],
  { count, exact }: Ways,
  limit: number,
  effort: number,
): Found | null {
  if (!exact) return null;
  const purse = { left: effort, empty: false };
  const alone = roots.map((_, place) => {
    const atoms = [...part.atoms.keys()].filter(
      (atom) => under[atom]?.length === 1 && under[atom][0] === place,
    );
    return { atoms, ways: waysOf(leaningsOf(part, atoms), limit, purse) };
  });
  if (!alone.every(({ ways }) => ways.whole)) return null;
  if (alone.reduce((product, { ways }) => product * ways.count, 1n) !== count) return null;
  const inPart = (atoms: readonly number[], locals: readonly number[]) =>
    locals.flatMap((local) => atoms[local] ?? []);
  return {
    examples: alone.map(({ atoms, ways }) =>
      ways.models.map(({ holds, open }) => ({ holds: inPart(atoms, holds), open: inPart(atoms, open) })),
    ),
    hangsOn: () => [],
  };
}

/** The strongly connected components of a part that lean on nothing outside themselves. */
function rootsIn(part: Part): readonly (readonly number[])[] {
  const leans = leansIn(part);
  const circle = circlesOf(rowsOf(leans));
  const roots = new Map<number, number[]>();
  const hanging = new Set<number>();
  leans.forEach((others, atom) => {
    const own = circle[atom] ?? -1;
    if (own < 0) return;
    roots.set(own, [...(roots.get(own) ?? []), atom]);
    if (others.some((other) => circle[other] !== own)) hanging.add(own);
  });
  return [...roots].filter(([own]) => !hanging.has(own)).map(([, atoms]) => atoms);
}

/** For each atom the roots it leans on, however far. */
function rootsUnder(part: Part, roots: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const carries = part.atoms.map((): number[] => []);
  leansIn(part).forEach((others, atom) => {
    for (const other of others) carries[other]?.push(atom);
  });
  const under = part.atoms.map((): number[] => []);
  roots.forEach((root, place) => {
    const reached = new Set(root);
    for (const atom of reached) {
      under[atom]?.push(place);
      for (const next of carries[atom] ?? []) reached.add(next);
    }
  });
  return under;
}

function leansIn({ atoms, rules }: Part): readonly (readonly number[])[] {
  const leans = atoms.map((): number[] => []);
  for (const { head, positive, negative } of rules) leans[head]?.push(...positive, ...negative);
  return leans;
}
