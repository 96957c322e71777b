/** Why edits were not made; the message names the file as the corpus does, and says what became of the others. */
export class CannotWrite extends Error {}

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

  constructor(message: string, files: readonly StaleFile[]) {
    super(message);
    this.files = files;
  }
}

/** What the disk refused, in words; a fault of the program stays one. */
export function refused(error: unknown, file: string): unknown {
  const code = (error as NodeJS.ErrnoException).code;
  if (code === undefined || error instanceof CannotWrite) return error;
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

/** Whether an error is one of the disk's or a refusal of ours, and not a fault of the program. */
export function isOfDisk(error: unknown): error is Error {
  return error instanceof CannotWrite || (error as NodeJS.ErrnoException).code !== undefined;
}

/** What the disk refused while something was kept on the desk, in words; a fault of the program stays one. */
export function inWords(error: unknown): unknown {
  const code = (error as NodeJS.ErrnoException).code;
  if (code === undefined || error instanceof CannotWrite) return error;
  const why = code === "ENOSPC" || code === "EDQUOT" ? "has no room left" : `cannot be used (${code})`;
  return new CannotWrite(`The folder \`.variorum\`, where edits are kept, ${why}: nothing was written`);
}
