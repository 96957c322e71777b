import type { Id } from "../../base/finding.ts";
import { yearText } from "../../base/date/year.ts";
import type { AnyLinked, Graph } from "../../link/graph.ts";
import { labelOf } from "../../link/names/label.ts";
import type { Citation, Field, Fields, Target } from "../../read/grammar/field.ts";
import { everywhere, kindOf } from "../../read/grammar/kinds.ts";
import type { Step } from "../../read/yaml/tree.ts";
import { fieldWithheld } from "../pages/fields.ts";
import { jsonPieces } from "../pages/json-words.ts";
import { withheldIn } from "../withhold.ts";
import type { Weight } from "./document.ts";

/** A text of a record and the way to it from the record. */
export interface FieldText {
  readonly field: string;
  readonly text: string;
  readonly lang: string | null;
  readonly weight: Weight;
  readonly path: readonly Step[];
}

/** The texts of a record's fields: all but what is kept out of every output. */
export function fieldTexts(graph: Graph, record: AnyLinked): readonly FieldText[] {
  const fields: Fields = { ...kindOf(record.list).fields, ...everywhere };
  const quoted = record.list === "passages" ? (record.values.lang ?? null) : null;
  return Object.entries(record.values as Values).flatMap(([name, value]) => {
    const field = fields[name];
    if (!field || fieldWithheld(graph, record, name)) return [];
    const lang = name === "quote" ? quoted : langOf(graph, name);
    return textsOf(graph, { field: name, lang, path: [name] }, field, value);
  });
}

type Values = Readonly<Record<string, unknown>>;
type Seat = Pick<FieldText, "field" | "lang" | "path">;

/** Fields that hold names, numbers or anybody's words: their language is not that of the corpus. */
const nobodys: readonly string[] = [
  "id",
  "name",
  "known-as",
  "orcid",
  "numbers",
  "file",
  "lang",
  "plugin",
  "words",
  "licence",
  "credit",
];

function langOf(graph: Graph, name: string): string | null {
  return nobodys.includes(name) ? null : graph.settings.language;
}

const names: readonly string[] = ["name", "known-as", "short", "title", "dimension"];
const numbers: readonly string[] = ["numbers", "orcid"];
const keys: readonly string[] = ["id", "plugin", "file"];

function weightOf(field: string): Weight {
  if (names.includes(field)) return "name";
  if (numbers.includes(field)) return "number";
  return keys.includes(field) ? "key" : "says";
}

/** References that are told by name: to people and things; what is argued has pages of its own. */
const told: readonly Target[] = ["scholars", "artefacts"];

function textsOf(graph: Graph, seat: Seat, field: Field, value: unknown): readonly FieldText[] {
  const one = (text: string, weight: Weight = weightOf(seat.field)): readonly FieldText[] =>
    text === "" ? [] : [{ ...seat, text, weight }];
  const each = (all: unknown, textOf: (one: never) => string): readonly FieldText[] =>
    (all as readonly never[]).flatMap((item, place) =>
      textsHere(textOf(item), { ...seat, path: [...seat.path, place] }),
    );
  const textsHere = (text: string, here: Seat): readonly FieldText[] =>
    text === "" ? [] : [{ ...here, text, weight: weightOf(seat.field) }];
  switch (field.type) {
    case "text":
      return one(openText(graph, String(value)));
    case "id":
    case "date":
      return one(String(value));
    case "texts":
      return each(value, (text: string) => openText(graph, text));
    case "choice":
      return one(seat.field === "present" ? "" : String(value).replace(/-/g, " "));
    case "quantity":
      return one((value as { readonly text: string }).text);
    case "quantities":
      return each(value, (quantity: { readonly text: string }) => quantity.text);
    case "year":
      return one(yearText(value as number));
    case "ref":
    case "refs":
      return field.to.some((target) => told.includes(target))
        ? [value as Id | readonly Id[]].flat().flatMap((id) => refTexts(graph, seat, id))
        : [];
    case "citation":
    case "citations":
      return [value as Citation | readonly Citation[]]
        .flat()
        .flatMap((citation, place) => citationTexts(graph, seat, citation, place));
    case "textMap":
      return [...(value as ReadonlyMap<string, string>)].flatMap(([key, text]) =>
        textsHere(text, { ...seat, path: [...seat.path, key] }),
      );
    case "group":
      return innerTexts(graph, seat, field.fields, value as Values);
    case "items":
      return (value as readonly Values[]).flatMap((item, place) =>
        innerTexts(graph, { ...seat, path: [...seat.path, place] }, field.fields, item),
      );
    case "json":
      return one(
        jsonPieces(graph, value)
          .map((piece) => piece.text)
          .join(""),
      );
    default:
      return [];
  }
}

/** What a group or an item says, each of its fields under its own name. */
function innerTexts(graph: Graph, seat: Seat, fields: Fields, values: Values): readonly FieldText[] {
  return Object.entries(values).flatMap(([name, value]) => {
    const field = fields[name];
    if (!field) return [];
    const inner = { field: name === "is" ? seat.field : name, lang: langOf(graph, name) };
    return textsOf(graph, { ...inner, path: [...seat.path, name] }, field, value);
  });
}

/** A text may be a record's id instead, and that of a withheld one is not told. */
function openText(graph: Graph, text: string): string {
  return withheldIn(graph)(text) ? "" : text;
}

function refTexts(graph: Graph, seat: Seat, id: Id): readonly FieldText[] {
  return withheldIn(graph)(id) ? [] : [{ ...seat, lang: null, text: labelOf(graph, id), weight: "tie" }];
}

/** A citation as it is written: the key, and the place in the source. */
function citationTexts(graph: Graph, seat: Seat, citation: Citation, place: number): readonly FieldText[] {
  if (withheldIn(graph)(citation.key)) return [];
  const text = citation.locator === null ? citation.key : `${citation.key} ${citation.locator}`;
  return [{ ...seat, path: [...seat.path, place], lang: null, text, weight: "tie" }];
}
