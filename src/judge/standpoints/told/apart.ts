import type { Id } from "../../../base/finding.ts";
import { fewest } from "./fewest.ts";
import type { Allowance } from "./fewest.ts";

/** What becomes of something open where it is decided: it holds, it is decided there no more than here, or it does not. */
export type Fate = "stands" | "open" | "falls";

/** What becomes of everything that is open together, in one coherent way to decide it. */
export type Fates = ReadonlyMap<Id, Fate>;

/**
 * For each alternative the fewest things that tell it from all others, given in order of preference by kind: a later
 * kind only against rivals that agree with it in all of the kinds before. Of things that tell the same, one that
 * stands is taken. Two alternatives with nothing between them are not told apart.
 */
export function toldApart(
  alternatives: readonly Fates[],
  kinds: readonly (readonly Id[])[],
  allowance: Allowance,
): readonly (readonly Id[])[] {
  const columns = kinds.map((ids) => columnsOf(alternatives, ids));
  return alternatives.map((fates, own) => {
    const told: Id[] = [];
    let rivals: readonly number[] = [...alternatives.keys()].filter((other) => other !== own);
    for (const kind of columns) {
      const { sets, alike } = setsAgainst(kind, own, rivals);
      for (const at of fewest(sets, allowance)) {
        const ids = kind[at]?.ids ?? [];
        const best = ids.find((id) => fates.get(id) === "stands") ?? ids[0];
        if (best !== undefined) told.push(best);
      }
      rivals = alike;
    }
    return told;
  });
}

/** Things that part the alternatives in the same way, and the way: one number for each alternative. */
interface Column {
  readonly ids: readonly Id[];
  readonly parts: readonly number[];
}

function columnsOf(alternatives: readonly Fates[], ids: readonly Id[]): readonly Column[] {
  const columns = new Map<string, { readonly ids: Id[]; readonly parts: readonly number[] }>();
  for (const id of ids) {
    const seen: (Fate | undefined)[] = [];
    const parts = alternatives.map((fates) => {
      const fate = fates.get(id);
      const known = seen.indexOf(fate);
      return known >= 0 ? known : seen.push(fate) - 1;
    });
    if (seen.length < 2) continue;
    const key = parts.join("");
    const column = columns.get(key) ?? { ids: [], parts };
    column.ids.push(id);
    columns.set(key, column);
  }
  return [...columns.values()];
}

/** For each rival the columns in which it differs, once for rivals that differ in the same; and those that differ in none. */
function setsAgainst(
  columns: readonly Column[],
  own: number,
  rivals: readonly number[],
): { readonly sets: readonly (readonly number[])[]; readonly alike: readonly number[] } {
  const sets = new Map<string, readonly number[]>();
  const alike: number[] = [];
  for (const rival of rivals) {
    const set: number[] = [];
    columns.forEach(({ parts }, at) => {
      if (parts[own] !== parts[rival]) set.push(at);
    });
    if (set.length === 0) alike.push(rival);
    else sets.set(set.join(" "), set);
  }
  return { sets: [...sets.values()], alike };
}
