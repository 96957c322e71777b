import { edited } from "../../../base/text/edit.ts";
import type { SourceFile } from "../../../build.ts";

/** A stretch of a text that is now another, and the SHA-256 of the whole text as it is now. */
export interface Stretch {
  readonly path: string;
  readonly start: number;
  readonly end: number;
  readonly text: string;
  readonly is: string;
}

/** What a corpus's folder now holds, all of it or as far as it changed. */
export interface FilesTold {
  /** Whether these are all the files; else those that changed or came. */
  readonly whole: boolean;
  readonly files: readonly SourceFile[];
  /** Large files of which a stretch changed, and no more is told. */
  readonly stretches: readonly Stretch[];
  /** Paths of files that went. */
  readonly gone: readonly string[];
}

/** What is told of a corpus of which nothing was known. */
export const allFiles = (files: readonly SourceFile[]): FilesTold => ({
  whole: true,
  files,
  stretches: [],
  gone: [],
});

/**
 * Some files with those that changed or came in their places, and without those that went; the same where nothing did. One
 * that did not change stays the same object: it is neither hashed nor read again.
 */
export function filesTaken(
  before: readonly SourceFile[],
  { whole, files, stretches, gone }: FilesTold,
): readonly SourceFile[] {
  if (whole) return files;
  if (files.length === 0 && stretches.length === 0 && gone.length === 0) return before;
  const byPath = new Map(before.map((file) => [file.path, file]));
  for (const path of gone) byPath.delete(path);
  for (const file of files) byPath.set(file.path, file);
  for (const { path, ...stretch } of stretches) {
    const was = byPath.get(path);
    if (!was) throw new Error(`unexpected change of ${path}, expected one of a file that is there`);
    byPath.set(path, { path, text: edited(was.text, [{ file: path, ...stretch }]) });
  }
  return [...byPath.values()];
}

/** The SHA-256 of texts that are known from what was told, by path; of the others nothing is known. */
export function hashesTaken(
  before: ReadonlyMap<string, string>,
  { whole, files, stretches, gone }: FilesTold,
): ReadonlyMap<string, string> {
  const known = new Map(whole ? [] : before);
  for (const path of [...gone, ...files.map((file) => file.path)]) known.delete(path);
  for (const { path, is } of stretches) known.set(path, is);
  return known;
}
