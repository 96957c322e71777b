import type { Draft } from "../../../../show/desk/workbench/draft/draft.ts";
import { send } from "../../../model/corpus.ts";

const stored = "workbench";
const prefix = "bench";

/** The drafts that this tab kept over a reload. */
export function draftsInTab(): readonly Draft[] {
  try {
    const found: unknown = JSON.parse(sessionStorage.getItem(stored) ?? "[]");
    return Array.isArray(found) ? found.filter(isDraft) : [];
  } catch {
    return [];
  }
}

/** Keeps drafts over a reload of this tab. */
export function keepInTab(drafts: readonly Draft[]): void {
  try {
    sessionStorage.setItem(stored, JSON.stringify(drafts));
  } catch {
    // A tab without storage still has the desk.
  }
}

/** The drafts that the desk has kept: from another tab, or from before the program ended. */
export async function draftsAtDesk(): Promise<readonly Draft[]> {
  const { status, text } = await send("drafts", undefined, "GET");
  if (status !== 200) return [];
  const { drafts } = JSON.parse(text) as { readonly drafts: readonly string[] };
  const own = drafts.filter((name) => name === prefix || name.startsWith(`${prefix}-`));
  const found = await Promise.all(own.map((name) => send(`drafts/${name}`, undefined, "GET")));
  return found.flatMap((one): readonly Draft[] => {
    const draft: unknown = one.status === 200 ? JSON.parse(one.text) : null;
    return isDraft(draft) ? [draft] : [];
  });
}

/** Drafts that wait to be written to the desk, by their names; null where one is to be taken away. */
const waiting = new Map<string, Draft | null>();
let writing = false;

/** Keeps a draft at the desk, soon, of each its latest state alone; null takes it away. */
export function keepAtDesk(of: string | null, draft: Draft | null): void {
  const name = of === null ? prefix : `${prefix}-${of.replaceAll("/", "_")}`;
  // A longer name is none that the desk takes.
  if (name.length > 100) return;
  waiting.set(name, draft);
  if (!writing) void written();
}

async function written(): Promise<void> {
  writing = true;
  for (let [next] = waiting; next; [next] = waiting) {
    const [name, draft] = next;
    waiting.delete(name);
    await (draft ? send(`drafts/${name}`, draft, "PUT") : send(`drafts/${name}`, undefined, "DELETE"));
  }
  writing = false;
}

/** Whether something kept is a draft: neither the tab nor the folder is only ours. */
function isDraft(value: unknown): value is Draft {
  if (typeof value !== "object" || value === null) return false;
  const { of, recorded, values, looksBefore, seen, stopped } = value as Partial<Record<keyof Draft, unknown>>;
  return (
    (of === null || typeof of === "string") &&
    (recorded === null || isMap(recorded)) &&
    isMap(values) &&
    Number.isInteger(looksBefore) &&
    Number(looksBefore) >= 0 &&
    Array.isArray(seen) &&
    seen.every((key) => typeof key === "string") &&
    typeof stopped === "boolean"
  );
}

function isMap(value: unknown): boolean {
  return typeof value === "object" && value !== null && !Array.isArray(value) && isWritten(value);
}

/** Whether a value is made of texts, lists and maps alone. */
function isWritten(value: unknown): boolean {
  if (typeof value === "string") return true;
  return typeof value === "object" && value !== null && Object.values(value).every(isWritten);
}
