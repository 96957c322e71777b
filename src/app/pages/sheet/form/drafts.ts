import type { FormAsked } from "../../../../show/desk/forms/filled/asked.ts";
import { listNames } from "../../../../read/grammar/kinds.ts";
import { send } from "../../../model/corpus.ts";

/** A form that was begun and not saved: its address, what it is called, and what stands in it. */
export interface Draft {
  readonly at: string;
  readonly title: string | null;
  readonly singular: string;
  readonly form: FormAsked;
}

const prefix = "form-";
const stored = (at: string): string => `variorum form ${at}`;

/** The name under which the desk keeps the draft of an address (FNV-1a, twice 32 bit). */
function nameOf(at: string): string {
  const half = (seed: number): string => {
    let hash = seed;
    for (let place = 0; place < at.length; place++)
      hash = Math.imul(hash ^ at.charCodeAt(place), 0x01000193) >>> 0;
    return hash.toString(16).padStart(8, "0");
  };
  return `${prefix}${half(0x811c9dc5)}${half(0x9e3779b9)}`;
}

/** The draft of an address that this tab has at hand. */
export function draftOf(at: string): Draft | null {
  try {
    return draftIn(sessionStorage.getItem(stored(at)));
  } catch {
    return null;
  }
}

/** Drafts that wait to be written to the desk, by their names; null where one is to be taken away. */
const waiting = new Map<string, Draft | null>();
let writing: Promise<void> | null = null;

/** Keeps what stands in a form, at once in this tab and soon at the desk; null once it is saved or thrown away. */
export function keepDraft(at: string, form: Omit<Draft, "at"> | null, atDesk: boolean): void {
  const draft = form && { at, ...form };
  try {
    if (draft) sessionStorage.setItem(stored(at), JSON.stringify(draft));
    else sessionStorage.removeItem(stored(at));
  } catch {
    // A tab without storage still has the desk.
  }
  if (!atDesk) return;
  waiting.set(nameOf(at), draft);
  writing ??= written();
}

/** Writes one draft after the other, of each its latest state alone. */
async function written(): Promise<void> {
  for (let [next] = waiting; next; [next] = waiting) {
    const [name, draft] = next;
    waiting.delete(name);
    await (draft ? send(`drafts/${name}`, draft, "PUT") : send(`drafts/${name}`, undefined, "DELETE"));
  }
  writing = null;
}

/** The draft of an address that the desk has kept: from another tab, or from before the program ended. */
export async function deskDraft(at: string): Promise<Draft | null> {
  const names = await namesAtDesk();
  return names.includes(nameOf(at)) ? draftNamed(nameOf(at)) : null;
}

/** All drafts of forms that the desk has kept. */
export async function deskDrafts(): Promise<readonly Draft[]> {
  await writing;
  const all = await Promise.all((await namesAtDesk()).map(draftNamed));
  return all.filter((one) => one !== null);
}

async function namesAtDesk(): Promise<readonly string[]> {
  const { status, text } = await send("drafts", undefined, "GET");
  if (status !== 200) return [];
  const { drafts } = JSON.parse(text) as { readonly drafts: readonly string[] };
  return drafts.filter((name) => name.startsWith(prefix));
}

async function draftNamed(name: string): Promise<Draft | null> {
  const { status, text } = await send(`drafts/${name}`, undefined, "GET");
  return status === 200 ? draftIn(text) : null;
}

/** A draft from its text; null for anything that is none: the folder it comes from is not only ours. */
function draftIn(text: string | null): Draft | null {
  if (text === null) return null;
  try {
    const draft = JSON.parse(text) as Draft;
    const { list, id, seen, entered } = draft.form;
    const good =
      /^\/(?:new|edit)\//.test(draft.at) &&
      listNames.includes(list) &&
      (id === null || typeof id === "string") &&
      isFilled(seen ?? {}) &&
      isFilled(entered) &&
      typeof draft.singular === "string" &&
      (draft.title === null || typeof draft.title === "string");
    return good ? draft : null;
  } catch {
    return null;
  }
}

/** Whether a value is made of texts, lists and maps alone. */
function isFilled(value: unknown): boolean {
  if (typeof value === "string") return true;
  return typeof value === "object" && value !== null && Object.values(value).every(isFilled);
}
