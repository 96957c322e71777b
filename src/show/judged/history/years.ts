import type { Id } from "../../../base/finding.ts";
import { derive } from "../../../derive/derive.ts";
import type { Derivations } from "../../../derive/derive.ts";
import type { Lens } from "../../../derive/lens.ts";
import type { ComputeMemo, Run } from "../../../derive/run.ts";
import { judge } from "../../../judge/judge.ts";
import type { Judgement } from "../../../judge/judge.ts";
import type { AnyLinked, Graph } from "../../../link/graph.ts";
import type { Plugin } from "../../../plugin.ts";
import type { ListName } from "../../../read/grammar/field.ts";
import { withheldIn } from "../../withhold.ts";

/** Lists of what publications bring; the rest is the corpus's own keeping of books. */
export const broughtLists = [
  "claims",
  "positions",
  "arguments",
  "observations",
  "measurements",
  "relations",
  "derivations",
  "passages",
  "images",
] as const satisfies readonly ListName[];

/** What the standings of all years are worked out from. */
export interface Ground {
  readonly graph: Graph;
  readonly plugins: readonly Plugin[];
  readonly memo: ComputeMemo;
  readonly lens: Lens;
}

/** The records that came into print in a year, and what followed by its end. */
export interface PrintYear {
  readonly year: number;
  readonly brought: readonly AnyLinked[];
  readonly judgement: Judgement;
}

/** How far the years have been gone through, of how many. */
export interface YearsDone {
  readonly done: number;
  readonly of: number;
}

/**
 * The dispute by the end of each year in which something came into print, up to that of the lens: handed over year by
 * year. The graph is shared by all years, and the numbers by years in which nothing came out that a number could be
 * computed on; runs whose outcome the memo does not have are listed, and until it has, the standings that hang on them
 * are those without.
 */
export function* printYears(
  ground: Ground,
  take: (year: PrintYear) => void,
): Generator<YearsDone, readonly Run[]> {
  const { graph, plugins, memo, lens } = ground;
  const missing = new Map<string, Run>();
  let numbers: Derivations | null = null;
  const years = [...broughtByYear(graph, lens.asOf)];
  for (const [place, [year, brought]] of years.entries()) {
    const under = { ...lens, asOf: year };
    if (numbers === null || brought.some(({ list }) => feeds(list))) {
      numbers = derive(graph, plugins, memo, under);
      yield { done: place, of: years.length };
    }
    for (const run of numbers.missing) missing.set(run.key, run);
    take({ year, brought, judgement: judge(graph, numbers, under) });
    yield { done: place + 1, of: years.length };
  }
  return [...missing.values()];
}

/** Whether numbers may be computed on a record, or it is one itself. */
function feeds(list: ListName): boolean {
  return list === "observations" || list === "measurements" || list === "derivations";
}

function broughtByYear(graph: Graph, last = Infinity): ReadonlyMap<number, readonly AnyLinked[]> {
  const withheld = withheldIn(graph);
  const found = new Map<number, AnyLinked[]>();
  for (const { key, year } of graph.sources.values()) {
    if (year !== null && year <= last && !withheld(key)) found.set(year, []);
  }
  for (const record of graph.records.values()) {
    if (!(broughtLists as readonly ListName[]).includes(record.list) || withheld(record.id)) continue;
    const { year } = graph.provenance(record.id);
    if (year !== null && year <= last) {
      const those = found.get(year);
      if (those) those.push(record);
      else found.set(year, [record]);
    }
  }
  return new Map([...found].sort(([a], [b]) => a - b));
}

/** The publication that a record came into print with: of several the one of that year, null where it has none. */
export function publicationOf(graph: Graph, id: Id): Id | null {
  const { sources, year } = graph.provenance(id);
  return sources.find((key) => graph.sources.get(key)?.year === year) ?? sources[0] ?? null;
}
