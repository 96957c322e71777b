import type { Id } from "../../../base/finding.ts";
import { byText } from "../../../base/order.ts";
import type { Text } from "../../../base/text/said/said.ts";
import type { Graph, Linked } from "../../../link/graph.ts";
import { labelText } from "../../../link/names/label.ts";
import { ownWritten } from "../../../read/edit/head.ts";
import { withheldIn } from "../../withhold.ts";

/** One search as it was made. */
export interface SearchLine {
  readonly id: Id;
  readonly where: string;
  readonly words: string;
  readonly when: string | null;
  readonly by: readonly Text[];
  readonly found: number | null;
  readonly screened: number | null;
  readonly kept: number | null;
  readonly leftOut: readonly { readonly n: number; readonly why: string }[];
  /** What was looked at less what was kept and left out; null where it cannot be told, 0 where it comes out. */
  readonly unaccounted: number | null;
}

/** The counts of a flow of records through the searches (PRISMA 2020: identified, screened, excluded, included). */
export interface Flow {
  readonly found: number;
  readonly screened: number;
  readonly kept: number;
  readonly leftOut: number;
  /** Reasons for which something was left out, the most frequent first. */
  readonly reasons: readonly { readonly why: string; readonly n: number }[];
  /** Searches of which a count is missing, so that the sums are at least these. */
  readonly uncounted: number;
}

/** The log of the searches, by the day on which they were made, and what they come to together. */
export interface SearchLog {
  readonly searches: readonly SearchLine[];
  readonly flow: Flow;
  /** Where was searched so far, each once. */
  readonly places: readonly string[];
}

/** The log of a corpus's searches. */
export function searchLog(graph: Graph): SearchLog {
  const withheld = withheldIn(graph);
  const searches = graph
    .list("searches")
    .filter(({ id }) => !withheld(id))
    .map((one) => lineOf(graph, one, withheld))
    .toSorted((a, b) => byText(a.when ?? "9", b.when ?? "9"));
  return { searches, flow: flowOf(searches), places: [...new Set(searches.map((one) => one.where))] };
}

function lineOf(graph: Graph, search: Linked<"searches">, withheld: (id: Id) => boolean): SearchLine {
  const { where, words, found, screened, kept, by = [] } = search.values;
  const written = ownWritten(search)["when"];
  const leftOut = search.values["left-out"] ?? [];
  const looked = screened ?? found ?? null;
  return {
    id: search.id,
    where,
    words,
    when: typeof written === "string" ? written : null,
    by: by.filter((one) => !withheld(one)).map((one) => labelText(graph, one)),
    found: found ?? null,
    screened: screened ?? null,
    kept: kept ?? null,
    leftOut: leftOut.map(({ n, why }) => ({ n, why })),
    unaccounted:
      looked === null || kept === undefined ? null : looked - kept - sum(leftOut.map((one) => one.n)),
  };
}

/** What all searches come to; a source that two of them found counts in each. */
export function flowOf(searches: readonly SearchLine[]): Flow {
  const reasons = new Map<string, number>();
  for (const { why, n } of searches.flatMap((one) => one.leftOut))
    reasons.set(why, (reasons.get(why) ?? 0) + n);
  return {
    found: sum(searches.map((one) => one.found ?? 0)),
    screened: sum(searches.map((one) => one.screened ?? 0)),
    kept: sum(searches.map((one) => one.kept ?? 0)),
    leftOut: sum([...reasons.values()]),
    reasons: [...reasons]
      .map(([why, n]) => ({ why, n }))
      .toSorted((a, b) => b.n - a.n || byText(a.why, b.why)),
    uncounted: searches.filter((one) => one.found === null || one.screened === null || one.kept === null)
      .length,
  };
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((all, one) => all + one, 0);
}
