import { finding } from "../../../base/finding.ts";
import type { Id } from "../../../base/finding.ts";
import type { AnyLinked } from "../../../link/graph.ts";
import { labelOf } from "../../../link/label.ts";
import { authorship } from "../../../link/people.ts";
import { spanOf } from "../../../read/record.ts";
import type { Rule } from "../../rule.ts";
import { inWords, tell } from "../../tell.ts";

export const uncitedSource: Rule = {
  id: "uncited-source",
  level: "note",
  title: "A source of the bibliography is cited by no record.",
  doc: "Either there is nothing in it, which a reading with the status nothing-in-it records, or something was forgotten.",
  find: ({ graph }) => {
    const cited = new Set<Id>(graph.settings.units.flatMap((unit) => unit.from));
    for (const record of graph.records.values()) {
      const { sources, via } = graph.provenance(record.id);
      for (const key of [...sources, ...via]) cited.add(key);
      for (const key of citedInside(record)) cited.add(key);
      if (record.list === "readings") for (const { key } of record.values.from) cited.add(key);
    }
    const members = new Set([...graph.sources.values()].flatMap((source) => source.members));
    const about = [...graph.sources.keys()].filter((key) => !cited.has(key) && !members.has(key));
    if (about.length === 0) return { findings: [] };
    const message = `${inWords(about.map((key) => labelOf(graph, key)))} ${about.length === 1 ? "is" : "are"} cited by no record, expected a record or a reading.`;
    return { findings: [tell(graph, "uncited-source", "note", about, message)] };
  },
};

/** Keys cited in the dates and the history of a thing. */
function citedInside(record: AnyLinked): readonly Id[] {
  if (record.list !== "artefacts") return [];
  const entries = [...(record.values.date ?? []), ...(record.values.history ?? [])];
  return entries.flatMap((entry) => (entry.from ?? []).map(({ key }) => key));
}

export const unlistedAuthor: Rule = {
  id: "unlisted-author",
  level: "note",
  title: "An author in the bibliography is none of the corpus's scholars.",
  doc: "Add the scholar, or the spelling to `known-as`, if the author holds or measured something; else let it be.",
  find: ({ graph }) => {
    const authors = authorship(graph.list("scholars"));
    const findings = [...graph.sources.values()].flatMap((source) => {
      const { unlisted } = authors(source);
      if (unlisted.length === 0) return [];
      const message = `${inWords(unlisted)} of ${source.label} ${unlisted.length === 1 ? "is" : "are"} not among the scholars, expected a scholar of that name.`;
      return [tell(graph, "unlisted-author", "note", [source.key], message)];
    });
    return { findings };
  },
};

export const unitHidden: Rule = {
  id: "unit-hidden",
  level: "note",
  title: "A unit of the corpus's own hides a built-in one of that name.",
  doc: "Everything measured in that name is read in the corpus's own unit. Rename it if the built-in one is meant anywhere.",
  find: ({ graph }) => ({
    findings: graph.settings.quantities.units.hidden.map(({ builtIn, by }) => {
      const message = `The corpus's own unit “${by.name}” hides the built-in ${builtIn.name}, expected another name if both are meant.`;
      const at = spanOf({ file: graph.settings.file, node: graph.settings.node }, "units", by.name);
      return finding("unit-hidden", message, at, { level: "note" });
    }),
  }),
};
