import type { Text } from "../../base/text/said/said.ts";
import { worded } from "../../base/text/said/worded.ts";
import type { Worded } from "../../base/text/said/worded.ts";
import type { DeskState } from "../../host/desk/state.ts";
import type { Declared } from "../../host/guest/guest.ts";
import type { FilesTold } from "../worker/models/taken.ts";
import { filesIn, headOf, inLines } from "./lines.ts";
import { deskWords } from "../words/desk/desk.ts";
import { inReadersWords } from "../words/reader/said.ts";

/** What can be done at the desk, in the reader's words. */
export type DeskNow = Worded<DeskState>;

/** What changed of the files since a version, or all of them. */
interface Told extends FilesTold {
  readonly version: string;
  /** The version for whom what changed is told; null where these are all the files. */
  readonly since: string | null;
}

/** What is said of a corpus's files before they follow, as the program sends it. */
interface Head extends Omit<Told, "files"> {
  readonly guests: readonly Declared[];
  readonly desk: DeskState;
  readonly count: number;
  readonly first: number;
  /** How many signs of text all of them have. */
  readonly size: number;
}

/** What the corpus's folder now holds, all of it or as far as it changed. */
export interface Found extends FilesTold {
  /** Plug-ins of the corpus that are allowed to run; null where they are those they were. */
  readonly guests: readonly Declared[] | null;
  readonly desk: DeskNow;
}

/** Takes a whole corpus as it comes, in lines of JSON. */
export interface Receiving {
  readonly coming: (head: Pick<Head, "count" | "first" | "size">) => void;
  readonly lines: (bytes: Uint8Array<ArrayBuffer>) => void;
  /** It is there: what is now so, unless it was overtaken and is of the past. */
  readonly came: (now: { readonly guests: readonly Declared[]; readonly desk: DeskNow } | null) => void;
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

/** Asks the program for something below the corpus's address. */
export function asked(path: string, init: RequestInit = {}): Promise<Response> {
  return fetch(path, { ...init, headers: { "x-variorum-token": token() } });
}

const onlookers = new Set<() => void>();

/** Has something looked at again whenever a file in the corpus's folder changes; gives the way to end that. */
export function onChange(look: () => void): () => void {
  onlookers.add(look);
  return () => void onlookers.delete(look);
}

/** Follows the corpus on disk: its files now, and again whenever one of them changes. */
export function followCorpus(
  receiving: Receiving,
  onFiles: (found: Found) => void,
  onTrouble: (why: string) => void,
): Following {
  const key = token();
  /** What was said against the corpus is said until all of it is told again. */
  let trouble = false;
  have = null;
  const complain = (why: string): void => {
    trouble = true;
    onTrouble(why);
  };
  /** False where a stretch of a file is told to who has another text by now. */
  const take = (told: Told, guests: readonly Declared[] | null, desk: DeskState): boolean => {
    // Of two readings under way the later may come first; the earlier is then of the past.
    if (have !== null && isEarlier(told.version, have)) return true;
    if (told.stretches.length > 0 && told.version !== have && told.since !== have) return false;
    const isKnown = told.version === have && !trouble;
    have = told.version;
    trouble = false;
    const { whole, files, stretches, gone } = isKnown ? nothing : told;
    onFiles({ whole, files, stretches, gone, guests, desk: worded(desk, inReadersWords) });
    return true;
  };
  /** All of it, on its way; whoever asks again waits until it is there. */
  let all: Promise<void> | null = null;
  const receive = async (head: Head, rest: AsyncIterable<Uint8Array<ArrayBuffer>>): Promise<void> => {
    receiving.coming(head);
    for await (const bytes of rest) receiving.lines(bytes);
    // Of two readings under way the later may come first; the earlier is then of the past.
    if (have !== null && isEarlier(head.version, have)) return receiving.came(null);
    have = head.version;
    trouble = false;
    receiving.came({ guests: head.guests, desk: worded(head.desk, inReadersWords) });
  };
  const read = async (): Promise<void> => {
    await all?.catch(() => undefined);
    const since = have === null || trouble ? "" : `&have=${have}`;
    const answer = await fetch(`/corpus/files?in=lines${since}`, { headers: { "x-variorum-token": key } });
    if (!answer.ok) return complain(against(await answer.text()));
    if (answer.headers.get("content-type") !== inLines) {
      const { gone } = (await answer.json()) as { readonly gone: Text };
      return complain(inReadersWords(gone));
    }
    const [head, rest] = await headOf<Head>(answer);
    if (!head.whole) {
      if (take({ ...head, files: await filesIn(rest) }, head.guests, head.desk)) return;
      return read();
    }
    all = receive(head, rest);
    await all;
  };
  const again = (): void => {
    void read().catch(() => complain(deskWords.ended));
    for (const look of onlookers) look();
  };
  const changed = ({ data }: MessageEvent<string>): void => {
    if (data !== have || trouble) return again();
    for (const look of onlookers) look();
  };
  const changes = new EventSource(`/corpus/changes?token=${encodeURIComponent(key)}`);
  // `ready` comes at the start and after every break: files may have changed in between.
  changes.addEventListener("ready", again);
  changes.addEventListener("change", changed);
  changes.onerror = () => {
    if (changes.readyState === EventSource.CLOSED) again();
  };
  return {
    stop: () => changes.close(),
    read: async (answer) => {
      const { corpus, desk } = (answer && writtenIn(answer)) ?? {};
      if (!corpus || !desk || !take(corpus, null, desk)) await read().catch(() => complain(deskWords.ended));
    },
  };
}

const nothing: FilesTold = { whole: false, files: [], stretches: [], gone: [] };

/** The version of the corpus's files that this window has; null before it has any. */
let have: string | null = null;

/** Versions are counted up by the program that serves the corpus; those of another are not compared. */
function isEarlier(one: string, other: string): boolean {
  const [[whose, turn], [whoElse, otherTurn]] = [one.split("."), other.split(".")];
  return whose === whoElse && Number(turn) < Number(otherTurn);
}

/** What the program says of the files with its answer to a change of them; nothing where it refused it. */
function writtenIn({ status, text }: Answer): {
  readonly corpus?: Told;
  readonly desk?: DeskState;
} | null {
  return status === 200 ? (JSON.parse(text) as { readonly corpus?: Told; readonly desk?: DeskState }) : null;
}

/** A corpus that is followed: how to end it, and how to read it at once after something was written. */
export interface Following {
  readonly stop: () => void;
  /** With the program's answer to a change, which tells what changed, nothing more is asked for. */
  readonly read: (answer?: Answer) => Promise<void>;
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
    // What is taken away stays so, also where the window is shut at once.
    const answer = await fetch(`/corpus/${path}`, {
      method,
      headers,
      keepalive: method === "DELETE",
      ...sent,
    });
    return { status: answer.status, text: await answer.text() };
  } catch {
    return { status: 0, text: deskWords.ended };
  }
}

/** Sends a change of the corpus's files; the answer tells what they now say, for `read` of who follows them. */
export function sendChange(way: "edit" | "undo" | "redo" | "back", body: unknown): Promise<Answer> {
  return send(have === null ? way : `${way}?have=${have}`, body);
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
