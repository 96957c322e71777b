import type { FileChange } from "../../base/text/edit.ts";
import type { Id } from "../../base/finding.ts";
import type { Action, Clash, Prepared } from "../../link/edit/action.ts";
import { against, sendChange } from "../model/corpus.ts";
import type { Answer } from "../model/corpus.ts";
import { inReadersWords } from "../words/reader/said.ts";
import { deskWords } from "../words/desk/desk.ts";

/** What became of something that was to be saved. */
export type Saved =
  | { readonly done: true; readonly step: string; readonly made: readonly Id[] }
  | { readonly clashes: readonly Clash[]; readonly gone: boolean }
  | { readonly problem: string };

/** The ways to the model that saving takes: what an action comes to, and the files read again, as an answer tells them. */
export interface Ways {
  readonly prepare: (action: Action) => Promise<Prepared>;
  readonly readAgain: (answer: Answer) => Promise<void>;
}

/** How often an action is prepared anew where somebody else writes at the same moment. */
const rounds = 4;

/** Has the corpus's files say what an action wants, whatever they say by then; nothing is overwritten unseen. */
export async function saved({ prepare, readAgain }: Ways, action: Action): Promise<Saved> {
  for (let round = 0; round < rounds; round++) {
    const prepared = await prepare(action);
    if ("problem" in prepared) return { problem: inReadersWords(prepared.problem) };
    if (!("changes" in prepared)) return prepared;
    const { made, changes } = prepared;
    const step = inReadersWords(prepared.step);
    if (changes.length === 0) return { done: true, step, made };
    const answer = await sendChange("edit", { step, changes });
    await readAgain(answer);
    if (answer.status === 200) return { done: true, step, made };
    if (answer.status !== 409) return { problem: against(answer.text) };
  }
  return { problem: deskWords.changedMeanwhile };
}

/** Writes changes that were made for the texts as they were shown; a text that changed meanwhile is left as it is. */
export async function savedChanges(
  { readAgain }: Ways,
  step: string,
  changes: readonly FileChange[],
): Promise<Saved> {
  const answer = await sendChange("edit", { step, changes });
  await readAgain(answer);
  return answer.status === 200 ? { done: true, step, made: [] } : { problem: against(answer.text) };
}

/** Takes the last step back, or does it again; its name, or why it could not be done. */
export async function stepped({ readAgain }: Ways, way: "undo" | "redo"): Promise<Saved> {
  const answer = await sendChange(way, {});
  await readAgain(answer);
  if (answer.status !== 200) return { problem: against(answer.text) };
  const { step } = JSON.parse(answer.text) as { readonly step: string };
  return { done: true, step, made: [] };
}
