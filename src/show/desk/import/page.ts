import type { EntryTold, ImportTold, UnreadTold } from "./told.ts";

/** An import as a page shows it: a list at a time, with how many there are in all. */
export interface ImportPage extends Pick<ImportTold, "goals" | "abbreviations" | "lenders" | "problem"> {
  /** Entries that are there already, or are like another that comes in. */
  readonly alike: Some<EntryTold>;
  /** Entries that nothing is like. */
  readonly fresh: Some<EntryTold>;
  readonly failures: Some<UnreadTold>;
  readonly besides: Some<UnreadTold>;
  readonly added: number;
  readonly merged: number;
  readonly left: number;
  /** Keys of the first that are added. */
  readonly keys: readonly string[];
}

/** The first of a list, and how many it has. */
export interface Some<T> {
  readonly shown: readonly T[];
  readonly all: number;
}

/** The page of an import, with at most so many entries in each list. */
export function importPage(told: ImportTold, most: number): ImportPage {
  const { entries, goals, abbreviations, lenders, problem } = told;
  const some = <T>(list: readonly T[]): Some<T> => ({ shown: list.slice(0, most), all: list.length });
  const isAlike = (one: EntryTold): boolean => one.hidden || one.twins.length > 0;
  const added = entries.filter((one) => one.does === "add");
  const merged = entries.filter((one) => one.does === "merge" && writes(one)).length;
  return {
    goals,
    abbreviations,
    lenders,
    problem,
    alike: some(entries.filter(isAlike)),
    fresh: some(entries.filter((one) => !isAlike(one))),
    failures: some(told.failures),
    besides: some(told.besides),
    added: added.length,
    merged,
    left: entries.length - added.length - merged,
    keys: added.slice(0, 20).map((one) => one.key ?? ""),
  };
}

function writes({ merge }: EntryTold): boolean {
  return merge !== null && (merge.missing.length > 0 || merge.differing.some((one) => one.taken));
}
