import { inEnglish } from "../../base/text/said/english.ts";
import { say } from "../../base/text/said/said.ts";
import type { Said, Text } from "../../base/text/said/said.ts";
import type { Seen } from "./disk.ts";

/** Why edits were not made; it names the file as the corpus does, and says what became of the others. */
export class CannotWrite extends Error {
  readonly said: Text;

  /** The message is what is said, in English. */
  constructor(said: Text) {
    super(inEnglish(said));
    this.said = said;
  }
}

/** A reason with what came of it for the files of the corpus: they are as they were. */
export const nothingWritten = (why: Text): Said => say`${why}: nothing was written`;

/** What stands at a path, in words. */
export const kindsSeen: Readonly<Record<Seen["kind"], Said>> = {
  file: say`file`,
  folder: say`folder`,
  link: say`link`,
  device: say`device`,
};

/** A file that is not as it was when a change of it was made. */
export interface StaleFile {
  readonly file: string;
  /** What stands there now; null where there is no file, or none that can be read as text. */
  readonly text: string | null;
  /** What undoing or doing again would have put there, where that was asked; null for no file. */
  readonly wanted?: string | null;
}

/** Why edits were not made: files were changed meanwhile. */
export class Stale extends CannotWrite {
  readonly files: readonly StaleFile[];

  constructor(said: Text, files: readonly StaleFile[]) {
    super(said);
    this.files = files;
  }
}

/** What the disk refused, in words; a fault of the program stays one. */
export function refused(error: unknown, file: string): unknown {
  const code = (error as NodeJS.ErrnoException).code;
  if (code === undefined || error instanceof CannotWrite) return error;
  return new CannotWrite(nothingWritten(whyRefused(error as NodeJS.ErrnoException, code, file)));
}

function whyRefused({ syscall }: NodeJS.ErrnoException, code: string, file: string): Said {
  if (code === "ENOENT") return say`\`${file}\` is gone, expected it as it was`;
  if (code === "ENAMETOOLONG") return say`Unexpected length of the name \`${file}\`, expected a shorter one`;
  const what = syscall === "access" ? say`\`${file}\`` : say`The folder of \`${file}\``;
  if (code === "ENOSPC" || code === "EDQUOT") return say`${what} has no room left, expected some`;
  if (["EACCES", "EPERM", "EROFS"].includes(code))
    return say`${what} may not be written, expected one that may`;
  return say`${what} cannot be written (${code})`;
}

/** Whether an error is one of the disk's or a refusal of ours, and not a fault of the program. */
export function isOfDisk(error: unknown): error is Error {
  return error instanceof CannotWrite || (error as NodeJS.ErrnoException).code !== undefined;
}

/** What the disk refused while something was kept on the desk, in words; a fault of the program stays one. */
export function inWords(error: unknown): unknown {
  const code = (error as NodeJS.ErrnoException).code;
  if (code === undefined || error instanceof CannotWrite) return error;
  const desk = ".variorum";
  return new CannotWrite(
    nothingWritten(
      code === "ENOSPC" || code === "EDQUOT"
        ? say`The folder \`${desk}\`, where edits are kept, has no room left`
        : say`The folder \`${desk}\`, where edits are kept, cannot be used (${code})`,
    ),
  );
}
