import type { Id } from "../../../../base/finding.ts";
import type { AnyLinked, Graph } from "../../../../link/graph.ts";
import type { Target } from "../../../../read/grammar/field.ts";
import { inEnglish } from "../../../../base/text/said/english.ts";
import type { Text } from "../../../../base/text/said/said.ts";
import { kindWords } from "../../../../read/grammar/words.ts";
import { entriesOf, tokensOf } from "../../../search/fold.ts";
import { nameIn } from "./named.ts";
import { withheldIn } from "../../../withhold.ts";

/** A record or source that can be chosen for a reference, or a text that a field has elsewhere. */
export interface Choice {
  readonly id: Id;
  /** What it is called; the same as the id for a text. */
  readonly label: Text;
  /** What sort of record it is; null for a text. */
  readonly kind: Text | null;
}

/** What can be chosen for some words: the first of it, and how much more there is. */
export interface Choices {
  readonly first: readonly Choice[];
  readonly more: number;
}

interface Entry extends Choice {
  /** Its words as they are compared, each with a space before it. */
  readonly words: string;
}

/** What a reference may lead to for some words: each of them begins a word of its name, id or other spellings. */
export function choicesFor(graph: Graph, to: readonly Target[], text: string, most: number): Choices {
  return fitting(entriesTo(graph, to), text, most);
}

/** Texts that a field of a list has in the corpus already, for some words; the most frequent first. */
export function textsUsed(
  graph: Graph,
  field: { readonly list: Target; readonly name: string },
  text: string,
  most: number,
): Choices {
  return fitting(usedIn(graph, field.list, field.name), text, most);
}

function fitting(entries: readonly Entry[], text: string, most: number): Choices {
  const wanted = tokensOf(text).map((token) => token.folded);
  if (wanted.length === 0 && text.trim() !== "") return { first: [], more: 0 };
  const fit = entries.filter(({ words }) => wanted.every((word) => words.includes(` ${word}`)));
  const begins = ` ${wanted.join(" ")}`;
  const rank = (one: Entry): number =>
    one.id === text.trim() ? 0 : one.words.startsWith(begins) ? 1 : one.words.includes(begins) ? 2 : 3;
  const ordered = wanted.length === 0 ? fit : fit.toSorted((a, b) => rank(a) - rank(b));
  return {
    first: ordered.slice(0, most).map(({ id, label, kind }) => ({ id, label, kind })),
    more: Math.max(0, fit.length - most),
  };
}

const known = new WeakMap<Graph, Map<string, readonly Entry[]>>();

function remembered(graph: Graph, key: string, make: () => readonly Entry[]): readonly Entry[] {
  const made = known.get(graph) ?? new Map<string, readonly Entry[]>();
  known.set(graph, made);
  const before = made.get(key);
  if (before) return before;
  const fresh = make();
  made.set(key, fresh);
  return fresh;
}

function entriesTo(graph: Graph, to: readonly Target[]): readonly Entry[] {
  return remembered(graph, to.join(" "), () => {
    const withheld = withheldIn(graph);
    const records = [...graph.records.values()].filter(
      (one) => (to as readonly string[]).includes(one.list) && !withheld(one.id),
    );
    const sources = to.includes("sources")
      ? [...graph.sources.values()].filter(({ key }) => !withheld(key))
      : [];
    return [
      ...sources.map(({ key, label, csl }) => entry(key, label, kindWords.sources, [csl.title ?? ""])),
      ...records.map((one) =>
        entry(one.id, nameIn(graph, one), kindWords[one.list], spellings(one), numbersOf(one)),
      ),
    ];
  });
}

function usedIn(graph: Graph, list: Target, name: string): readonly Entry[] {
  return remembered(graph, `${list} ${name} as text`, () => {
    const withheld = withheldIn(graph);
    const counts = new Map<string, number>();
    for (const record of graph.records.values()) {
      if (record.list !== list || withheld(record.id)) continue;
      const value = (record.values as unknown as Readonly<Record<string, unknown>>)[name];
      if (typeof value === "string") counts.set(value, (counts.get(value) ?? 0) + 1);
    }
    const declared = name === "dimension" ? graph.settings.dimensions.map((one) => one.name) : [];
    for (const one of declared) counts.set(one, counts.get(one) ?? 0);
    return [...counts].sort((a, b) => b[1] - a[1]).map(([text]) => entry(text, text, null, []));
  });
}

function entry(
  id: Id,
  label: Text,
  kind: Text | null,
  also: readonly string[],
  numbers: readonly string[] = [],
): Entry {
  const words = [
    ...[inEnglish(label), id, ...also].flatMap((text) => tokensOf(text)),
    ...numbers.flatMap((text) => entriesOf(text, true)),
  ].map((token) => ` ${token.folded}`);
  return { id, label, kind, words: words.join("") };
}

/** The numbers of an artefact, each found with or without its hyphens and points. */
function numbersOf(record: AnyLinked): readonly string[] {
  return record.list === "artefacts" ? [...(record.values.numbers?.values() ?? [])] : [];
}

/** What a record is found by beside its name and id. */
function spellings(record: AnyLinked): readonly string[] {
  const { values } = record;
  if (record.list === "scholars") return record.values["known-as"] ?? [];
  const { short, text } = values as { readonly short?: string; readonly text?: string };
  return [short ?? [], text ?? []].flat();
}
