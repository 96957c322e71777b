import type { Id } from "../../../base/finding.ts";
import { editDistance } from "../../../base/nearest.ts";
import { folded } from "../../../link/dimension.ts";
import { labelOf } from "../../../link/label.ts";
import { authorship, foldedName } from "../../../link/people.ts";
import type { Rule, View } from "../../rule.ts";
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
      if (record.list === "readings") for (const { key } of record.values.from) cited.add(key);
    }
    const members = new Set([...graph.sources.values()].flatMap((source) => source.members));
    const about = [...graph.sources.keys()].filter((key) => !cited.has(key) && !members.has(key));
    if (about.length === 0) return { findings: [] };
    const message = `${inWords(about.map((key) => labelOf(graph, key)))} ${about.length === 1 ? "is" : "are"} cited by no record, expected a record or a reading.`;
    return { findings: [tell(graph, "uncited-source", "note", about, message)] };
  },
};

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

export const nearName: Rule = {
  id: "near-name",
  level: "note",
  title: "Two names are so alike that one may be a slip.",
  doc: "Names of scholars, things, dimensions and features are compared. If both are meant, let them be; if one is a slip, mend it, or list it under `also` or `known-as`.",
  find: ({ graph, judgement }: View) => {
    const scholars = graph
      .list("scholars")
      .map(({ id, values }) => ({ id, name: foldedName(values.name), path: "name" }));
    const dimensions = distinctBy(
      graph.list("measurements").filter((one) => judgement.counts(one.id)),
      (one) => folded(graph.dimensionName(one.values.dimension)),
    ).map(([name, one]) => ({ id: one.id, name, path: "dimension" }));
    const features = distinctBy(
      graph.list("observations").filter((one) => one.values.feature !== undefined),
      (one) => folded(one.values.feature ?? ""),
    ).map(([name, one]) => ({ id: one.id, name, path: "feature" }));
    const findings = [scholars, dimensions, features].flatMap((names) =>
      names.flatMap((one, place) =>
        names.slice(place + 1).flatMap((other) => {
          if (one.name === other.name || !alike(one.name, other.name)) return [];
          const shown = (named: typeof one): string => writtenName(graph, named.id, named.path);
          const message = `“${shown(other)}” is nearly “${shown(one)}”, expected one spelling or two plainly different names.`;
          return [tell(graph, "near-name", "note", [other.id, one.id], message, { path: [other.path] })];
        }),
      ),
    );
    return { findings };
  },
};

function distinctBy<T>(
  records: readonly T[],
  nameOf: (record: T) => string,
): readonly (readonly [string, T])[] {
  const first = new Map<string, T>();
  for (const record of records) if (!first.has(nameOf(record))) first.set(nameOf(record), record);
  return [...first];
}

/** Alike but for a hyphen, or one slip in six letters or more; numbers are never slips. */
function alike(a: string, b: string): boolean {
  const bare = (name: string): string => name.replace(/[^\p{L}\p{N}]/gu, "");
  if (bare(a) === bare(b)) return true;
  const digits = (name: string): string => name.replace(/\P{N}/gu, "");
  return (
    Math.min(a.length, b.length) >= 6 && digits(a) === digits(b) && editDistance(bare(a), bare(b), 1) <= 1
  );
}

function writtenName(graph: View["graph"], id: Id, path: string): string {
  const record = graph.records.get(id);
  const value = record ? (record.values as Readonly<Record<string, unknown>>)[path] : undefined;
  return typeof value === "string" ? value : id;
}

export const unitHidden: Rule = {
  id: "unit-hidden",
  level: "note",
  title: "A unit of the corpus's own hides a built-in one of that name.",
  doc: "Everything measured in that name is read in the corpus's own unit. Rename it if the built-in one is meant anywhere.",
  find: ({ graph }) => ({
    findings: graph.settings.quantities.units.hidden.map(({ builtIn, by }) => {
      const message = `The corpus's own unit “${by.name}” hides the built-in ${builtIn.name}, expected another name if both are meant.`;
      return { ...tell(graph, "unit-hidden", "note", [], message) };
    }),
  }),
};
