import type { Id } from "../../base/finding.ts";
import type { Draft } from "../../show/desk/workbench/draft/draft.ts";
import { workbenchPage } from "../../show/desk/workbench/page.ts";
import type { WorkbenchPage } from "../../show/desk/workbench/page.ts";
import { rememberedTrials } from "../../show/desk/workbench/trial.ts";
import type { Typing } from "../../show/desk/workbench/typing.ts";
import type { Desk } from "./desk.ts";
import { plugins } from "./plugins.ts";

/** What lies on the workbench: the draft of a new derivation, or of a change to one, and what is being typed into it. */
export interface OnBench {
  readonly of: Id | null;
  /** Null where it was taken off, saved or given up. */
  readonly draft: Draft | null;
  readonly typing: Typing | null;
}

const bench = new Map<Id | null, OnBench>();
const trials = rememberedTrials();

/** Puts a draft on the workbench in the place of the one before. */
export function putOnBench(one: OnBench): void {
  bench.set(one.of, one);
}

/** The workbench under the desk's lens, with the draft that lies on it. */
export function workbenchAt(desk: Desk, of: Id | null): WorkbenchPage {
  const { model, findings, need } = desk;
  const corpus = { ...desk.corpus(), plugins, lens: model.lens };
  const { draft, typing } = bench.get(of) ?? { draft: null, typing: null };
  return workbenchPage({ model, findings, corpus, trial: trials, need }, { of, draft, typing });
}
