import type { Id } from "../../../base/finding.ts";
import { byText } from "../../../base/order.ts";
import type { Text } from "../../../base/text/said/said.ts";
import type { Run } from "../../../derive/run.ts";
import type { Judgement, Standing } from "../../../judge/judge.ts";
import { atOnce } from "../../../judge/resting/at-once.ts";
import type { AnyLinked, Graph } from "../../../link/graph.ts";
import { labelText } from "../../../link/names/label.ts";
import { withheldIn } from "../../withhold.ts";
import { broughtLists, printYears, publicationOf } from "./years.ts";
import type { Ground, YearsDone } from "./years.ts";

/** What one publication brought into print. */
export interface Publication {
  /** Null for records that are dated and come from no source, or from one that is withheld. */
  readonly source: Id | null;
  /** What the source is called; null where there is none. */
  readonly text: Text | null;
  /** How many records of each list, in the order of the lists. */
  readonly brought: readonly { readonly list: (typeof broughtLists)[number]; readonly count: number }[];
}

/** A claim whose standing is another than the year before; `was` is null for one that is named for the first time. */
export interface ClaimChange {
  readonly claim: Id;
  readonly text: Text;
  readonly was: Standing | null;
  readonly is: Standing;
}

/** A year of print, or at the end what the corpus adds itself and has no year. */
export interface HistoryStep {
  readonly year: number | null;
  readonly publications: readonly Publication[];
  readonly changes: readonly ClaimChange[];
}

/** The dispute publication by publication. */
export type History = readonly HistoryStep[];

/** A history as far as it is told, and how far that is. */
export interface HistorySoFar {
  readonly steps: History;
  readonly progress: YearsDone;
}

/** A history whole, with the runs that earlier years still ask for. */
export interface HistoryFound {
  readonly history: History;
  readonly missing: readonly Run[];
}

/** What came into print in each year and what that changed. */
export function historyOf(ground: Ground, present: Judgement): HistoryFound {
  return atOnce(historyIn(ground, present));
}

/** The same in slices, a year or less each; what is told of it so far grows from slice to slice. */
export function* historyIn(ground: Ground, present: Judgement): Generator<HistorySoFar, HistoryFound> {
  const { graph, lens } = ground;
  const steps: HistoryStep[] = [];
  let before: Judgement | null = null;
  const years = printYears(ground, ({ year, brought, judgement }) => {
    const changes = changesBetween(graph, before, judgement);
    before = judgement;
    steps.push({ year, publications: publicationsOf(graph, year, brought), changes });
  });
  for (let slice = years.next(); ; slice = years.next()) {
    if (slice.done !== true) {
      yield { steps, progress: slice.value };
      continue;
    }
    const missing = slice.value;
    if (lens.asOf !== undefined) return { history: steps, missing };
    const changes = changesBetween(graph, before, present);
    const own = changes.length > 0 ? [{ year: null, publications: [], changes }] : [];
    return { history: [...steps, ...own], missing };
  }
}

function publicationsOf(graph: Graph, year: number, records: readonly AnyLinked[]): readonly Publication[] {
  const withheld = withheldIn(graph);
  const counts = new Map<Id | null, Map<string, number>>();
  for (const { key, year: printed } of graph.sources.values())
    if (printed === year && !withheld(key)) counts.set(key, new Map());
  for (const { id, list } of records) {
    const source = publicationOf(graph, id);
    const own = counts.get(source) ?? new Map<string, number>();
    counts.set(source, own.set(list, (own.get(list) ?? 0) + 1));
  }
  return [...counts].map(([source, own]) => ({
    source: source === null || withheld(source) ? null : source,
    text: source === null ? null : labelText(graph, source),
    brought: broughtLists.flatMap((list) => {
      const count = own.get(list) ?? 0;
      return count === 0 ? [] : [{ list, count }];
    }),
  }));
}

const inOrder: readonly Standing[] = ["falls", "open", "stands", "unsupported"];

/** Claims whose standing changed, then those named for the first time, each by what they are now. */
function changesBetween(graph: Graph, before: Judgement | null, after: Judgement): readonly ClaimChange[] {
  const withheld = withheldIn(graph);
  const standing = ({ standings }: Judgement, id: Id): Standing => standings.get(id) ?? "unsupported";
  const changes = graph.list("claims").flatMap(({ id }): readonly ClaimChange[] => {
    if (withheld(id) || !after.listed(id)) return [];
    const was = before?.listed(id) === true ? standing(before, id) : null;
    const is = standing(after, id);
    return was === is ? [] : [{ claim: id, text: labelText(graph, id), was, is }];
  });
  const place = ({ was, is }: ClaimChange): number => (was === null ? 4 : 0) + inOrder.indexOf(is);
  return changes.toSorted((a, b) => place(a) - place(b) || byText(a.claim, b.claim));
}
