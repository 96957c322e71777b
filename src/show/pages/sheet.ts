import type { Finding, Id } from "../../base/finding.ts";
import { yearWords } from "../../base/date/year-words.ts";
import { alike, formatComputed } from "../../base/quantity/quantity-print.ts";
import type { DerivedNumber } from "../../derive/derived/derived.ts";
import type { Standing } from "../../judge/judge.ts";
import { say } from "../../base/text/said/said.ts";
import type { Said, Text } from "../../base/text/said/said.ts";
import { reasonOf } from "../../judge/explain/reason.ts";
import { reasonSaid } from "../../judge/explain/sentence.ts";
import type { AnyLinked, Graph } from "../../link/graph.ts";
import { isSupposed, labelText, withoutStop } from "../../link/names/label.ts";
import { namesakesOf } from "../../link/origin/namesakes.ts";
import { companionFor } from "../../link/origin/companions.ts";
import { plainText } from "../../read/bibliography/csl.ts";
import type { CslItem } from "../../read/bibliography/csl.ts";
import type { CitationStyle } from "../../read/bibliography/style/style.ts";
import { kindOf } from "../../read/grammar/kinds.ts";
import { kindWords } from "../../read/grammar/words.ts";
import { spanOf } from "../../read/record.ts";
import type { Companion } from "../../read/settings/companions/corpus.ts";
import { paperLinks } from "../desk/papers/records/links.ts";
import type { PaperLink } from "../desk/papers/records/links.ts";
import { placesIn } from "../../base/text/lines/place.ts";
import type { Reported } from "../report/report.ts";
import { shownFindings, withheldIn } from "../withhold.ts";
import { explainedBlocks } from "./explained.ts";
import type { ExplainedBlock } from "./explained.ts";
import { fieldLines } from "./fields.ts";
import type { FieldLine } from "./fields.ts";
import { findingLines } from "./findings.ts";
import type { FindingLine } from "./findings.ts";
import { holdersOf } from "./question.ts";
import type { Holder } from "./question.ts";
import { linkTo, words } from "./pieces.ts";
import type { Piece } from "./pieces.ts";
import { tiesOf } from "./ties.ts";
import type { Tie } from "./ties.ts";

/** One record or source: what it says, where, on what it rests, and why it stands or not. */
export interface Sheet {
  readonly id: Id;
  /** The kind of record as the format names one of it; what is only supposed is of no kind of the format. */
  readonly kind: string;
  /** The same in words. */
  readonly kindSaid: Said;
  readonly title: Text;
  readonly standing: Standing | null;
  readonly why: Said | null;
  readonly footing: string | null;
  /** What bears out the standing. */
  readonly explained: readonly ExplainedBlock[];
  readonly fields: readonly FieldLine[];
  readonly said: { readonly file: string; readonly line: number } | null;
  /** The other corpus that it is taken from, in whose folder alone it is changed; null for what is of this one. */
  readonly takenFrom: Companion | null;
  readonly restsOn: readonly Piece[];
  readonly below: readonly Tie[];
  readonly above: readonly Tie[];
  readonly holders: readonly Holder[];
  readonly numbers: readonly { readonly name: string; readonly value: Text }[];
  readonly findings: readonly FindingLine[];
  /** What the reference of a source is made from; null for a record. */
  readonly reference: ReferenceOf | null;
  /** Ways into the papers that it is from, or that it is. */
  readonly papers: readonly PaperLink[];
}

/** A source to be cited: the corpus's style and language, and the sources that its short citation must tell apart. */
export interface ReferenceOf {
  readonly key: Id;
  readonly style: CitationStyle;
  readonly language: string;
  readonly items: readonly CslItem[];
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
  if ((!record && !source) || withheldIn(graph)(id)) return null;
  const place = placesIn(texts);
  const at = record ? place(spanOf(record)) : source ? place(source.keySpan) : null;
  const standing = judgement.standings.get(id) ?? null;
  const derived = derivations.byId.get(id);
  const ties = tiesOf(model, id);
  const fields = record ? fieldLines(graph, record, titleOf(graph, record)) : sourceLines(graph, id);
  return {
    id,
    kind: record ? kindIn(graph, record) : "source",
    kindSaid: record ? kindSaid(graph, record) : kindWords.sources,
    title: record ? titleOf(graph, record) : sourceTitle(graph, id),
    standing,
    why: standing === null ? null : reasonSaid(graph, reasonOf(graph, derivations, judgement, id)),
    footing: footings.get(id) ?? null,
    explained: explainedBlocks(model, id),
    fields: fields.filter((field) => !toldByTies(field, ties)),
    said: at ? { file: at.file, line: at.line } : null,
    takenFrom: companionFor(graph, id),
    restsOn: (restsOn.get(id) ?? []).map((one) => linkTo(graph, one)),
    ...ties,
    holders: record?.list === "claims" ? holdersOf(graph, judgement, id) : [],
    numbers: Object.entries(derived?.numbers ?? {}).map(([name, number]) => ({
      name,
      value: numberWords(number),
    })),
    findings: findingLines(
      graph,
      shownFindings(graph, findings).filter((one) => one.about.includes(id)),
      texts,
    ),
    reference: source && !record ? referenceOf(graph, id) : null,
    papers: paperLinks(graph, id),
  };
}

function referenceOf(graph: Graph, key: Id): ReferenceOf {
  const items = namesakesOf(graph, key).map((source) => source.csl);
  return { key, style: graph.citationStyle, language: graph.settings.language, items };
}

/** Premises, conclusions and things are shown once: as ties with their standings, where they are all among these. */
function toldByTies(field: FieldLine, ties: ReturnType<typeof tiesOf>): boolean {
  if (!["because", "therefore", "against", "of", "part of"].includes(field.name)) return false;
  const tied = new Set([...ties.below, ...ties.above].map((tie) => tie.id));
  const links = field.lines.flatMap((line) => line.pieces.flatMap((piece) => piece.to ?? []));
  return links.length > 0 && links.every((link) => tied.has(link));
}

/** What sort of record it is, and whether it is only supposed. */
function kindIn(graph: Graph, { id, list }: AnyLinked): string {
  const { singular } = kindOf(list);
  return isSupposed(graph, id) ? `supposed ${singular}` : singular;
}

function kindSaid(graph: Graph, { id, list }: AnyLinked): Said {
  return isSupposed(graph, id) ? say`supposed ${kindWords[list]}` : kindWords[list];
}

function sourceTitle(graph: Graph, id: Id): Text {
  const title = graph.sources.get(id)?.csl.title;
  return title === undefined ? labelText(graph, id) : plainText(title);
}

function titleOf(graph: Graph, record: AnyLinked): Text {
  if (record.list === "examinations") return withoutStop(record.values.method);
  return record.list === "claims" || record.list === "questions" || record.list === "observations"
    ? record.values.text
    : labelText(graph, record.id);
}

function numberWords(number: DerivedNumber): Text {
  const unit = number.unit === "1" ? "" : ` ${number.unit}`;
  const end = (value: number | null): string => (value === null ? "…" : formatComputed(value, number.kind));
  const { value, low, high } = number;
  if (low === null && high === null) return `${end(value)}${unit}`;
  const [said = "", from = "", to = ""] = alike([value, low, high].map(end));
  return say`${`${said}${unit}`} (${from} to ${to})`;
}

function sourceLines(graph: Graph, id: Id): readonly FieldLine[] {
  const source = graph.sources.get(id);
  if (!source) return [];
  const { csl, year } = source;
  const names = (csl.author ?? csl.editor ?? []).map(
    (name) => name.literal ?? [name.given, name.family].filter(Boolean).join(" "),
  );
  const told = (name: string, text: Text): readonly FieldLine[] => [
    { name, lines: [{ label: null, pieces: [words(text)] }] },
  ];
  const line = (name: string, text: string | undefined): readonly FieldLine[] =>
    text === undefined || text === ""
      ? []
      : [{ name, lines: [{ label: null, pieces: [words(plainText(text), csl.language ?? null)] }] }];
  return [
    ...line(csl.author ? "authors" : "editors", names.join(", ")),
    ...line("in", csl["container-title"]),
    ...line("publisher", [csl["publisher-place"], csl.publisher].filter(Boolean).join(": ")),
    ...line("volume", csl.volume),
    ...line("pages", csl.page),
    ...(year === null ? [] : told("in print", yearWords(year))),
    ...told("called", plainText(source.label)),
  ];
}
