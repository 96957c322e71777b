import type { Finding } from "../../base/finding.ts";
import type { Lens, Memo, Model, Run, SourceFile } from "../../build.ts";
import type { Histories } from "./models/histories.ts";
import type { Planning, Plans } from "./planning/plans.ts";

/** The corpus as it was read, and what is remembered of it. */
export type CorpusRead = { readonly files: readonly SourceFile[] } & Memo;

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
  /** The files that all this was read from: a draft is tried beside them. */
  readonly corpus: () => CorpusRead;
  /** Plans of what to examine next: one that is made, or one to be made, after which the page is made again. */
  readonly plans: { readonly made: Plans["made"]; readonly make: (model: Model) => Planning };
  /** The history of a model as far as it is there; the page is made again when it is whole, and, where that is asked for, as it grows. */
  readonly through: (model: Model, told: "growing" | "whole") => ReturnType<Histories["through"]>;
}
