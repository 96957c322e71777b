import { useLayoutEffect } from "react";
import { flushSync } from "react-dom";
import type { Id } from "../../../base/finding.ts";
import type { ListName } from "../../../read/grammar/field.ts";
import { against, leadingTo, leadingToNew, withPremise } from "../../../show/map/arguing/draft.ts";
import type { ArgumentDraft } from "../../../show/map/arguing/draft.ts";
import { rolesOf } from "../../../show/map/arguing/roles.ts";
import { useActions } from "../../parts/actions.tsx";
import { arguingWords as words } from "../../words/arguing/arguing.ts";
import { askArguing } from "./asking.ts";
import { changeInHand, inHand, setFolded, takeInHand } from "./hand.ts";

/** A record that is looked at, as far as arguing asks. */
export interface About {
  readonly id: Id;
  readonly list: ListName;
  /** It is one of a question's answers. */
  readonly answer: boolean;
}

/** Something that can be done with a record for the argument in hand: what it is called, its key, and the doing. */
export interface Way {
  readonly name: string;
  readonly key: string;
  readonly run: () => void;
  /** Whether it is so already, for what can be taken back by the same; null for what cannot. */
  readonly on: boolean | null;
}

/** By what the fields of the argument in hand are known in the document. */
export const places = {
  step: "in-hand-step",
  claim: "in-hand-claim",
  premise: "in-hand-premise",
  head: "in-hand",
} as const;

/** Takes the focus to a place of the argument in hand, at once: what is typed next is for that place, and no key of the page. */
export function toPlace(id: string): void {
  flushSync(() => setFolded(false));
  document.getElementById(id)?.focus();
}

/** What can be done with a record: to begin an argument, or for the one that is in hand. */
export function waysFor({ id, list, answer }: About, draft: ArgumentDraft | null): readonly Way[] {
  const { premise, conclusion, attacked } = rolesOf(list);
  const { because = [], aim = { to: "nothing" } } = draft ?? {};
  const [leans, leads] = [because.includes(id), aim.to === "claim" && aim.id === id];
  const attacks = aim.to === "against" && aim.ids.includes(id);
  const named = (begun: string, on: string, off: string, is: boolean): string =>
    draft === null ? begun : is ? off : on;
  const all: readonly (Way | null)[] = [
    premise
      ? {
          name: named(words.argueFrom, words.asPremise, words.notPremise, leans),
          key: "p",
          on: draft && leans,
          run: () => changeInHand((one) => withPremise(one, id)),
        }
      : null,
    list === "arguments" && draft?.of !== id
      ? { name: words.changePremises, key: "p", on: null, run: () => void takeArgument(id) }
      : null,
    conclusion
      ? {
          name: named(words.argueFor, words.asConclusion, words.notConclusion, leads),
          key: "t",
          on: draft && leads,
          run: () => changeInHand((one) => leadingTo(one, id)),
        }
      : null,
    attacked && draft?.of !== id
      ? {
          name: named(words.argueAgainst, words.asTarget, words.notTarget, attacks),
          key: "x",
          on: draft && attacks,
          run: () => changeInHand((one) => against(one, id, list === "claims")),
        }
      : null,
    answer || list === "questions"
      ? { name: words.anotherAnswer, key: "n", on: null, run: () => void anotherAnswer({ id, list }) }
      : null,
  ];
  return all.filter((one) => one !== null);
}

/** Takes an argument of the corpus in hand, to change what it leans on, where it leads and its words. */
export async function takeArgument(
  id: Id,
  how: (draft: ArgumentDraft) => ArgumentDraft = (draft) => draft,
): Promise<void> {
  const draft = await askArguing("take", id);
  if (draft) takeInHand(how(draft), undefined, draft);
}

/** Leads the argument in hand to a new claim that answers a question, or the question that a claim answers. */
async function anotherAnswer({ id, list }: Pick<About, "id" | "list">): Promise<void> {
  const asked = list === "questions" ? id : null;
  changeInHand((draft) => leadingToNew(draft, asked));
  toPlace(places.claim);
  const question = asked ?? (await askArguing("question", id));
  changeInHand((draft) =>
    draft.aim.to === "new" && draft.aim.question === null
      ? { ...draft, aim: { ...draft.aim, question } }
      : draft,
  );
}

let looking: (() => About | null) | null = null;

/** The record that is looked at on the page; null where none is taken. */
export function lookedAt(): About | null {
  return looking?.() ?? null;
}

/** Declares what can be done with the record that is looked at, by keys and in the list of commands. */
export function useArguingKeys(about: () => About | null): void {
  useLayoutEffect(() => {
    looking = about;
    return () => void (looking = null);
  });
  useActions(words.title, () => {
    const one = about();
    const draft = inHand()?.draft ?? null;
    return one ? waysFor(one, draft).map(({ name, key, run }) => ({ name, key, run })) : [];
  });
}
