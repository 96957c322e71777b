import { artefactPage } from "../../show/artefacts/artefact.ts";
import { artefactsPage } from "../../show/artefacts/artefacts.ts";
import { imagePage } from "../../show/artefacts/picture/page.ts";
import { mergePage } from "../../show/desk/changes/merging/page.ts";
import type { MergeAsked } from "../../show/desk/changes/merging/page.ts";
import { historyPage } from "../../show/judged/history/page.ts";
import { ofAllYears } from "../../show/judged/suppose/supposed.ts";
import { rememberedMaps } from "../../show/map/page.ts";
import type { MapView } from "../../show/map/scene.ts";
import { wholeWords } from "../../show/map/whole.ts";
import { numberPage } from "../../show/numbers/number.ts";
import { numbersPage } from "../../show/numbers/numbers.ts";
import { literaturePage } from "../../show/desk/literature/page.ts";
import { formPage } from "../../show/desk/forms/page.ts";
import type { FormWanted } from "../../show/desk/forms/page.ts";
import { gridPage } from "../../show/desk/grid/page.ts";
import { entryPage } from "../../show/desk/import/entry.ts";
import { paperPage } from "../../show/desk/papers/page.ts";
import { recordsPage, stockOf } from "../../show/pages/contents.ts";
import { findingLines } from "../../show/pages/findings.ts";
import { outlinePage } from "../../show/pages/outline/outline.ts";
import { questionPage } from "../../show/pages/question.ts";
import { sheetOf } from "../../show/pages/sheet.ts";
import { scholarPage } from "../../show/scholars/scholar.ts";
import type { Most } from "../../show/scholars/matrix.ts";
import { scholarsPage } from "../../show/scholars/scholars.ts";
import { standpointsPage } from "../../show/judged/standpoints/page.ts";
import { inLanguage } from "../words/reader/tongues.ts";
import { changesAt } from "../pages/desk/changes/compared.ts";
import type { Desk } from "./desk.ts";
import { plugins } from "./plugins.ts";
import type { VisitAsked } from "../../show/desk/visit/asked.ts";
import { talksPage } from "../../show/telling/talk/page.ts";
import { talkAt } from "./planning/talk.ts";
import { visitAt } from "./planning/visit.ts";
import { examinationsAt, withDeciders, withOutcomes } from "./planning/pages.ts";
import { tellingAt } from "./planning/telling.ts";
import type { TellingAsked } from "./planning/telling.ts";
import { withResting } from "./models/resting.ts";
import { workbenchAt } from "./workbench.ts";

interface OfOne {
  readonly id: string;
}

/** From so many records on an outline tells what is under a question when it is opened, and the scholars' matrix its first questions. */
const large = 5000;

const maps = rememberedMaps();

/** Every page by its name: what it is asked for, and the data it is shown with. */
export const pages = {
  contents: () => null,
  records: ({ model }: Desk, { words }: { readonly words: string }) => recordsPage(model, words),
  search: ({ model }: Desk) => stockOf(model),
  // Another object whenever the corpus is: then what is to come in is held against it again.
  import: () => ({}),
  entry: ({ under, texts }: Desk, { id }: OfOne) => entryPage(under({}).graph, texts, id),
  question: (desk: Desk, { id }: OfOne) => withDeciders(desk, questionPage(desk.model, id)),
  sheet: (desk: Desk, { id }: OfOne) =>
    withResting(desk, withOutcomes(desk, sheetOf(desk.model, desk.findings, desk.texts, id))),
  map: (desk: Desk, { view, language }: { readonly view: MapView; readonly language: "en" | "ar" }) => {
    const told = inLanguage[language];
    const page = maps({ ...desk, told }, { view });
    return { ...page, ...wholeWords(desk.under(ofAllYears(desk.model.lens)).graph, page, told) };
  },
  outline: ({ model }: Desk, { open }: { readonly open: readonly string[] }) =>
    outlinePage(model, model.graph.records.size < large ? null : new Set(open)),
  literature: ({ under }: Desk) => literaturePage(under({}).graph),
  artefacts: ({ model }: Desk, { draw }: { readonly draw: readonly string[] }) => artefactsPage(model, draw),
  artefact: ({ model }: Desk, { id }: OfOne) => artefactPage(model, id),
  image: ({ model }: Desk, { id }: OfOne) => imagePage(model, id),
  numbers: ({ model }: Desk) => numbersPage(model, plugins),
  number: ({ model, memo }: Desk, { id }: OfOne) => numberPage(model, plugins, memo, id),
  workbench: (desk: Desk, { of }: { readonly of: string | null }) => workbenchAt(desk, of),
  scholars: ({ model }: Desk, { most }: { readonly most: Most }) =>
    model.graph.records.size < large ? scholarsPage(model) : scholarsPage(model, most),
  scholar: ({ model, findings, texts }: Desk, { id }: OfOne) => scholarPage(model, findings, texts, id),
  history: ({ model, through, need }: Desk) => {
    const { told, missing } = through(model, "growing");
    need(missing);
    return historyPage(model, told);
  },
  standpoints: ({ model }: Desk) => standpointsPage(model),
  examinations: (desk: Desk) => examinationsAt(desk),
  visit: (desk: Desk, { asked }: { readonly asked: VisitAsked }) => visitAt(desk, asked),
  telling: (desk: Desk, { asked }: { readonly asked: TellingAsked }) => tellingAt(desk, asked),
  changes: (desk: Desk, { of }: { readonly of: string }) => changesAt(desk, of),
  grid: ({ under }: Desk, wanted: Pick<FormWanted, "presets">) => gridPage(under({}).graph, wanted),
  form: ({ under, texts }: Desk, wanted: FormWanted) => formPage(under({}).graph, texts, wanted),
  paper: (desk: Desk, { id }: OfOne) => paperPage(desk, id),
  merge: ({ under, texts }: Desk, asked: MergeAsked) => mergePage(texts, under({}).graph, asked),
  talks: ({ model, findings }: Desk, { propose }: { readonly propose: string | null }) =>
    talksPage(model, { findings, plugins }, propose),
  talk: (desk: Desk, { id, language }: OfOne & { readonly language: "en" | "ar" }) =>
    talkAt(desk, id, language),
  findings: ({ model, findings, texts }: Desk) => findingLines(model.graph, findings, texts),
} as const;

type Pages = typeof pages;
/** The name of a page. */
export type PageName = keyof Pages;
type Asks<P extends PageName> = Parameters<Pages[P]> extends readonly [unknown, infer Ask] ? Ask : unknown;

/** What a page asks the model for. */
export type Wanted = { [P in PageName]: { readonly page: P } & Asks<P> }[PageName];
/** A page's data. */
export type PageData = {
  [P in PageName]: { readonly page: P; readonly data: ReturnType<Pages[P]> };
}[PageName];

/** The data of the page that is asked for. */
export function pageOf(desk: Desk, wanted: Wanted): PageData {
  const make = pages[wanted.page] as (desk: Desk, wanted: Wanted) => PageData["data"];
  return { page: wanted.page, data: make(desk, wanted) } as PageData;
}
