import type { Edit, Id, Span } from "../../base/finding.ts";
import { lexBibtex } from "../../read/bibliography/bibtex/lexer.ts";
import { namedBy } from "../../read/prose/prose.ts";
import { headOf } from "../../read/edit/head.ts";
import { say } from "../../base/text/said/said.ts";
import type { Text } from "../../base/text/said/said.ts";
import { valueAt } from "../../read/yaml/tree.ts";
import type { Graph } from "../graph.ts";
import { madeNameOf } from "../names/name.ts";
import { mentionsIn } from "./mentions.ts";
import { takenIn } from "./new-id.ts";

/** How the names of a corpus change when one of them does. */
export interface Renaming {
  /** Every name that changes with it: parts called after their whole, and names made of the one that changes. */
  readonly names: ReadonlyMap<Id, Id>;
  readonly edits: readonly Edit[];
  /** How many references follow. */
  readonly followed: number;
}

const wellFormed = /^[a-z0-9][a-z0-9-]*(\/[a-z0-9][a-z0-9-]*)*$/;

/** Keys that can take the place of another in quotes, in brackets and bare: a sign of YAML or of a bibliography is in none. */
const keyFormed = /^[\p{L}\p{N}](?:[\p{L}\p{N}._+/&-]|:(?=[\p{L}\p{N}]))*$/u;

/** Another id for a record, or key for a source, with all that names it; why not, where it cannot be had. */
export function renaming(
  graph: Graph,
  files: ReadonlyMap<string, string>,
  from: Id,
  to: Id,
): Renaming | { readonly problem: Text } {
  const isSource = graph.sources.has(from);
  if (!isSource && graph.records.get(from)?.named !== true)
    return { problem: say`Unknown id \`${from}\`, expected that of a record` };
  if (isSource ? !keyFormed.test(to) : !wellFormed.test(to))
    return { problem: say`Unexpected id \`${to}\`, expected a-z, 0-9 and - in parts joined by /` };
  const names = changedNames(graph, from, to);
  const there = takenIn(graph);
  const taken = [...names.values()].find((name) => there.has(name) && !names.has(name));
  if (taken !== undefined) return { problem: say`Duplicate id \`${taken}\`, expected a name of its own` };
  const mentions = [...mentionsIn(graph), ...mentionsInProse(graph)].filter(({ id }) => names.has(id));
  const places = [
    ...mentions,
    ...ownPlaces(graph, names),
    ...(isSource ? [...fileSources(files, from), ...lentIn(files, from)] : []),
  ];
  const edits = new Map<string, Edit>();
  for (const { id, file, start, end } of places) {
    const letters = (files.get(file) ?? "").slice(start, end).indexOf(id);
    if (letters < 0)
      return {
        problem: say`Unexpected way of writing \`${id}\` in \`${file}\`, expected it in plain letters`,
      };
    const at = start + letters;
    edits.set(`${file} ${at}`, { file, start: at, end: at + id.length, text: names.get(id) ?? id });
  }
  return { names, edits: [...edits.values()], followed: mentions.length };
}

/** Where the scholar's own prose names records and sources. */
function mentionsInProse({ prose }: Graph): readonly ({ readonly id: Id } & Span)[] {
  return prose.flatMap(({ pieces }) => pieces.flatMap(namedBy)).map(({ id, idAt }) => ({ id, ...idAt }));
}

/** The id itself, ids below it that belong to its parts, and the made names that hold any of these. */
function changedNames(graph: Graph, from: Id, to: Id): ReadonlyMap<Id, Id> {
  const names = new Map<Id, Id>([[from, to]]);
  const things = graph.records.get(from)?.list === "artefacts" ? graph.list("artefacts") : [];
  const own = new Set(things.filter(({ values }) => values["part-of"] !== undefined).map((one) => one.id));
  // A part may stand before what it is part of.
  const follows = (id: Id): boolean => {
    const whole = own.has(id) ? undefined : graph.wholeOf.get(id);
    return whole !== undefined && id.startsWith(`${whole}/`) && (whole === from || follows(whole));
  };
  for (const { id } of things) if (follows(id)) names.set(id, `${to}${id.slice(from.length)}`);
  const called = (id: Id): Id => names.get(id) ?? id;
  const sourceOf = (key: Id): Id => {
    const passage = graph.records.get(key);
    return passage?.list === "passages" ? (passage.values.from?.[0]?.key ?? key) : key;
  };
  const made = new Map<Id, Id>();
  for (const record of graph.records.values()) {
    if (record.named) continue;
    // What parts those that are called alike stays with each.
    const id = `${madeNameOf(record, sourceOf, called)}${/#[\d#]*$/u.exec(record.id)?.[0] ?? ""}`;
    if (id !== record.id) made.set(record.id, id);
  }
  return new Map([...names, ...made]);
}

interface Place {
  readonly id: Id;
  readonly file: string;
  readonly start: number;
  readonly end: number;
}

/** Where the names that change are given. */
function ownPlaces(graph: Graph, names: ReadonlyMap<Id, Id>): readonly Place[] {
  return [...names.keys()].flatMap((id): readonly Place[] => {
    const source = graph.sources.get(id);
    if (source) return [{ id, ...source.keySpan }];
    const record = graph.records.get(id);
    const written = record?.named ? valueAt(record.node, "id") : null;
    return record && written ? [{ id, file: record.file, start: written.start, end: written.end }] : [];
  });
}

/** Files that say at their head that all of them is from the source. */
function fileSources(files: ReadonlyMap<string, string>, key: Id): readonly Place[] {
  return [...files].flatMap(([file, text]) => {
    const head = headOf(file, text);
    return head?.key === key ? [{ id: key, file, start: head.start, end: head.end }] : [];
  });
}

const lending = new Set(["crossref", "xref", "xdata", "related", "entryset"]);

/** Entries of BibTeX that take fields from the source, or belong to it, by its key. */
function lentIn(files: ReadonlyMap<string, string>, key: Id): readonly Place[] {
  return [...files].flatMap(([file, text]) => {
    if (!file.endsWith(".bib") || !text.includes(key)) return [];
    const fields = lexBibtex({ path: file, text }).entries.flatMap((entry) => entry.fields);
    return fields
      .filter(({ name }) => lending.has(name))
      .flatMap(({ span }) =>
        [...text.slice(span.start, span.end).matchAll(/[^\s,{}"]+/gu)]
          .filter(([word]) => word === key)
          .map(({ index }) => ({
            id: key,
            file,
            start: span.start + index,
            end: span.start + index + key.length,
          })),
      );
  });
}
