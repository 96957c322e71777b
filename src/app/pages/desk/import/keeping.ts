import type { Choice } from "../../../../read/bibliography/incoming/plan.ts";
import type { TableChoices } from "../../../../show/desk/import/table/told/page.ts";
import { send } from "../../../model/corpus.ts";
import type { FileRead } from "./files.ts";

/** What is to come in and what was chosen for it, as it is kept until it has come in. */
export interface ImportDraft {
  readonly read: readonly FileRead[];
  readonly choices: readonly (readonly [place: number, choice: Choice])[];
  readonly duplicates: "leave" | "merge";
  /** By the names of the files. */
  readonly tables: Readonly<Record<string, TableChoices>>;
}

/** Nothing is to come in. */
export const noImport: ImportDraft = { read: [], choices: [], duplicates: "leave", tables: {} };

/** How a table comes in before anything is chosen. */
export const nothingChosen: TableChoices = {
  list: null,
  meanings: [],
  decimal: "point",
  all: {},
  as: "records",
  choices: [],
  duplicates: "leave",
};

const name = "import";
/** As much JSON as the desk keeps of a draft, in bytes; a larger import is kept in the tab alone, as far as that has room. */
const most = 1024 * 1024;
/** How long nothing is chosen before the desk is asked to keep it, in milliseconds. */
const pause = 400;

let waiting: ReturnType<typeof setTimeout> | null = null;

/** Keeps a draft over a reload, and soon at the desk; one without a file is taken away. */
export function keepImport(draft: ImportDraft): void {
  const json = JSON.stringify(draft);
  const empty = draft.read.length === 0;
  try {
    if (empty) sessionStorage.removeItem(name);
    else sessionStorage.setItem(name, json);
  } catch {
    // A tab without room still has the desk.
  }
  if (waiting !== null) clearTimeout(waiting);
  const fits = new TextEncoder().encode(json).length <= most;
  waiting = setTimeout(() => {
    waiting = null;
    void (empty || !fits
      ? send(`drafts/${name}`, undefined, "DELETE")
      : send(`drafts/${name}`, draft, "PUT"));
  }, pause);
}

/** The draft of this tab, else that of the desk; null where none is kept. */
export async function keptImport(): Promise<ImportDraft | null> {
  const here = draftIn(sessionStorage.getItem(name));
  if (here !== null) return here;
  const all = await send("drafts", undefined, "GET");
  if (
    all.status !== 200 ||
    !(JSON.parse(all.text) as { readonly drafts: readonly string[] }).drafts.includes(name)
  )
    return null;
  const { status, text } = await send(`drafts/${name}`, undefined, "GET");
  return status === 200 ? draftIn(text) : null;
}

/** A draft out of its JSON; neither the tab nor the folder is only ours. */
function draftIn(json: string | null): ImportDraft | null {
  try {
    const draft: unknown = JSON.parse(json ?? "null");
    return isDraft(draft) ? draft : null;
  } catch {
    return null;
  }
}

function isDraft(value: unknown): value is ImportDraft {
  if (!isMap(value)) return false;
  const { read, choices, duplicates, tables } = value;
  return (
    Array.isArray(read) &&
    read.every((one) => isMap(one) && typeof one["name"] === "string" && hasText(one)) &&
    Array.isArray(choices) &&
    choices.every((one) => Array.isArray(one) && Number.isInteger(one[0]) && isChoice(one[1])) &&
    (duplicates === "leave" || duplicates === "merge") &&
    isMap(tables) &&
    Object.values(tables).every(isTable)
  );
}

const hasText = (one: Readonly<Record<string, unknown>>): boolean =>
  typeof one["text"] === "string" || typeof one["trouble"] === "string";

function isTable(value: unknown): boolean {
  if (!isMap(value)) return false;
  const { list, meanings, decimal, all, as, choices, duplicates } = value;
  return (
    (list === null || list === "artefacts" || list === "measurements") &&
    Array.isArray(meanings) &&
    meanings.every((one) => Array.isArray(one) && Number.isInteger(one[0]) && isMeaning(one[1])) &&
    (decimal === "point" || decimal === "comma") &&
    isMap(all) &&
    Object.values(all).every((one) => typeof one === "string") &&
    (as === "records" || as === "table") &&
    Array.isArray(choices) &&
    choices.every((one) => Array.isArray(one) && Number.isInteger(one[0]) && isChoice(one[1])) &&
    (duplicates === "leave" || duplicates === "merge")
  );
}

function isChoice(value: unknown): boolean {
  if (!isMap(value)) return false;
  if (value["do"] === "add" || value["do"] === "leave") return true;
  const { take } = value;
  return value["do"] === "merge" && Array.isArray(take) && take.every((one) => typeof one === "string");
}

/** What a meaning of each sort says, beside its sort. */
const parts: Readonly<Record<string, readonly string[]>> = {
  field: ["field"],
  dimension: ["dimension"],
  uncertainty: [],
  unit: [],
  number: ["register"],
  nothing: [],
};

function isMeaning(value: unknown): boolean {
  if (!isMap(value)) return false;
  const needed = typeof value["is"] === "string" ? parts[value["is"]] : undefined;
  return needed !== undefined && needed.every((part) => typeof value[part] === "string");
}

function isMap(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
