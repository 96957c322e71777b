import type { Id } from "../../../base/finding.ts";
import type { Text } from "../../../base/text/said/said.ts";
import { answerThrough } from "../../model/door/serving.ts";
import type { Action } from "../../../link/edit/action.ts";
import { actionOf } from "../../../show/map/arguing/action.ts";
import { questionOf, takenInHand } from "../../../show/map/arguing/begun.ts";
import type { ArgumentDraft } from "../../../show/map/arguing/draft.ts";
import { noteOn } from "../../../show/map/arguing/noted.ts";
import { inHandTold, namesIn } from "../../../show/map/arguing/told.ts";
import type { InHandTold, Named } from "../../../show/map/arguing/told.ts";
import { rememberedTried } from "../../../show/map/arguing/trial.ts";
import type { Ground } from "../../../show/map/arguing/trial.ts";

/** What is asked of the model about arguments, and what each question is answered with. */
export interface ArguingQuestions {
  /** What there is to say of an argument in hand, and what would change with it. */
  readonly tell: (draft: ArgumentDraft) => InHandTold;
  /** What saving it does. */
  readonly save: (draft: ArgumentDraft) => Action | { readonly problem: Text };
  /** An argument of the corpus, to be changed. */
  readonly take: (id: Id) => ArgumentDraft | null;
  /** The question that a claim answers. */
  readonly question: (claim: Id) => Id | null;
  /** What records are called, as far as they are there and not withheld. */
  readonly names: (ids: readonly Id[]) => Readonly<Record<Id, Named>>;
  /** What puts a note on a record. */
  readonly note: (asked: { readonly id: Id; readonly text: string }) => Action | null;
}

/** Answers what is asked about arguments through a door. */
export function serveArguing(port: MessagePort, groundNow: () => Ground | null): void {
  const tried = rememberedTried();
  answerThrough<ArguingQuestions>(port, () => {
    const ground = groundNow();
    return (
      ground && {
        tell: (draft) => inHandTold(ground, draft, tried),
        save: (draft) => actionOf(ground.graph, draft),
        take: (id) => takenInHand(ground.graph, id),
        question: (claim) => questionOf(ground.graph, claim),
        names: (ids) => namesIn(ground.model, ids),
        note: ({ id, text }) => noteOn(ground.graph, id, text),
      }
    );
  });
}
