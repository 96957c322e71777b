import { importWords as words } from "../../../words/desk/import.ts";
import type { Given } from "./serving.ts";

/** Largest file that is read, in bytes, as of a bibliography of the corpus. */
const largest = 64 * 1024 * 1024;

/** A file as text, or why it cannot be read as one. */
export type FileRead = Given | { readonly name: string; readonly trouble: string };

/** Reads files that were dropped or chosen; anything but UTF-8 is told and not guessed at. */
export function filesRead(files: Iterable<File>): Promise<readonly FileRead[]> {
  return Promise.all([...files].map(fileRead));
}

async function fileRead(file: File): Promise<FileRead> {
  const { name } = file;
  if (file.size > largest) return { name, trouble: words.tooLarge };
  try {
    const bytes = await file.arrayBuffer();
    return { name, text: new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes) };
  } catch {
    return { name, trouble: words.noText };
  }
}
