import type { Id } from "../../base/finding.ts";
import type { Field, Fields, ListName } from "../../read/grammar/field.ts";
import { everywhere, kindOf } from "../../read/grammar/kinds.ts";
import { settingsFields } from "../../read/grammar/settings.ts";
import type { MapNode, Node } from "../../read/yaml/tree.ts";
import type { Graph } from "../graph.ts";
import { derivationOf } from "../inputs.ts";
import { unread } from "../withheld.ts";

/** A place where a record or a source is named by its id. */
export interface Mention {
  readonly id: Id;
  /** The record it stands in; null in the settings. */
  readonly by: Id | null;
  readonly file: string;
  /** Where the value or the key that holds it is written. */
  readonly start: number;
  readonly end: number;
}

/** Everything that the records and the settings name by id, each place once, in no order. */
export function mentionsIn(graph: Graph): readonly Mention[] {
  const found = new Map<string, Mention>();
  const take = (by: Id | null, file: string): Take => {
    return (id, start, end) => found.set(`${file} ${start} ${id}`, { id, by, file, start, end });
  };
  for (const { list, id, file, node } of [...graph.records.values(), ...graph.leftOut])
    inFields(node, fieldsOf(list), take(id, file));
  const isLeftOut = new Set<object>(graph.leftOut);
  for (const one of unread(graph)) if (!isLeftOut.has(one)) inSpoilt(one.node, take(null, one.file));
  inFields(graph.settings.node, settingsFields, take(null, graph.settings.file));
  return [...found.values()];
}

type Take = (id: Id, start: number, end: number) => void;

function fieldsOf(list: ListName): Fields {
  return { ...kindOf(list).fields, ...everywhere };
}

function inFields(node: MapNode, fields: Fields, take: Take): void {
  for (const { key, value } of node.entries) {
    const field = Object.hasOwn(fields, key) ? fields[key] : undefined;
    if (field) inField(value, key, field, take);
  }
}

/** Fields of plain text in which an id stands for the record it names, and other words for an event. */
const eventful = new Set(["earlier", "later", "same-time", "is", "after", "before", "about", "withhold"]);

function inField(value: Node, key: string, field: Field, take: Take): void {
  const each = (tell: (node: Node) => void): void =>
    value.is === "list" ? value.items.forEach(tell) : tell(value);
  switch (field.type) {
    case "ref":
    case "refs":
      return each((node) => whole(node, take));
    case "citation":
    case "citations":
      return each((node) => cited(node, take));
    case "text":
    case "texts":
      return eventful.has(key) ? each((node) => whole(node, take)) : undefined;
    case "numberMap":
    case "probability":
      return keys(value, take);
    case "json":
      return inJson(value, key, take);
    case "group":
      return value.is === "map" ? inFields(value, field.fields, take) : undefined;
    case "items":
      return each((node) => (node.is === "map" ? inFields(node, field.fields, take) : undefined));
    case "named":
      if (value.is !== "map") return;
      for (const one of value.entries) if (one.value.is === "map") inFields(one.value, field.fields, take);
      return;
    default:
      return;
  }
}

function whole(node: Node, take: Take): void {
  if (node.is === "text") take(node.text, node.start, node.end);
}

/** The key of a citation, which ends at its first space. */
function cited(node: Node, take: Take): void {
  if (node.is === "text") take(node.text.split(/\s/u)[0] ?? "", node.start, node.end);
}

function keys(node: Node, take: Take): void {
  if (node.is !== "map") return;
  for (const { key, keyStart, keyEnd } of node.entries) take(key, keyStart, keyEnd);
}

/** Words of a selection, and of what a talk shows, behind which ids stand. */
const pointing = new Set(["of", "by", "from", "without", "prefer"]);
const shown = new Set(["question", "around", "figure", "drawing", "image"]);

/** Ids in a derivation's inputs and parameters, and in what a talk shows; other fields of plain data name nothing. */
function inJson(node: Node, key: string, take: Take): void {
  if (key === "show") return inWords(node, key, shown, take);
  if (node.is !== "map") return;
  for (const one of node.entries) {
    if (key === "inputs") inWords(one.value, one.key, pointing, take);
    // Any other word of a parameter is a unit, a choice or a text, also where a record is called so.
    else if (key === "parameters" && one.value.is === "map") inWords(one.value, one.key, none, take);
  }
}

const none: ReadonlySet<string> = new Set();

/** Ids by themselves, or behind some words of a map; `number: ID.name` names a derivation. What is dated may be an event in words. */
function inWords(node: Node, word: string, words: ReadonlySet<string>, take: Take): void {
  if (node.is === "list") for (const item of node.items) inWords(item, word, words, take);
  else if (node.is === "text") (word === "of" ? whole : cited)(node, take);
  else
    for (const { key, value } of node.entries) {
      if (words.has(key)) inWords(value, key, words, take);
      else if (key === "number" && value.is === "text")
        take(derivationOf(value.text), value.start, value.end);
    }
}

/** Prose and words of description, in which a word that is an id means no record. */
const prose = new Set(
  (
    "name text note short quote words title method translation paraphrase dimension feature basis state present parts " +
    "kind material unit plugin between instrument scheme strength stance certainty status where table selector"
  ).split(" "),
);

/** What is named in a record that could not be read, so that nobody knows its fields. */
function inSpoilt(node: Node, take: Take, key = ""): void {
  if (prose.has(key)) return;
  if (node.is === "list") for (const item of node.items) inSpoilt(item, take, key);
  else if (node.is === "map") for (const one of node.entries) inSpoilt(one.value, take, one.key);
  else cited(node, take);
}
