import type { Model } from "../../../build.ts";
import type { Id } from "../../../base/finding.ts";
import type { Text } from "../../../base/text/said/said.ts";
import { unsupposed } from "../../../derive/lens.ts";
import { labelText } from "../../../link/names/label.ts";
import type { Source } from "../../../read/bibliography/read.ts";
import { citationStyleIn } from "../../../read/bibliography/style/style.ts";
import type { CitationStyle } from "../../../read/bibliography/style/style.ts";
import { applicationOf } from "../../../show/telling/application/application.ts";
import type { HistoryTold } from "../../../show/judged/history/page.ts";
import type { Manuscript } from "../../../show/telling/blocks/block.ts";
import { proseOf } from "../../../show/telling/prose/prose.ts";
import { sectionsOf } from "../../../show/telling/prose/sections.ts";
import type { ReviewDesk } from "../../../show/telling/review/desk.ts";
import { reviewOf } from "../../../show/telling/review/review.ts";
import {
  isSection,
  sectionHeadings,
  sectionsAsked,
  usualSections,
} from "../../../show/telling/review/sections.ts";
import { withheldIn } from "../../../show/withhold.ts";
import { citedIn } from "../../../write/telling/set/cited.ts";
import type { Desk } from "../desk.ts";
import { plugins } from "../plugins.ts";
import type { Progress } from "./slices.ts";

/** What the page of what is written is asked for: a kind, and what the kind is asked. */
export interface TellingAsked {
  readonly kind: string;
  readonly question: string | null;
  readonly examination: string | null;
  readonly style: string | null;
  /** Null for those that the settings or the program have. */
  readonly sections: readonly string[] | null;
}

/** Something that can be chosen, by its id. */
export interface Choice {
  readonly id: Id;
  readonly text: Text;
}

/** A section of the review: the program's by its heading, or a file of the scholar's own. */
export interface SectionChoice {
  readonly name: string;
  readonly text: Text;
  /** The path of the file whose words stand in it; null where there is none. */
  readonly file: string | null;
}

/** A text before it has a format, with what it takes to set its citations. */
export interface Preview {
  readonly manuscript: Manuscript;
  readonly sources: readonly Source[];
  readonly style: CitationStyle;
}

/** The page of what can be written: what can be chosen, and the text as it now is. */
export interface TellingPage {
  readonly asked: TellingAsked;
  readonly questions: readonly Choice[];
  readonly examinations: readonly Choice[];
  readonly talks: readonly Choice[];
  /** The style of the corpus, and those that lie in it. */
  readonly style: string;
  readonly ownStyles: readonly string[];
  readonly sections: readonly string[];
  readonly usual: readonly string[];
  readonly all: readonly SectionChoice[];
  /** Null for what is no text. */
  readonly preview: Preview | null;
  /** The question that the preview tells where all are written; null where it tells what is written. */
  readonly previewed: Choice | null;
  /** Numbers still to be computed, and how far the plan and the years of print have come. */
  readonly pending: number;
  readonly progress: Progress | null;
  readonly years: Progress | null;
}

/** From so many records on the preview of all questions tells the first of them alone: all would be thousands of pages. */
const large = 5000;

/** The page of what can be written under the lens that is looked at. */
export function tellingAt(desk: Desk, asked: TellingAsked, many: number = large): TellingPage {
  const { model, texts } = desk;
  const { graph } = model;
  const files = graph.prose;
  const usual = sectionsOf(graph);
  const own = files.map((one) => one.name);
  const sections = asked.sections === null ? usual : sectionsAsked(asked.sections, own).sections;
  const all = [...new Set([...sections, ...usual, ...usualSections(own)])];
  const withheld = withheldIn(graph);
  const choices = (list: "questions" | "examinations" | "talks"): readonly Choice[] =>
    graph.list(list).flatMap(({ id }) => (withheld(id) ? [] : [{ id, text: labelText(graph, id) }]));
  const pending = model.derivations.missing.length;
  const isText = asked.kind === "review" || asked.kind === "application";
  if (isText) desk.need(model.derivations.missing);
  const planning = isText && pending === 0 ? planned(desk) : null;
  const questions = choices("questions");
  const isAll = asked.kind === "review" && !questions.some(({ id }) => id === asked.question);
  const previewed = (isAll && graph.records.size >= many && questions[0]) || null;
  const hasYears = asked.kind === "review" && sections.includes("course");
  const course = hasYears ? courseIn(desk) : null;
  const manuscript = isText
    ? textOf(desk, previewed ? { ...asked, question: previewed.id } : asked, sections, {
        plan: planning?.plan ?? null,
        history: course && (course.progress === null ? course.steps : []),
      })
    : null;
  return {
    asked,
    questions,
    examinations: choices("examinations"),
    talks: choices("talks"),
    style: "shipped" in graph.citationStyle ? graph.citationStyle.shipped : graph.citationStyle.file,
    ownStyles: [...texts.keys()].filter((path) => /\.csl$/iu.test(path)).toSorted(),
    sections,
    usual,
    all: all.map((name) => ({
      name,
      text: isSection(name) ? sectionHeadings[name] : ownHeading(name, files),
      file: files.find((one) => one.name === name)?.file ?? null,
    })),
    preview: manuscript && previewOf(desk, manuscript, asked.style),
    previewed,
    pending,
    progress: planning?.progress ?? null,
    years: course?.progress ?? null,
  };
}

/** What a section of the scholar's own is headed with, as far as it is plain words; else the name of its file. */
function ownHeading(name: string, files: Model["graph"]["prose"]): string {
  const [block] = files.find((one) => one.name === name)?.blocks ?? [];
  const [words] = block?.is === "heading" ? block.of : [];
  return typeof words === "string" ? words : name;
}

/** The plan of the record itself in the year looked at: made here where it is not made yet. */
function planned(desk: Desk): ReturnType<Desk["plans"]["make"]> {
  const { model, under } = desk;
  const record: Model = model.lens.suppose === undefined ? model : under(unsupposed(model.lens));
  const planning = desk.plans.make(record);
  desk.need(planning.missing);
  return planning;
}

/** The years of print; in a text they are told once all of them are there. */
function courseIn({ model, through, need }: Desk): HistoryTold {
  const { told, missing } = through(model, "whole");
  need(missing);
  return told;
}

function textOf(
  { model, findings, memo }: Desk,
  asked: TellingAsked,
  sections: readonly string[],
  made: Pick<Model, "plan" | "history">,
): Manuscript | null {
  const { graph } = model;
  const at: ReviewDesk = { model: { ...model, ...made }, findings, plugins, memo };
  if (asked.kind === "review") {
    const question = graph.list("questions").find(({ id }) => id === asked.question)?.id ?? null;
    return reviewOf(at, { question, sections, prose: proseOf(model, plugins) });
  }
  const withheld = withheldIn(graph);
  const known = graph.list("examinations").filter(({ id }) => !withheld(id));
  const one = known.find(({ id }) => id === asked.examination) ?? known[0];
  return one === undefined ? null : applicationOf(at, one.id);
}

function previewOf({ model, corpus }: Desk, manuscript: Manuscript, named: string | null): Preview {
  const { graph } = model;
  const cited = citedIn(manuscript);
  const files = new Map(corpus().files.map((file) => [file.path, file]));
  const nowhere = { file: "", start: 0, end: 0 };
  return {
    manuscript,
    sources: [...graph.sources.values()].filter(({ key }) => cited.has(key)),
    style: named === null ? graph.citationStyle : citationStyleIn(named, files, nowhere).style,
  };
}
