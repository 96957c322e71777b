import type { Finding, Id } from "../../../base/finding.ts";
import type { Text } from "../../../base/text/said/said.ts";
import type { Bench } from "../../../derive/choices.ts";
import { labelText } from "../../../link/names/label.ts";
import type { CslItem } from "../../../read/bibliography/csl.ts";
import type { Plugin } from "../../../plugin.ts";
import { findingLines } from "../../pages/findings.ts";
import type { FindingLine } from "../../pages/findings.ts";
import { outlinePage } from "../../pages/outline/outline.ts";
import type { OutlineLine } from "../../pages/outline/outline.ts";
import { questionPage } from "../../pages/question.ts";
import type { QuestionPage } from "../../pages/question.ts";
import type { Reported } from "../../report/report.ts";
import { shownFindings, withheldIn } from "../../withhold.ts";
import { withoutNotes } from "../given/open.ts";
import { withholdingSaid } from "../withholding.ts";
import { coursesOf } from "./course.ts";
import type { Course, Stage } from "./course.ts";
import { filmOf } from "./film.ts";
import type { Film } from "./film.ts";
import { openIndex, picturesFor } from "./open.ts";
import { openSheet } from "./sheet.ts";
import type { OpenSheet } from "./sheet.ts";

/** What the page is made from: the corpus under its lens, of all years, and as of each year before the last. */
export interface DisputeDesk {
  readonly model: Reported;
  readonly whole: Reported;
  readonly earlier: readonly Stage[];
  readonly findings: readonly Finding[];
  readonly files: ReadonlyMap<string, string>;
  readonly plugins: readonly Plugin[];
  readonly memo: Bench["memo"];
}

/** A question on the page: its answers, what they rest on as an outline, and its map. */
export interface OpenQuestion extends QuestionPage {
  readonly outline: readonly OutlineLine[];
  readonly film: Film | null;
}

/** Records of one kind, by their name in the format. */
export interface OpenKind {
  readonly name: string;
  readonly ids: readonly Id[];
}

/** The whole dispute as plain data, with nothing in it that may not be told. */
export interface Dispute {
  readonly title: string;
  readonly language: string;
  readonly authors: readonly string[];
  readonly licence: string | null;
  readonly withholding: readonly Text[];
  /** The examination whose outcome is supposed; null where none is. */
  readonly supposed: Text | null;
  /** A part of the record is left out, or read otherwise than the record prefers. */
  readonly isTrial: boolean;
  /** The years that can be looked at; the last is null where that is the corpus as it is. */
  readonly years: readonly (number | null)[];
  readonly questions: readonly OpenQuestion[];
  readonly kinds: readonly OpenKind[];
  readonly sheets: ReadonlyMap<Id, OpenSheet>;
  readonly courses: ReadonlyMap<Id, Course>;
  readonly findings: readonly FindingLine[];
  readonly sources: readonly CslItem[];
}

/** Gathers the dispute for a page of its own. Notes are working papers and stay at home. */
export function disputeOf(desk: DisputeDesk): Dispute {
  const model = { ...desk.model, graph: withoutNotes(desk.model.graph) };
  const { graph, lens } = model;
  const stages: readonly Stage[] = [...desk.earlier, { year: lens.asOf ?? null, model }];
  const kinds = openIndex(model).map(({ name, entries }) => ({ name, ids: entries.map(({ id }) => id) }));
  const ids = kinds.flatMap((kind) => kind.ids);
  const known = new Set(ids);
  const findings = openFindings(model, desk.findings);
  const under = { model, findings, files: desk.files, plugins: desk.plugins, memo: desk.memo };
  const whole = lens.asOf === undefined ? desk.whole : model;
  const outlines = new Map(outlinePage(model).map((line) => [line.id, line.under]));
  const { title, language, authors, licence } = graph.settings;
  return {
    title,
    language,
    authors: authors.map(({ name }) => name),
    licence,
    withholding: withholdingSaid(graph),
    supposed: graph.supposed === null ? null : labelText(graph, graph.supposed.examination.id),
    isTrial: (lens.without ?? []).length + (lens.instead ?? []).length > 0,
    years: stages.map(({ year }) => year),
    questions: graph.list("questions").flatMap(({ id }): readonly OpenQuestion[] => {
      const page = questionPage(model, id);
      if (page === null || !known.has(id)) return [];
      return [{ ...page, outline: outlines.get(id) ?? [], film: filmOf(whole, id, stages) }];
    }),
    kinds,
    sheets: new Map(ids.flatMap((id) => openSheet(under, id) ?? []).map((sheet) => [sheet.id, sheet])),
    courses: coursesOf(ids, stages, desk.plugins),
    findings: findingLines(graph, findings, desk.files),
    sources: [...graph.sources.values()].flatMap(({ key, csl }) => (known.has(key) ? [csl] : [])),
  };
}

/** Findings that are about nothing kept back: neither withheld records nor pictures that may not be published. */
function openFindings(model: Reported, findings: readonly Finding[]): readonly Finding[] {
  const { graph } = model;
  const withheld = withheldIn(graph);
  const published = picturesFor(model);
  const closed = (id: Id): boolean =>
    withheld(id) || (graph.records.get(id)?.list === "images" && !published(id));
  return shownFindings(graph, findings).filter((one) => one.accepted === null && !one.about.some(closed));
}
