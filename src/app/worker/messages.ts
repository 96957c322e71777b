import type { Lens, SourceFile } from "../../build.ts";
import type { Declared } from "../../host/guest/guest.ts";
import type { Standing } from "../../judge/judge.ts";
import type { Contents } from "../../show/pages/contents.ts";
import type { SupposedTold } from "../../show/judged/suppose/supposed.ts";
import type { FindingLine } from "../../show/pages/findings.ts";
import type { PageData, Wanted } from "./pages.ts";

export type { PageData, Wanted } from "./pages.ts";

/** To the worker that holds the model. */
export type Asked =
  | {
      readonly ask: "files";
      readonly files: readonly SourceFile[];
      /** Plug-ins of the corpus that are allowed to run. */
      readonly guests: readonly Declared[];
    }
  | { readonly ask: "page"; readonly number: number; readonly lens: Lens; readonly wanted: Wanted }
  /** The door to the worker that searches: the corpus goes through it, now and whenever it changes. */
  | { readonly ask: "search"; readonly port: MessagePort };

/** A standing that an edit of the files changed. */
export interface Change {
  readonly text: string;
  readonly was: Standing | null;
  readonly is: Standing | null;
}

/** From the worker that holds the model. */
export type Told =
  | {
      readonly tell: "page";
      readonly number: number;
      readonly contents: Contents;
      readonly page: PageData;
      /** Null where nothing is supposed. */
      readonly supposed: SupposedTold | null;
    }
  /** How far the plan that the page is made from has come: examinations thought through, of how many. */
  | { readonly tell: "planning"; readonly number: number; readonly done: number; readonly of: number }
  | { readonly tell: "unreadable"; readonly number: number; readonly findings: readonly FindingLine[] }
  | { readonly tell: "changed"; readonly changes: readonly Change[] };
