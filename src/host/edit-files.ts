import {
  accessSync,
  closeSync,
  constants,
  fchmodSync,
  fchownSync,
  fsyncSync,
  lstatSync,
  openSync,
  readFileSync,
  renameSync,
  rmSync,
  writeSync,
} from "node:fs";
import type { Stats } from "node:fs";
import { basename, dirname, join } from "node:path";
import { edited } from "../base/text/edit.ts";
import type { FileChange } from "../base/text/edit.ts";
import { hashOf } from "../base/text/hash.ts";
import { textOf } from "./corpus-folder.ts";

/** Why edits were not made; the message names the file as the corpus does, and says what became of the others. */
export class CannotWrite extends Error {}

/**
 * Makes edits in the files of a corpus, all of them or none: each new text is written whole beside its file, kept by
 * the disk, and only then put in its place. A file that is no longer what the edits were made for is refused.
 */
export function writeChanges(folder: string, changes: readonly FileChange[]): void {
  const ready: Ready[] = [];
  try {
    for (const change of changes) ready.push(prepared(folder, change));
    for (const { change } of ready) currentText(folder, change);
    putInPlace(ready);
    for (const place of new Set(ready.map(({ path }) => dirname(path)))) keepFolder(place);
  } finally {
    for (const { beside, before } of ready) {
      rmSync(beside, { force: true });
      rmSync(before, { force: true });
    }
  }
}

interface Ready {
  readonly change: FileChange;
  readonly path: string;
  /** Where the new text waits; its name begins with a dot, so that it is no file of the corpus. */
  readonly beside: string;
  /** Where the text as it was waits, until every file is in its place. */
  readonly before: string;
}

function prepared(folder: string, change: FileChange): Ready {
  const path = join(folder, change.file);
  const was = currentText(folder, change);
  const text = edited(was, change.edits);
  const hidden = join(dirname(path), `.${basename(path)}.${process.pid}`);
  const [beside, before] = [`${hidden}.part`, `${hidden}.was`];
  const made: string[] = [];
  try {
    accessSync(path, constants.W_OK);
    const like = lstatSync(path);
    for (const [at, content] of [
      [beside, text],
      [before, was],
    ] as const) {
      const open = openSync(at, "wx");
      made.push(at);
      writeWhole(open, content, like);
    }
  } catch (error) {
    for (const at of made) rmSync(at, { force: true });
    throw refused(error, change.file);
  }
  return { change, path, beside, before };
}

function writeWhole(open: number, text: string, like: Stats): void {
  try {
    const bytes = Buffer.from(text, "utf8");
    for (let at = 0; at < bytes.length;) at += writeSync(open, bytes, at);
    try {
      fchownSync(open, like.uid, like.gid);
    } catch {
      // Only who may give files away can keep another owner.
    }
    fchmodSync(open, like.mode & 0o7777);
    fsyncSync(open);
  } finally {
    closeSync(open);
  }
}

/** Puts every new text in its place; where one cannot be put there, those before it are taken back. */
function putInPlace(ready: readonly Ready[]): void {
  const done: Ready[] = [];
  for (const one of ready) {
    try {
      renameSync(one.beside, one.path);
      done.push(one);
    } catch (error) {
      const left = done.filter((it) => !isTakenBack(it)).map(({ change }) => `\`${change.file}\``);
      if (left.length === 0) throw refused(error, one.change.file);
      throw new CannotWrite(
        `\`${one.change.file}\` cannot be written, and ${left.join(", ")} could not be put back: written only in part`,
      );
    }
  }
}

function isTakenBack({ before, path }: Ready): boolean {
  try {
    renameSync(before, path);
    return true;
  } catch {
    return false;
  }
}

/** The text that stands on the disk, if it is the one the edits were made for. */
function currentText(folder: string, { file, madeFor }: FileChange): string {
  const path = join(folder, file);
  let text: string;
  try {
    const is = lstatSync(path);
    if (!is.isFile()) {
      const other = is.isSymbolicLink() ? "link" : is.isDirectory() ? "folder" : "device";
      throw new CannotWrite(`Unexpected ${other} at \`${file}\`, expected a file: nothing was written`);
    }
    text = textOf(file, readFileSync(path)).text;
  } catch (error) {
    throw error instanceof CannotWrite ? error : refused(error, file);
  }
  if (hashOf(text) === madeFor) return text;
  throw new CannotWrite(
    `\`${file}\` was changed while the corpus was read, expected it as it was: nothing was written`,
  );
}

/** What the disk refused, in words; a fault of the program stays one. */
function refused(error: unknown, file: string): unknown {
  const code = (error as NodeJS.ErrnoException).code;
  if (code === undefined) return error;
  if (code === "ENOENT")
    return new CannotWrite(`\`${file}\` is gone, expected it as it was: nothing was written`);
  const what =
    (error as NodeJS.ErrnoException).syscall === "access" ? `\`${file}\`` : `The folder of \`${file}\``;
  if (code === "ENOSPC" || code === "EDQUOT")
    return new CannotWrite(`${what} has no room left, expected some: nothing was written`);
  if (["EACCES", "EPERM", "EROFS"].includes(code))
    return new CannotWrite(`${what} may not be written, expected one that may: nothing was written`);
  return new CannotWrite(`${what} cannot be written (${code}): nothing was written`);
}

/** Has the disk keep the new names, too, where a folder can be opened for it. */
function keepFolder(folder: string): void {
  try {
    const open = openSync(folder, "r");
    try {
      fsyncSync(open);
    } finally {
      closeSync(open);
    }
  } catch {
    // Some systems do not open folders; the files themselves are kept all the same.
  }
}
