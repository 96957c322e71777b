import type { Edit, Id } from "../../base/finding.ts";
import { valueAt } from "../../read/yaml/tree.ts";
import type { Graph } from "../graph.ts";
import { madeNameOf } from "../names/name.ts";
import { mentionsIn } from "./mentions.ts";

/** How the names of a corpus change when one of them does. */
export interface Renaming {
  /** Every name that changes with it: parts called after their whole, and names made of the one that changes. */
  readonly names: ReadonlyMap<Id, Id>;
  readonly edits: readonly Edit[];
  /** How many references follow. */
  readonly followed: number;
}

const wellFormed = /^[a-z0-9][a-z0-9-]*(\/[a-z0-9][a-z0-9-]*)*$/;

/** Another id for a record, or key for a source, with all that names it; why not, where it cannot be had. */
export function renaming(
  graph: Graph,
  files: ReadonlyMap<string, string>,
  from: Id,
  to: Id,
): Renaming | { readonly problem: string } {
  const isSource = graph.sources.has(from);
  if (!isSource && graph.records.get(from)?.named !== true)
    return { problem: `Unknown id \`${from}\`, expected that of a record` };
  if (isSource ? !/^[^\s{}",%#~\\]+$/u.test(to) : !wellFormed.test(to))
    return { problem: `Unexpected id \`${to}\`, expected a-z, 0-9 and - in parts joined by /` };
  const names = changedNames(graph, from, to);
  const taken = [...names.values()].find(
    (name) => (graph.records.has(name) || graph.sources.has(name)) && !names.has(name),
  );
  if (taken !== undefined) return { problem: `Duplicate id \`${taken}\`, expected a name of its own` };
  const mentions = mentionsIn(graph).filter(({ id }) => names.has(id));
  const places = [...mentions, ...ownPlaces(graph, names), ...fileSources(files, from, isSource)];
  const edits = new Map<string, Edit>();
  for (const { id, file, start, end } of places) {
    const letters = (files.get(file) ?? "").slice(start, end).indexOf(id);
    if (letters < 0)
      return { problem: `Unexpected way of writing \`${id}\` in \`${file}\`, expected it in plain letters` };
    const at = start + letters;
    edits.set(`${file} ${at}`, { file, start: at, end: at + id.length, text: names.get(id) ?? id });
  }
  return { names, edits: [...edits.values()], followed: mentions.length };
}

/** The id itself, ids below it that belong to its parts, and the made names that hold any of these. */
function changedNames(graph: Graph, from: Id, to: Id): ReadonlyMap<Id, Id> {
  const names = new Map<Id, Id>([[from, to]]);
  const things = graph.records.get(from)?.list === "artefacts" ? graph.list("artefacts") : [];
  for (const { id, values } of things) {
    const whole = [...names.keys()].some((one) => one === graph.wholeOf.get(id));
    if (whole && values["part-of"] === undefined && id.startsWith(`${from}/`))
      names.set(id, `${to}${id.slice(from.length)}`);
  }
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
function fileSources(files: ReadonlyMap<string, string>, key: Id, isSource: boolean): readonly Place[] {
  if (!isSource) return [];
  return [...files].flatMap(([file, text]) =>
    [...text.matchAll(/^\ufeff?source:(.*)$/gmu)]
      .filter(
        ([, said = ""]) =>
          said
            .replace(/\s#.*$/u, "")
            .trim()
            .replace(/^["']|["']$/gu, "") === key,
      )
      .map((match) => ({ id: key, file, start: match.index, end: match.index + match[0].length })),
  );
}
