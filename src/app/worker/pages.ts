import { plugins } from "../../../plugins/index.ts";
import type { Finding } from "../../base/finding.ts";
import type { Lens, Memo, Model, Run } from "../../build.ts";
import { artefactPage } from "../../show/artefacts/artefact.ts";
import { artefactsPage } from "../../show/artefacts/artefacts.ts";
import { rememberedHistories } from "../../show/judged/history/page.ts";
import { rememberedMaps } from "../../show/map/page.ts";
import type { MapView } from "../../show/map/scene.ts";
import { wholeWords } from "../../show/map/whole.ts";
import { numberPage } from "../../show/numbers/number.ts";
import { numbersPage } from "../../show/numbers/numbers.ts";
import { findingLines } from "../../show/pages/findings.ts";
import { outlinePage } from "../../show/pages/outline.ts";
import { questionPage } from "../../show/pages/question.ts";
import { sheetOf } from "../../show/pages/sheet.ts";
import { scholarPage } from "../../show/scholars/scholar.ts";
import { scholarsPage } from "../../show/scholars/scholars.ts";
import { standpointsPage } from "../../show/judged/standpoints/page.ts";

/** What a page is made from: the model under the address's lens, the one under none, and what there is to say. */
export interface Desk {
  readonly model: Model;
  /** The model under any other lens: under none it is the dispute whole, whatever year is looked at. */
  readonly under: (lens: Lens) => Model;
  readonly findings: readonly Finding[];
  readonly texts: ReadonlyMap<string, string>;
  /** Outcomes of runs: what other choices would give is recalled from them. */
  readonly memo: Memo["compute"];
  /** Asks for runs that the page needs beside those of its model; it is made again when their outcomes are there. */
  readonly need: (runs: readonly Run[]) => void;
}

interface OfOne {
  readonly id: string;
}

const maps = rememberedMaps();
const histories = rememberedHistories();

/** Every page by its name: what it is asked for, and the data it is shown with. */
export const pages = {
  contents: () => null,
  search: () => null,
  question: ({ model }: Desk, { id }: OfOne) => questionPage(model, id),
  sheet: ({ model, findings, texts }: Desk, { id }: OfOne) => sheetOf(model, findings, texts, id),
  map: (desk: Desk, { view }: { readonly view: MapView }) => {
    const page = maps(desk, { view });
    return { ...page, ...wholeWords(desk.under({}).graph, page) };
  },
  outline: ({ model }: Desk) => outlinePage(model),
  artefacts: ({ model }: Desk, { draw }: { readonly draw: readonly string[] }) => artefactsPage(model, draw),
  artefact: ({ model }: Desk, { id }: OfOne) => artefactPage(model, id),
  numbers: ({ model }: Desk) => numbersPage(model, plugins),
  number: ({ model, memo }: Desk, { id }: OfOne) => numberPage(model, plugins, memo, id),
  scholars: ({ model }: Desk) => scholarsPage(model),
  scholar: ({ model, findings, texts }: Desk, { id }: OfOne) => scholarPage(model, findings, texts, id),
  history: ({ model, memo, need }: Desk) => {
    const { page, missing } = histories(model, plugins, memo);
    need(missing);
    return page;
  },
  standpoints: ({ model }: Desk) => standpointsPage(model),
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
