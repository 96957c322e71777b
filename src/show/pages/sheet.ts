import type { Finding, Id } from "../../base/finding.ts";
import { yearText } from "../../base/date/year.ts";
import { formatNumber } from "../../base/quantity/quantity-print.ts";
import type { Standing } from "../../judge/judge.ts";
import { reasonOf } from "../../judge/explain/reason.ts";
import { sentenceOf } from "../../judge/explain/sentence.ts";
import type { AnyLinked, Graph } from "../../link/graph.ts";
import { labelOf } from "../../link/label.ts";
import type { Citation, Field, Fields } from "../../read/grammar/field.ts";
import { everywhere, kindOf } from "../../read/grammar/kinds.ts";
import { spanOf } from "../../read/record.ts";
import { placesIn } from "../place.ts";
import type { Reported } from "../report/report.ts";
import { findingLines } from "./findings.ts";
import type { FindingLine } from "./findings.ts";
import { holdersOf } from "./question.ts";
import type { Holder } from "./question.ts";
import { tiesOf } from "./ties.ts";
import type { Tie } from "./ties.ts";

/** A piece of a field's value: words, or the name of a record that leads there. */
export interface Piece {
  readonly text: string;
  readonly to: Id | null;
  readonly lang: string | null;
}

export interface FieldLine {
  readonly name: string;
  readonly pieces: readonly Piece[];
}

/** One record or source: what it says, where, on what it rests, and why it stands or not. */
export interface Sheet {
  readonly id: Id;
  readonly kind: string;
  readonly title: string;
  readonly standing: Standing | null;
  readonly why: string | null;
  readonly footing: string | null;
  readonly fields: readonly FieldLine[];
  readonly said: { readonly file: string; readonly line: number } | null;
  readonly restsOn: readonly Piece[];
  readonly below: readonly Tie[];
  readonly above: readonly Tie[];
  readonly holders: readonly Holder[];
  readonly numbers: readonly { readonly name: string; readonly value: string }[];
  readonly findings: readonly FindingLine[];
}

/** The sheet of any record or source; null where there is none of that name. */
export function sheetOf(
  model: Reported,
  findings: readonly Finding[],
  texts: ReadonlyMap<string, string>,
  id: Id,
): Sheet | null {
  const { graph, judgement, derivations, footings, restsOn } = model;
  const record = graph.records.get(id);
  const source = graph.sources.get(id);
  if (!record && !source) return null;
  const place = placesIn(texts);
  const at = record ? place(spanOf(record)) : source ? place(source.keySpan) : null;
  const standing = judgement.standings.get(id) ?? null;
  const derived = derivations.byId.get(id);
  return {
    id,
    kind: record ? kindOf(record.list).singular : "source",
    title: record ? titleOf(graph, record) : (source?.csl.title ?? labelOf(graph, id)),
    standing,
    why: standing === null ? null : sentenceOf(graph, reasonOf(graph, derivations, judgement, id)),
    footing: footings.get(id) ?? null,
    fields: record ? fieldLines(graph, record) : sourceLines(graph, id),
    said: at ? { file: at.file, line: at.line } : null,
    restsOn: (restsOn.get(id) ?? []).map((one) => linkTo(graph, one)),
    ...tiesOf(model, id),
    holders: record?.list === "claims" ? holdersOf(graph, judgement, id) : [],
    numbers: Object.entries(derived?.numbers ?? {}).map(([name, number]) => ({
      name,
      value: numberWords(number),
    })),
    findings: findingLines(
      graph,
      findings.filter((one) => one.about.includes(id)),
      texts,
    ),
  };
}

function titleOf(graph: Graph, record: AnyLinked): string {
  return record.list === "claims" || record.list === "questions" || record.list === "observations"
    ? record.values.text
    : labelOf(graph, record.id);
}

function numberWords(number: {
  value: number;
  low: number | null;
  high: number | null;
  unit: string;
}): string {
  const unit = number.unit === "1" ? "" : ` ${number.unit}`;
  const end = (value: number | null): string => (value === null ? "…" : formatNumber(value));
  const interval =
    number.low === null && number.high === null ? "" : ` (${end(number.low)} to ${end(number.high)})`;
  return `${formatNumber(number.value)}${unit}${interval}`;
}

function linkTo(graph: Graph, id: Id): Piece {
  const known = graph.records.has(id) || graph.sources.has(id);
  return { text: labelOf(graph, id), to: known ? id : null, lang: null };
}

const words = (text: string, lang: string | null = null): Piece => ({ text, to: null, lang });

/** Fields that the sheet says elsewhere. */
const elsewhere: readonly string[] = ["id", "short"];

function fieldLines(graph: Graph, record: AnyLinked): readonly FieldLine[] {
  const fields: Fields = { ...kindOf(record.list).fields, ...everywhere };
  const lang = record.list === "passages" ? (record.values.lang ?? null) : null;
  const title = titleOf(graph, record);
  return Object.entries(record.values as Readonly<Record<string, unknown>>).flatMap(([name, value]) => {
    const field = fields[name];
    if (!field || elsewhere.includes(name) || value === title || withheld(record, name)) return [];
    return [
      {
        name: name.replace(/-/g, " "),
        pieces: piecesOf(graph, field, value, name === "quote" ? lang : null),
      },
    ];
  });
}

/** Where a thing was found stays out of every output when it is withheld; exact places always do. */
function withheld(record: AnyLinked, name: string): boolean {
  if (name === "coordinates") return true;
  return name === "found-at" && record.list === "artefacts" && record.values["withhold-location"] === true;
}

function piecesOf(graph: Graph, field: Field, value: unknown, lang: string | null): readonly Piece[] {
  switch (field.type) {
    case "ref":
      return [linkTo(graph, value as Id)];
    case "refs":
      return (value as readonly Id[]).map((id) => linkTo(graph, id));
    case "citation":
      return citationPieces(graph, value as Citation);
    case "citations":
      return (value as readonly Citation[]).flatMap((one) => citationPieces(graph, one));
    case "quantity":
      return [words((value as { readonly text: string }).text)];
    case "quantities":
    case "texts":
      return (value as readonly (string | { readonly text: string })[]).map((one) =>
        words(typeof one === "string" ? one : one.text),
      );
    case "flag":
      return [words(value === true ? "yes" : "no")];
    case "year":
      return [words(yearText(value as number))];
    case "textMap":
    case "numberMap":
      return [...(value as ReadonlyMap<string, unknown>)].map(([name, one]) =>
        words(`${name}: ${String(one)}`),
      );
    case "group":
      return innerPieces(graph, field.fields, value as Readonly<Record<string, unknown>>);
    case "items":
      return (value as readonly Readonly<Record<string, unknown>>[]).flatMap((one, place) => [
        ...(place > 0 ? [words("·")] : []),
        ...innerPieces(graph, field.fields, one),
      ]);
    case "json":
      return [words(JSON.stringify(value))];
    case "probability":
      return [words(typeof value === "number" ? String(value) : "by answer")];
    case "named":
      return [];
    default:
      return [words(String(value), lang)];
  }
}

function citationPieces(graph: Graph, citation: Citation): readonly Piece[] {
  const link = linkTo(graph, citation.key);
  return citation.locator === null ? [link] : [link, words(citation.locator)];
}

function innerPieces(
  graph: Graph,
  fields: Fields,
  value: Readonly<Record<string, unknown>>,
): readonly Piece[] {
  return Object.entries(value).flatMap(([name, one]) => {
    const field = fields[name];
    return field && name !== "id" ? piecesOf(graph, field, one, null) : [];
  });
}

function sourceLines(graph: Graph, id: Id): readonly FieldLine[] {
  const csl = graph.sources.get(id)?.csl;
  if (!csl) return [];
  const names = (csl.author ?? csl.editor ?? []).map(
    (name) => name.literal ?? [name.given, name.family].filter(Boolean).join(" "),
  );
  const line = (name: string, text: string | undefined): readonly FieldLine[] =>
    text === undefined || text === "" ? [] : [{ name, pieces: [words(text, csl.language ?? null)] }];
  return [
    ...line(csl.author ? "authors" : "editors", names.join(", ")),
    ...line("in", csl["container-title"]),
    ...line("publisher", [csl["publisher-place"], csl.publisher].filter(Boolean).join(": ")),
    ...line("volume", csl.volume),
    ...line("pages", csl.page),
    ...line("called", labelOf(graph, id)),
  ];
}
