import type { Finding } from "../../base/finding.ts";
import type { Lens, Model } from "../../build.ts";
import { findingLines } from "../../show/pages/findings.ts";
import { outlinePage } from "../../show/pages/outline.ts";
import { questionPage } from "../../show/pages/question.ts";
import { sheetOf } from "../../show/pages/sheet.ts";

/** What a page is made from: the model under the address's lens, the one under none, and what there is to say. */
export interface Desk {
  readonly model: Model;
  /** The model under any other lens: under none it is the dispute whole, whatever year is looked at. */
  readonly under: (lens: Lens) => Model;
  readonly findings: readonly Finding[];
  readonly texts: ReadonlyMap<string, string>;
}

interface OfOne {
  readonly id: string;
}

/** Every page by its name: what it is asked for, and the data it is shown with. */
export const pages = {
  contents: () => null,
  question: ({ model }: Desk, { id }: OfOne) => questionPage(model, id),
  sheet: ({ model, findings, texts }: Desk, { id }: OfOne) => sheetOf(model, findings, texts, id),
  outline: ({ model }: Desk) => outlinePage(model),
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
