import type { Lens, Outcome } from "../../build.ts";
import type { Declared } from "../../host/guest/guest.ts";
import type { Action, Prepared } from "../../link/edit/action.ts";
import type { Standing } from "../../judge/judge.ts";
import type { Incipit } from "../../show/pages/incipit/incipit.ts";
import type { Contents } from "../../show/pages/contents.ts";
import type { SupposedTold } from "../../show/judged/suppose/supposed.ts";
import type { MergePage } from "../../show/desk/changes/merging/told.ts";
import type { FindingLine } from "../../show/pages/findings.ts";
import type { FilesTold } from "./models/taken.ts";
import type { PageData, Wanted } from "./pages.ts";
import type { Handed } from "../pages/desk/changes/compared.ts";
import type { OnBench } from "./workbench.ts";

export type { PageData, Wanted } from "./pages.ts";

/** To the worker that holds the model. */
export type Asked =
  | (FilesTold & {
      readonly ask: "files";
      /** Plug-ins of the corpus that are allowed to run; null where they are those they were. */
      readonly guests: readonly Declared[] | null;
    })
  /** All files are on their way, in lines of JSON; those with the questions come first. */
  | {
      readonly ask: "coming";
      readonly count: number;
      readonly first: number;
      /** Whether it is so much that what is read first is told before the rest is there. */
      readonly large: boolean;
    }
  | { readonly ask: "lines"; readonly bytes: Uint8Array }
  /** They are there, and are the files from now on; not where they were overtaken by others. */
  | { readonly ask: "came"; readonly guests: readonly Declared[]; readonly kept: boolean }
  /** What is kept of the runs that were asked for: a document like that of the memo; null where there is none. */
  | { readonly ask: "recalled"; readonly bytes: ArrayBuffer | null }
  /** Outcomes of earlier runs, by their keys. */
  | { readonly ask: "remember"; readonly outcomes: readonly (readonly [string, Outcome])[] }
  | { readonly ask: "page"; readonly number: number; readonly lens: Lens; readonly wanted: Wanted }
  /** What an action at the desk comes to, as the files now are. */
  | { readonly ask: "prepare"; readonly number: number; readonly action: Action }
  /** Two times of the corpus that a page compares. */
  | { readonly ask: "compare"; readonly handed: Handed }
  /** What lies on the workbench now. */
  | { readonly ask: "bench"; readonly on: OnBench }
  /** The door to the worker that searches: the corpus goes through it, now and whenever it changes. */
  | { readonly ask: "search"; readonly port: MessagePort }
  /** The door to the forms: what they ask while they are filled in goes through it, and is answered. */
  | { readonly ask: "forms"; readonly port: MessagePort }
  /** The door to the page on which bibliographies come in. */
  | { readonly ask: "import"; readonly port: MessagePort }
  /** The door to the grid in which measurements are recorded. */
  | { readonly ask: "grid"; readonly port: MessagePort }
  /** The door to the argument in hand. */
  | { readonly ask: "arguing"; readonly port: MessagePort };

/** A standing that an edit of the files changed. */
export interface Change {
  readonly text: string;
  readonly was: Standing | null;
  readonly is: Standing | null;
}

/** What is being done before a page can be shown: files are read, of so many; or what they say is judged; or the rules are gone through. */
export type Opening =
  | { readonly stage: "files"; readonly done: number; readonly of: number }
  | { readonly stage: "judging" | "rules" };

/** From the worker that holds the model. */
export type Told =
  | {
      readonly tell: "page";
      readonly number: number;
      readonly contents: Contents;
      readonly page: PageData;
      /** Null where nothing is supposed. */
      readonly supposed: SupposedTold | null;
      /** Otherwise what the rules find, and what claims rest on, is of the corpus before its last change; the page is told again. */
      readonly whole: boolean;
    }
  /** The questions, while the rest is being read. */
  | { readonly tell: "incipit"; readonly incipit: Incipit }
  | { readonly tell: "opening"; readonly opening: Opening }
  /** Runs that may have been computed at another time: what is kept of them is to be handed in. */
  | { readonly tell: "recall"; readonly keys: readonly string[] }
  /** How far the plan that the page is made from has come: examinations thought through, of how many. */
  | { readonly tell: "planning"; readonly number: number; readonly done: number; readonly of: number }
  | { readonly tell: "prepared"; readonly number: number; readonly prepared: Prepared }
  /** Outcomes of the corpus's own runs that are new, once all of them are there: a document as the memo takes it. */
  | { readonly tell: "computed"; readonly document: Uint8Array<ArrayBuffer> }
  /** How far a run is that is being computed, 0 to 1. */
  | { readonly tell: "computing"; readonly key: string; readonly done: number }
  | {
      readonly tell: "unreadable";
      readonly number: number;
      readonly findings: readonly FindingLine[];
      /** Where that is asked for: without its settings no other page of the corpus can be made. */
      readonly merge: MergePage | null;
    }
  | { readonly tell: "changed"; readonly changes: readonly Change[] };
