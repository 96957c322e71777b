import { programOf, rulesByHead } from "../../solver/program.ts";
import type { Rule } from "../../solver/program.ts";
import { eachModel } from "../../solver/standpoint-search.ts";
import type { Model, Purse } from "../../solver/standpoint-search.ts";
import { openParts } from "../../solver/standpoints.ts";
import type { Part } from "../../solver/standpoints.ts";
import { FALSE, TRUE, UNDEFINED } from "../../solver/well-founded.ts";
import { followersIn } from "./followers.ts";

/** The ways to decide a part of what is open, in the part's own atoms. */
export interface Ways {
  /** How many there are; where not all were found, how many there are at least. */
  readonly count: bigint;
  readonly exact: boolean;
  /** All of them where there are at most as many as asked for, else some. */
  readonly models: readonly Model[];
  readonly whole: boolean;
}

/**
 * Searches the regular models of a part. What only follows from the rest is set aside: it is decided when the rest is,
 * and without it the part may fall into several, whose ways multiply.
 */
export function waysOf(part: Part, limit: number, purse: Purse): Ways {
  const followers = followersIn(part);
  const set = new Set(followers);
  const roots = partsWithout(part, set);
  let exact = true;
  const found = roots.map((root): readonly Model[] => {
    const bare = programOf(root.atoms.length, root.rules);
    const models: Model[] = [];
    for (const model of eachModel({ ...bare, rulesFor: rulesByHead(bare) }, { maximal: true }, purse)) {
      if (models.length === limit) exact = false;
      if (!exact) break;
      models.push(inPart(model, root));
    }
    if (purse.empty) exact = false;
    return models;
  });
  const count = found.reduce((product, models) => product * BigInt(Math.max(1, models.length)), 1n);
  const rulesFor = part.atoms.map((): Rule[] => []);
  for (const rule of part.rules) rulesFor[rule.head]?.push(rule);
  const extended = (chosen: readonly Model[]): Model =>
    extend(chosen, part.atoms.length, followers, rulesFor);
  const whole = exact && count <= BigInt(limit);
  if (found.some((models) => models.length === 0)) return { count, exact, models: [], whole: false };
  const chosen = whole ? product(found) : oneAtATime(found);
  return { count, exact, models: chosen.map(extended), whole };
}

/** The rest without its followers, in parts that share no rule; their atoms are those of the part given. */
function partsWithout({ atoms, rules }: Part, followers: ReadonlySet<number>): readonly Part[] {
  const rest = rules.filter((rule) => !followers.has(rule.head));
  const values = Uint8Array.from(atoms, (_, local) => (followers.has(local) ? FALSE : UNDEFINED));
  return openParts(programOf(atoms.length, rest), values);
}

function inPart({ holds, open }: Model, root: Part): Model {
  const named = (locals: readonly number[]) => locals.flatMap((local) => root.atoms[local] ?? []);
  return { holds: named(holds), open: named(open) };
}

/** A choice from each list, in every combination; the first list turns slowest. */
function product(lists: readonly (readonly Model[])[]): readonly (readonly Model[])[] {
  return lists.reduce<readonly (readonly Model[])[]>(
    (chosen, list) => chosen.flatMap((before) => list.map((model) => [...before, model])),
    [[]],
  );
}

/** Each choice at least once, the other lists at their first or, for the first choices together, at their last. */
function oneAtATime(lists: readonly (readonly Model[])[]): readonly (readonly Model[])[] {
  const first = lists.flatMap((list) => list.slice(0, 1));
  const last = lists.flatMap((list) => list.slice(-1));
  const changed = lists.flatMap((list, place) => list.slice(1).map((model) => first.with(place, model)));
  return [first, last, ...changed];
}

/** A model of the whole part: each follower takes the value that its rules give it, from those before it. */
function extend(
  chosen: readonly Model[],
  atomCount: number,
  followers: readonly number[],
  rulesFor: readonly (readonly Rule[])[],
): Model {
  const value = new Uint8Array(atomCount);
  for (const { holds, open } of chosen) {
    for (const atom of holds) value[atom] = TRUE;
    for (const atom of open) value[atom] = UNDEFINED;
  }
  const of = (atom: number): number => value[atom] ?? FALSE;
  for (const atom of followers) {
    const ways = (rulesFor[atom] ?? []).map(({ positive, negative }) =>
      Math.min(TRUE, ...positive.map(of), ...negative.map((other) => TRUE - of(other))),
    );
    value[atom] = Math.max(FALSE, ...ways);
  }
  const those = (wanted: number): readonly number[] =>
    [...value.keys()].filter((atom) => value[atom] === wanted);
  return { holds: those(TRUE), open: those(UNDEFINED) };
}
