import type { Id } from "../../base/finding.ts";
import { yearWords } from "../../base/date/year-words.ts";
import { say } from "../../base/text/said/said.ts";
import type { Text } from "../../base/text/said/said.ts";
import type { AnyLinked, Graph } from "../../link/graph.ts";
import { withoutStop } from "../../link/names/label.ts";
import type { Citation, Field, Fields } from "../../read/grammar/field.ts";
import { choiceName, fieldName } from "../../read/grammar/field-words.ts";
import { everywhere, kindOf } from "../../read/grammar/kinds.ts";
import { costInWords } from "../plan/wording.ts";
import { placeTold } from "../desk/papers/records/told.ts";
import { placeWithheld, withheldIn } from "../withhold.ts";
import { dateWords } from "./date-words.ts";
import { jsonPieces, jsonRows } from "./json-words.ts";
import { between, joined, linkTo, rowOf, words } from "./pieces.ts";
import type { FieldRow, Piece } from "./pieces.ts";

/** One field of a sheet, in words. */
export interface FieldLine {
  readonly name: string;
  readonly lines: readonly FieldRow[];
}

/** Fields that the sheet says elsewhere. */
const elsewhere: readonly string[] = ["id", "short"];

/** A record's fields in words, all but what its sheet says elsewhere and what is kept out of every output. */
export function fieldLines(graph: Graph, record: AnyLinked, title: Text): readonly FieldLine[] {
  const fields: Fields = { ...kindOf(record.list).fields, ...everywhere };
  const lang = record.list === "passages" ? (record.values.lang ?? null) : null;
  return Object.entries(record.values as Readonly<Record<string, unknown>>).flatMap(([name, value]) => {
    const field = fields[name];
    if (!field || elsewhere.includes(name) || value === title || fieldWithheld(graph, record, name))
      return [];
    const rows = rowsOf(graph, name, field, value, name === "quote" ? lang : null);
    return rows.length > 0 ? [{ name: labelWords(name), lines: rows }] : [];
  });
}

/** Where a thing was found stays out of every output when it is withheld; exact places always do. */
export function fieldWithheld(graph: Graph, record: AnyLinked, name: string): boolean {
  if (record.list !== "artefacts") return false;
  return name === "coordinates" || (name === "found-at" && placeWithheld(graph, record.id));
}

function labelWords(name: string): string {
  return name.replace(/-/g, " ");
}

type Values = Readonly<Record<string, unknown>>;

function rowsOf(
  graph: Graph,
  name: string,
  field: Field,
  value: unknown,
  lang: string | null,
): readonly FieldRow[] {
  const row = (pieces: readonly Piece[], label: Text | null = null): readonly FieldRow[] =>
    pieces.length > 0 ? [rowOf(pieces, label)] : [];
  switch (field.type) {
    case "textMap":
    case "numberMap":
      return [...(value as ReadonlyMap<string, unknown>)].flatMap(([key, one]) => {
        const link = linkTo(graph, key);
        return link.to === null
          ? row([words(String(one))], labelWords(key))
          : row([link, words(": "), words(String(one))]);
      });
    case "group":
      return Object.entries(value as Values).flatMap(([key, one]) => {
        const inner = field.fields[key];
        return inner ? row(piecesOf(graph, key, inner, one, null), fieldName(key)) : [];
      });
    case "items":
      return (value as readonly Values[]).flatMap((one) => row(itemPieces(graph, field.fields, one)));
    case "json": {
      const place = name === "selector" ? placeTold(value) : null;
      return place === null ? jsonRows(graph, value) : row([words(place)]);
    }
    default:
      return row(piecesOf(graph, name, field, value, lang));
  }
}

/** Names of fields that say of themselves what they are, in a list of maps. */
const plain: readonly string[] = [
  "is",
  "when",
  "what",
  "event",
  "kind",
  "claim",
  "from",
  "by",
  "text",
  "why",
  "feature",
  "present",
];

/** Names of fields that hold a sentence, which does not end within a row of others. */
const sentences: readonly string[] = ["text", "what", "why"];

function itemPieces(graph: Graph, fields: Fields, item: Values): readonly Piece[] {
  const parts = Object.entries(item).flatMap(([name, value]) => {
    const field = fields[name];
    if (!field || name === "id") return [];
    const pieces = piecesOf(
      graph,
      name,
      field,
      sentences.includes(name) ? withoutStop(String(value)) : value,
      null,
    );
    return plain.includes(name) || pieces.length === 0
      ? [pieces]
      : [[words(say`${fieldName(name)} `), ...pieces]];
  });
  // What has commas of its own is parted by more than a comma.
  return joined(
    parts,
    Object.values(fields).some(({ type }) => type === "items") ? between.semicolon : between.comma,
  );
}

const seen: Readonly<Record<string, Text>> = {
  true: say`seen`,
  false: say`looked for and not there`,
  unclear: say`looked for, cannot be told`,
  "not-reported": say`passed over in silence`,
};

/** Texts that may also be the name of a record. */
const mayName: readonly string[] = ["earlier", "later", "same-time", "is", "after", "before"];

function piecesOf(
  graph: Graph,
  name: string,
  field: Field,
  value: unknown,
  lang: string | null,
): readonly Piece[] {
  const each = <T>(all: unknown, piece: (one: T) => readonly Piece[]): readonly Piece[] =>
    joined((all as readonly T[]).map(piece), between.comma);
  const named = (text: string): Piece =>
    mayName.includes(name) && graph.records.has(text) ? linkTo(graph, text) : words(dateIn(name, text), lang);
  switch (field.type) {
    case "ref":
      return withheldIn(graph)(value as Id) ? [] : [linkTo(graph, value as Id)];
    case "refs":
      return each<Id>(
        (value as readonly Id[]).filter((id) => !withheldIn(graph)(id)),
        (id) => [linkTo(graph, id)],
      );
    case "citation":
      return citationPieces(graph, value as Citation);
    case "citations":
      return citedPieces(graph, value as readonly Citation[]);
    case "quantity":
      return [words((value as { readonly text: string }).text)];
    case "quantities":
      return each<{ readonly text: string }>(value, (one) => [words(one.text)]);
    case "texts":
      return each<string>(value, (one) => [named(one)]);
    case "text":
      return [named(String(value))];
    case "number":
    case "amount":
      return [
        words((name === "cost" && costInWords(Number(value), graph.settings.costsIn)) || String(value)),
      ];
    case "flag":
      return [words(value === true ? say`yes` : say`no`)];
    case "year":
      return [words(yearWords(value as number))];
    case "date":
      return [words(dateWords(String(value)))];
    case "choice":
      return [words(name === "present" ? (seen[String(value)] ?? "") : choiceName(String(value)))];
    case "json":
      return jsonPieces(graph, value);
    case "probability":
      return [words(typeof value === "number" ? String(value) : say`by answer`)];
    case "items":
      return joined(
        (value as readonly Values[]).map((one) => itemPieces(graph, field.fields, one)),
        between.semicolon,
      );
    case "group":
      return itemPieces(graph, field.fields, value as Values);
    case "textMap":
    case "numberMap":
      return joined(
        [...(value as ReadonlyMap<string, unknown>)].map(([key, one]) => [words(`${key} ${String(one)}`)]),
        between.comma,
      );
    case "named":
      return [];
    default:
      return [words(String(value), lang)];
  }
}

/** What a claim says of dates may be EDTF. */
function dateIn(name: string, text: string): Text {
  return ["is", "after", "before"].includes(name) ? dateWords(text) : text;
}

/** Places in sources one after the other: `Vane 1968 p. 12; Hale 1896`. */
export function citedPieces(graph: Graph, citations: readonly Citation[]): readonly Piece[] {
  return joined(
    citations.map((one) => citationPieces(graph, one)),
    between.semicolon,
  );
}

/** A place in a source in words that lead there; nothing where the source is withheld. */
export function citationPieces(graph: Graph, citation: Citation): readonly Piece[] {
  if (withheldIn(graph)(citation.key)) return [];
  const link = linkTo(graph, citation.key);
  return citation.locator === null ? [link] : [link, words(` ${citation.locator}`)];
}
