import type { SourceFile } from "../../build.ts";
import type { Text } from "../../base/text/said/said.ts";
import { worded } from "../../base/text/said/worded.ts";
import type { Worded } from "../../base/text/said/worded.ts";
import type { DeskState } from "../../host/desk/state.ts";
import type { Declared } from "../../host/guest/guest.ts";
import { deskWords } from "../words/desk/desk.ts";
import { inReadersWords } from "../words/reader/said.ts";

/** What can be done at the desk, in the reader's words. */
export type DeskNow = Worded<DeskState>;

interface Fetched {
  readonly files: readonly SourceFile[];
  /** Plug-ins of the corpus that are allowed to run. */
  readonly guests?: readonly Declared[];
  readonly desk: DeskState;
  readonly gone?: Text;
}

/** What the corpus's folder now holds. */
export interface Found {
  readonly files: readonly SourceFile[];
  readonly guests: readonly Declared[];
  readonly desk: DeskNow;
}

/** The token of the opened address; it stays in this tab, so that a reload still has it. */
function token(): string {
  const given = new URLSearchParams(location.hash.slice(1)).get("token");
  if (given !== null) {
    sessionStorage.setItem("token", given);
    history.replaceState(null, "", location.pathname + location.search);
  }
  return sessionStorage.getItem("token") ?? "";
}

/** Follows the corpus on disk: its files now, and again whenever one of them changes. */
export function followCorpus(onFiles: (found: Found) => void, onTrouble: (why: string) => void): Following {
  const key = token();
  let asked = 0;
  let shown = 0;
  const read = async (): Promise<void> => {
    const turn = (asked += 1);
    const answer = await fetch("/corpus/files", { headers: { "x-variorum-token": key } });
    if (!answer.ok) return onTrouble(against(await answer.text()));
    const { files, guests = [], desk, gone } = (await answer.json()) as Fetched;
    // Of two readings under way the later may come first; the earlier is then of the past.
    if (turn < shown) return;
    shown = turn;
    if (gone === undefined) onFiles({ files, guests, desk: worded(desk, inReadersWords) });
    else onTrouble(inReadersWords(gone));
  };
  const again = (): void => void read().catch(() => onTrouble(deskWords.ended));
  const changes = new EventSource(`/corpus/changes?token=${encodeURIComponent(key)}`);
  // `ready` comes at the start and after every break: files may have changed in between.
  changes.addEventListener("ready", again);
  changes.addEventListener("change", again);
  changes.onerror = () => {
    if (changes.readyState === EventSource.CLOSED) again();
  };
  return { stop: () => changes.close(), read: () => read().catch(() => onTrouble(deskWords.ended)) };
}

/** A corpus that is followed: how to end it, and how to read it at once after something was written. */
export interface Following {
  readonly stop: () => void;
  readonly read: () => Promise<void>;
}

/** What the program answered: its status and body; status 0 where it was ended. */
export interface Answer {
  readonly status: number;
  readonly text: string;
}

/** Sends something to the corpus: a body as JSON, or none. */
export async function send(
  path: string,
  body?: unknown,
  method: "POST" | "PUT" | "DELETE" | "GET" = "POST",
): Promise<Answer> {
  const headers = { "x-variorum-token": token(), "content-type": "application/json" };
  const sent = body === undefined ? {} : { body: JSON.stringify(body) };
  try {
    const answer = await fetch(`/corpus/${path}`, { method, headers, ...sent });
    return { status: answer.status, text: await answer.text() };
  } catch {
    return { status: 0, text: deskWords.ended };
  }
}

/** Asks that a plug-in of the corpus be allowed, as the file with this hash; why it was not, or null when it was. */
export async function allowPlugin(name: string, hash: string): Promise<string | null> {
  const { status, text } = await send("allow", { name, hash });
  return status === 204 ? null : against(text);
}

/** What an answer of the program says against what was asked, in the reader's words. */
export function against(answer: string): string {
  try {
    const { message } = JSON.parse(answer) as { readonly message?: Text };
    return message === undefined ? answer : inReadersWords(message);
  } catch {
    return answer;
  }
}
