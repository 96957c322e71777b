import type { Graph } from "../../../link/graph.ts";
import { readingList } from "./reading-list.ts";
import type { ReadingLine } from "./reading-list.ts";
import { searchLog } from "./search-log.ts";
import type { SearchLog } from "./search-log.ts";

/** The literature: what has been read of it, and how it was looked for. */
export interface LiteraturePage {
  readonly sources: readonly ReadingLine[];
  readonly log: SearchLog;
}

/** The page of the literature; withheld sources and searches are not on it. */
export function literaturePage(graph: Graph): LiteraturePage {
  return { sources: readingList(graph), log: searchLog(graph) };
}
