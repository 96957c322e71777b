import type { Id } from "../../../base/finding.ts";
import { lookedAt } from "../../map/arguing/ways.ts";
import { against, send } from "../../model/corpus.ts";
import { keepAtDesk, keptAtDesk, newDraftName } from "../drafts.ts";

/** How names of questions from the floor begin, by which the desk keeps them. */
const beginning = "floor-";

/** A question somebody asked, in a line, and the record that was looked at then. */
export interface FloorQuestion {
  readonly text: string;
  readonly about: Id | null;
}

/** A question that the desk keeps. */
export interface KeptQuestion extends FloorQuestion {
  readonly name: string;
}

/** Who is told once a question is kept. */
const listening = new Set<() => void>();

/** Tells from now on that a question was kept; what is given back ends it. */
export function whenKept(told: () => void): () => void {
  listening.add(told);
  return () => void listening.delete(told);
}

/** Keeps a question at the desk; why it could not be kept, or null. */
export async function keepQuestion(question: FloorQuestion): Promise<string | null> {
  const { status, text } = await send(`drafts/${newDraftName(beginning)}`, question, "PUT");
  if (status !== 204) return against(text);
  for (const told of listening) told();
  return null;
}

/** Lets a question go: it is worked in, or not wanted any more. */
export function dropQuestion({ name }: KeptQuestion): void {
  keepAtDesk(name, null);
}

/** All questions that the desk keeps, in the order in which they were asked; what is none is passed over. */
export async function keptQuestions(): Promise<readonly KeptQuestion[]> {
  const kept = await keptAtDesk(beginning);
  return kept.flatMap(({ name, value }): readonly KeptQuestion[] => {
    const { text, about } = (value ?? {}) as Partial<Readonly<Record<string, unknown>>>;
    const good = typeof text === "string" && (about === null || typeof about === "string");
    return good ? [{ name, text, about }] : [];
  });
}

/** Pages whose address ends with the id of a record. */
const ofRecords = /^\/(?:record|question|artefact|number|scholar|edit|entry)\/(.+)$/;

/** The record that is looked at: the one taken on the page, else the one whose page it is, or that is in focus. */
export function recordLookedAt(): Id | null {
  const taken = lookedAt();
  if (taken) return taken.id;
  const found = ofRecords.exec(location.pathname)?.[1];
  return found === undefined ? new URLSearchParams(location.search).get("focus") : decoded(found);
}

function decoded(path: string): string | null {
  try {
    return path.split("/").map(decodeURIComponent).join("/");
  } catch {
    return null;
  }
}
