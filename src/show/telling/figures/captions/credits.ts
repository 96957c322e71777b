import type { Id } from "../../../../base/finding.ts";
import { row, say } from "../../../../base/text/said/said.ts";
import type { Text } from "../../../../base/text/said/said.ts";
import type { Graph } from "../../../../link/graph.ts";
import { withheldIn } from "../../../withhold.ts";
import type { Citing, Inlines } from "../../blocks/block.ts";

/** The sources that some records come from, each once, with the places in them. */
export function sourcesOf(graph: Graph, records: readonly Id[]): Citing["cites"] {
  const withheld = withheldIn(graph);
  const cites = records
    .filter((id) => !withheld(id))
    .flatMap((id) => graph.provenance(id).sources)
    .filter((key) => graph.sources.has(key) && !withheld(key));
  return [...new Set(cites)].map((id) => ({ id }));
}

/** `Data: (Vane 1968; Marrack 1999).`; nothing where no source is known. */
export function dataFrom(graph: Graph, records: readonly Id[]): Inlines {
  const cites = sourcesOf(graph, records);
  return cites.length === 0 ? [] : [say`Data: `, { is: "citing", manner: "aside", cites }, "."];
}

/** Who drew it, from what, and what may be done with it. */
export function credit({ settings }: Graph): Inlines {
  const { title, authors, licence } = settings;
  const names = authors.map(({ name }) => name);
  return [
    names.length === 0
      ? say`Drawn from the record ${title}.`
      : say`Drawn from the record ${title}, by ${row(names)}.`,
    ...(licence === null ? [] : [" ", say`Licence: ${licence}.`]),
  ];
}

/** Sentences one after another with a space between; what is empty is left out. */
export function joined(sentences: readonly Inlines[]): Inlines {
  return sentences
    .filter((one) => one.length > 0)
    .flatMap((one, place): Inlines => (place === 0 ? one : [" ", ...one]));
}

/** Several meanings in a row, parted by semicolons. */
export function inRow(all: readonly Text[]): Text {
  const [one = "", ...others] = all;
  return others.reduce((before, next) => say`${before}; ${next}`, one);
}
