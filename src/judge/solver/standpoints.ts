import { programOf, type Evaluation, type Program, type Rule } from "./program.ts";
import { searchModels, type Model } from "./standpoint-search.ts";
import { TRUE, UNDEFINED, wellFounded } from "./well-founded.ts";

/** A part of what is open that is decided on its own: its atoms, and the ways in which it can be decided, in order. */
export type Choice = {
  readonly atoms: readonly number[];
  readonly models: readonly Model[];
  /** Whether there may be more models than these. */
  readonly truncated: boolean;
};

/** The coherent standpoints as a product: what all of them hold, and one choice for each part of what is open. */
export type Standpoints = {
  readonly wellFounded: Uint8Array;
  readonly choices: readonly Choice[];
  /** How many standpoints there are; with `truncated` at least so many. */
  readonly count: bigint;
  readonly truncated: boolean;
};

/** How far to look in each choice: at most `limit` models, at most `effort` visits of rules and atoms. */
export type Reach = Evaluation & {
  readonly limit?: number;
  readonly effort?: number;
  /** The regular models (the default), or every partial stable model. */
  readonly models?: "regular" | "partial-stable";
};

/**
 * The regular models of a program (You & Yuan 1994; `format.md` 5), or all its partial stable models. Each weakly
 * connected part of what the well-founded model leaves open is searched alone; the product is never laid out.
 */
export function standpoints(program: Program, reach: Reach = {}): Standpoints {
  const { limit = 1000, effort = 20_000_000, models = "regular" } = reach;
  const values = wellFounded(program, reach);
  const choices = openParts(program, values, reach).map(({ atoms, rules }): Choice => {
    const part = programOf(atoms.length, rules);
    const found = searchModels(part, { limit, effort, maximal: models === "regular" });
    const whole = (local: readonly number[]) => local.map((atom) => atoms[atom]!);
    const named = found.models.map(({ holds, open }) => ({ holds: whole(holds), open: whole(open) }));
    return { atoms, models: named, truncated: found.truncated };
  });
  return {
    wellFounded: values,
    choices,
    count: choices.reduce((product, { models: ways }) => product * BigInt(ways.length), 1n),
    truncated: choices.some((choice) => choice.truncated),
  };
}

/** The standpoints one after another, as far as they were found; the first choice turns slowest. */
export function* eachStandpoint({ wellFounded: values, choices }: Standpoints): Generator<Model> {
  const common = [...values.keys()].filter((atom) => values[atom] === TRUE);
  if (choices.some(({ models }) => models.length === 0)) return;
  const turn = choices.map(() => 0);
  for (;;) {
    const chosen = choices.map(({ models }, place) => models[turn[place]!]!);
    yield {
      holds: ascending([...common, ...chosen.flatMap(({ holds }) => holds)]),
      open: ascending(chosen.flatMap(({ open }) => open)),
    };
    let place = choices.length - 1;
    while (place >= 0 && turn[place]! + 1 === choices[place]!.models.length) turn[place--] = 0;
    if (place < 0) return;
    turn[place]!++;
  }
}

const ascending = (atoms: number[]): readonly number[] => atoms.sort((a, b) => a - b);

/** A part of what is open, its rules on atoms numbered anew: `atoms` tells which atom of the program each is. */
export type Part = { readonly atoms: readonly number[]; readonly rules: readonly Rule[] };

/** The parts of the open rest that share no rule, with their rules cut down to what is open; atoms are numbered anew in each. */
export function openParts(
  program: Program,
  values: Uint8Array,
  { without }: Evaluation = {},
): readonly Part[] {
  const { atomCount, ruleCount, heads, positive, negative } = program;
  const leader = Int32Array.from({ length: atomCount }, (_, atom) => atom);
  const leaderOf = (atom: number): number => {
    while (leader[atom] !== atom) atom = leader[atom] = leader[leader[atom]!]!;
    return atom;
  };
  const openRules: Rule[] = [];
  for (let rule = 0; rule < ruleCount; rule++) {
    const head = heads[rule]!;
    if (values[head] !== UNDEFINED || without?.[head] === 1) continue;
    const needs = positive.items.subarray(positive.start[rule], positive.start[rule + 1]);
    const bars = negative.items.subarray(negative.start[rule], negative.start[rule + 1]);
    if (needs.some((atom) => values[atom]! < UNDEFINED) || bars.some((atom) => values[atom] === TRUE))
      continue;
    const isOpen = (atom: number) => values[atom] === UNDEFINED;
    const open = {
      head,
      positive: Array.from(needs).filter(isOpen),
      negative: Array.from(bars).filter(isOpen),
    };
    for (const atom of [...open.positive, ...open.negative]) leader[leaderOf(atom)] = leaderOf(head);
    openRules.push(open);
  }
  const parts = new Map<number, { readonly atoms: number[]; readonly rules: Rule[] }>();
  const place = new Int32Array(atomCount);
  for (let atom = 0; atom < atomCount; atom++) {
    if (values[atom] !== UNDEFINED) continue;
    const part = parts.get(leaderOf(atom)) ?? { atoms: [], rules: [] };
    parts.set(leaderOf(atom), part);
    place[atom] = part.atoms.push(atom) - 1;
  }
  const placed = (atoms: readonly number[]) => atoms.map((atom) => place[atom]!);
  for (const { head, positive: needs, negative: bars } of openRules) {
    const part = parts.get(leaderOf(head));
    part?.rules.push({ head: place[head]!, positive: placed(needs), negative: placed(bars) });
  }
  return [...parts.values()];
}
