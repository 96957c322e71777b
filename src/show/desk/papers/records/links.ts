import type { Id } from "../../../../base/finding.ts";
import type { Graph } from "../../../../link/graph.ts";
import type { Citation } from "../../../../read/grammar/field.ts";
import { withheldIn } from "../../../withhold.ts";
import { fileNameOf } from "../papers.ts";
import { printedPage } from "../printed.ts";
import { readIn } from "./resting.ts";

/** A way from a record into the paper that it is from, for as far as that paper is there. */
export interface PaperLink {
  readonly key: Id;
  /** How the source is cited in short. */
  readonly label: string;
  /** The key and those of other sources with which the name of a paper may begin that begins with its own. */
  readonly keys: readonly Id[];
  readonly passage: Id | null;
  /** The printed page, where the place is only cited. */
  readonly printed: number | null;
}

/** Ways from a record or source into the papers that it is from, each once. */
export function paperLinks(graph: Graph, id: Id): readonly PaperLink[] {
  const links = linksOf(graph, id).filter(({ key }) => graph.sources.has(key) && !withheldIn(graph)(key));
  const known = new Set<string>();
  return links.filter(({ key, passage, printed }) => {
    const place = JSON.stringify([key, passage, printed]);
    return !known.has(place) && known.add(place);
  });
}

function linksOf(graph: Graph, id: Id): readonly PaperLink[] {
  if (graph.sources.has(id)) return [linkTo(graph, id, null, null)];
  const record = graph.records.get(id);
  if (!record || withheldIn(graph)(id)) return [];
  if (record.list === "passages") return ofPassage(graph, id);
  const { from = [] } = record.values as { readonly from?: readonly Citation[] };
  return from.flatMap(({ key, locator }) =>
    graph.records.get(key)?.list === "passages"
      ? ofPassage(graph, key)
      : [linkTo(graph, key, null, locator === null ? null : printedPage(locator))],
  );
}

function ofPassage(graph: Graph, passage: Id): readonly PaperLink[] {
  if (withheldIn(graph)(passage)) return [];
  return readIn(graph, passage).map((key) => linkTo(graph, key, passage, null));
}

function linkTo(graph: Graph, key: Id, passage: Id | null, printed: number | null): PaperLink {
  const name = fileNameOf(key);
  const keys = [...graph.sources.keys()].filter((one) => fileNameOf(one).startsWith(name));
  return { key, label: graph.sources.get(key)?.label ?? key, keys, passage, printed };
}
