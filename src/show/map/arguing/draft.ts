import type { Id } from "../../../base/finding.ts";

/** Where an argument in hand leads: nowhere yet, to a claim, to one that is made with it, or against something. */
export type Aim =
  | { readonly to: "nothing" }
  | { readonly to: "claim"; readonly id: Id }
  /** A new claim in its words; with a question it becomes one of its answers. */
  | { readonly to: "new"; readonly text: string; readonly question: Id | null }
  /** One claim, or one or more of anything else that can be attacked. */
  | { readonly to: "against"; readonly ids: readonly Id[]; readonly claim: boolean };

/** An argument in hand: one that is being made, or one of the corpus that is being changed. */
export interface ArgumentDraft {
  /** The argument that it changes; null for a new one. */
  readonly of: Id | null;
  readonly because: readonly Id[];
  readonly aim: Aim;
  /** The step in words. */
  readonly text: string;
  /** A name of the format; empty where nothing is said. */
  readonly scheme: string;
  readonly strength: string;
  readonly why: string;
  readonly by: readonly Id[];
  readonly from: readonly string[];
}

/** An argument of which nothing is known yet. */
export const nothingInHand: ArgumentDraft = {
  of: null,
  because: [],
  aim: { to: "nothing" },
  text: "",
  scheme: "",
  strength: "",
  why: "",
  by: [],
  from: [],
};

/** The argument with another premise, or without it where it has it already. */
export function withPremise(draft: ArgumentDraft, id: Id): ArgumentDraft {
  const there = draft.because.includes(id);
  const because = there ? draft.because.filter((one) => one !== id) : [...draft.because, id];
  return { ...draft, because };
}

/** The argument leading to a claim, or to nothing where it led there already. */
export function leadingTo(draft: ArgumentDraft, id: Id): ArgumentDraft {
  const there = draft.aim.to === "claim" && draft.aim.id === id;
  return { ...draft, aim: there ? { to: "nothing" } : { to: "claim", id } };
}

/** The argument leading to a claim that is made with it; words that it has already stay. */
export function leadingToNew(draft: ArgumentDraft, question: Id | null): ArgumentDraft {
  const text = draft.aim.to === "new" ? draft.aim.text : "";
  return { ...draft, aim: { to: "new", text, question } };
}

/** The argument against something more, or not against it where it was; a claim is attacked alone. */
export function against(draft: ArgumentDraft, id: Id, claim: boolean): ArgumentDraft {
  const { aim } = draft;
  const before = aim.to === "against" ? aim.ids : [];
  const alone = claim || (aim.to === "against" && aim.claim);
  const ids = before.includes(id)
    ? before.filter((one) => one !== id)
    : alone || before.length === 0
      ? [id]
      : [...before, id];
  return { ...draft, aim: ids.length === 0 ? { to: "nothing" } : { to: "against", ids, claim } };
}

/** Whether nothing would be lost with an argument in hand. */
export function isEmpty(draft: ArgumentDraft): boolean {
  return JSON.stringify({ ...draft, of: null }) === JSON.stringify(nothingInHand);
}

/** Everything that an argument in hand names. */
export function namedBy({ of, because, aim, by, from }: ArgumentDraft): readonly Id[] {
  const aims: readonly (Id | null)[] =
    aim.to === "claim" ? [aim.id] : aim.to === "against" ? aim.ids : aim.to === "new" ? [aim.question] : [];
  const all = [of, ...because, ...aims, ...by, ...from.map((one) => one.split(" ")[0] ?? "")];
  return [...new Set(all.flatMap((id) => (id === null || id === "" ? [] : [id])))];
}

/** An argument in hand from what was kept of it; null for anything that is none. */
export function draftIn(kept: unknown): ArgumentDraft | null {
  if (typeof kept !== "object" || kept === null) return null;
  const given = { ...nothingInHand, ...(kept as Partial<ArgumentDraft>) };
  const { of, because, aim, text, scheme, strength, why, by, from } = given;
  const words = [text, scheme, strength, why].every((one) => typeof one === "string");
  const lists = [because, by, from].every(isTexts);
  if (!words || !lists || !(of === null || typeof of === "string") || !isAim(aim)) return null;
  return { of, because, aim, text, scheme, strength, why, by, from };
}

function isTexts(value: unknown): boolean {
  return Array.isArray(value) && value.every((one) => typeof one === "string");
}

function isAim(value: unknown): value is Aim {
  if (typeof value !== "object" || value === null) return false;
  const { to, id, ids, claim, text, question } = value as Readonly<Record<string, unknown>>;
  switch (to) {
    case "nothing":
      return true;
    case "claim":
      return typeof id === "string";
    case "new":
      return typeof text === "string" && (question === null || typeof question === "string");
    case "against":
      return isTexts(ids) && typeof claim === "boolean";
    default:
      return false;
  }
}
