import { useEffect, useState, useSyncExternalStore } from "react";
import type { Text } from "../../base/text/said/said.ts";
import { endlessIn } from "../../show/artefacts/picture/endless/endless.ts";
import type { Endless } from "../../show/artefacts/picture/endless/endless.ts";
import { deskWords } from "../words/desk/desk.ts";
import { asked, onChange } from "./corpus.ts";

/** A paper or picture that lies in the corpus's folder, by its path there, with its size. */
export interface Enclosed {
  readonly file: string;
  readonly bytes: number;
}

/** Whether two paths are one: a disk may write an accented letter in parts where a text has it whole. */
export const isSameFile = (a: string, b: string): boolean =>
  a === b || a.normalize("NFC") === b.normalize("NFC");

let known: readonly Enclosed[] | null = null;
const listeners = new Set<() => void>();
let stop: (() => void) | null = null;
let turn = 0;

const addressOf = (file: string): string =>
  `/corpus/enclosed/${file.split("/").map(encodeURIComponent).join("/")}`;

async function look(): Promise<void> {
  const now = (turn += 1);
  const answer = await asked("/corpus/enclosed").catch(() => null);
  // Where the program was ended, the page says so by itself: what was known stays.
  if (!answer?.ok || now !== turn) return;
  const { enclosed } = (await answer.json()) as { readonly enclosed: readonly Enclosed[] };
  if (JSON.stringify(enclosed) === JSON.stringify(known)) return;
  known = enclosed;
  for (const listener of listeners) listener();
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  if (!stop) {
    stop = onChange(() => void look());
    void look();
  }
  return () => {
    listeners.delete(listener);
    if (listeners.size > 0) return;
    stop?.();
    stop = null;
  };
}

/** The papers and pictures in the corpus's folder, as they now are; null before they are known. */
export function useEnclosed(): readonly Enclosed[] | null {
  return useSyncExternalStore(subscribe, () => known);
}

/** The bytes of a paper or picture, with its media type; why not where it is a drawing that would never be done, null where there is none. */
export async function enclosedFile(file: string): Promise<Blob | Endless | null> {
  const answer = await asked(addressOf(file)).catch(() => null);
  const blob = answer?.ok ? await answer.blob().catch(() => null) : null;
  const isDrawing = blob?.type.startsWith("image/svg") === true;
  return blob !== null && isDrawing ? (endlessIn(await blob.text()) ?? blob) : blob;
}

/** The bytes of a paper or picture that can be shown; null where there is none. */
export async function enclosedBytes(file: string): Promise<Blob | null> {
  const found = await enclosedFile(file);
  return typeof found === "string" ? null : found;
}

/** An address of this window for a picture in the corpus's folder; null before it is there, and where there is none. */
export function useEnclosedUrl(file: string | null): string | null {
  const [found, setFound] = useState<{ readonly file: string; readonly url: string } | null>(null);
  useEffect(() => {
    if (file === null) return;
    let url: string | null = null;
    let isOver = false;
    void enclosedBytes(file).then((blob) => {
      if (isOver || !blob) return;
      url = URL.createObjectURL(blob);
      setFound({ file, url });
    });
    return () => {
      isOver = true;
      if (url !== null) URL.revokeObjectURL(url);
      setFound(null);
    };
  }, [file]);
  return found?.file === file ? found.url : null;
}

/** Brings a new paper or picture into the corpus's folder, below `papers/` or `images/`; why not, or null. */
export async function enclose(file: string, content: Blob): Promise<Text | null> {
  const answer = await asked(addressOf(file), { method: "PUT", body: content }).catch(() => null);
  if (!answer) return deskWords.ended;
  if (answer.status === 201) {
    await look();
    return null;
  }
  const text = await answer.text();
  try {
    return (JSON.parse(text) as { readonly message?: Text }).message ?? text;
  } catch {
    return text;
  }
}
