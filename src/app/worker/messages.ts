import type { Lens, SourceFile } from "../../build.ts";
import type { Standing } from "../../judge/judge.ts";
import type { Contents } from "../../show/pages/contents.ts";
import type { FindingLine } from "../../show/pages/findings.ts";
import type { OutlineLine } from "../../show/pages/outline.ts";
import type { QuestionPage } from "../../show/pages/question.ts";
import type { Sheet } from "../../show/pages/sheet.ts";

/** What a page asks the model for. */
export type Wanted =
  | { readonly page: "question"; readonly id: string }
  | { readonly page: "sheet"; readonly id: string }
  | { readonly page: "outline" }
  | { readonly page: "findings" }
  | { readonly page: "contents" };

/** To the worker that holds the model. */
export type Asked =
  | { readonly ask: "files"; readonly files: readonly SourceFile[] }
  | { readonly ask: "page"; readonly number: number; readonly lens: Lens; readonly wanted: Wanted };

/** A page's data; the contents come with every page, since the frame shows them. */
export type PageData =
  | { readonly page: "question"; readonly data: QuestionPage | null }
  | { readonly page: "sheet"; readonly data: Sheet | null }
  | { readonly page: "outline"; readonly data: readonly OutlineLine[] }
  | { readonly page: "findings"; readonly data: readonly FindingLine[] }
  | { readonly page: "contents"; readonly data: null };

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
    }
  | { readonly tell: "unreadable"; readonly number: number; readonly findings: readonly FindingLine[] }
  | { readonly tell: "changed"; readonly changes: readonly Change[] };
