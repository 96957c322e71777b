import { lstatSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { markedIn } from "../../base/text/conflict-marks.ts";
import { withMarks } from "../../base/text/merging/marking.ts";
import { linesIn } from "../../base/text/lines/lines.ts";
import { inEnglish } from "../../base/text/said/english.ts";
import { onOneLine } from "../../base/text/steering.ts";
import { textOf } from "../../host/corpus-folder.ts";
import { mergedVersions } from "../../read/edit/merge/versions.ts";
import { largestTable } from "../../read/source-file.ts";
import { Stop } from "../fault.ts";

/** What version control tells of the three files that it hands over. */
export interface Handed {
  /** Where the file lies in the repository: the files handed over have names of their own. */
  readonly path?: string;
  /** How many signs a mark of a conflict has. */
  readonly marks?: string;
  readonly oursName?: string;
  readonly theirsName?: string;
}

/**
 * Merges two versions of a file into the second of the three paths, with marks where they clash; whether they do not.
 * Where that cannot be done, it is left as it was.
 */
export function mergeInto([base, ours, theirs]: readonly [string, string, string], handed: Handed): boolean {
  const path = handed.path ?? ours;
  const [old, own, other] = [base, ours, theirs].map((file) => textAt(file, path));
  const merged = mergedVersions(nameIn(path), old ?? "", own ?? "", other ?? "");
  if ("text" in merged) {
    written(ours, merged.text);
    return true;
  }
  const names = { mine: said(handed.oursName) ?? "ours", theirs: said(handed.theirsName) ?? "theirs" };
  const text = withMarks(merged, { names, size: sizeOf(handed.marks) });
  written(ours, text);
  process.stderr.write(`${markedText(path, text)}\n`);
  return false;
}

/** The settings of a corpus are known by their name, in whatever folder of the repository the corpus lies. */
function nameIn(path: string): string {
  return basename(path) === "corpus.yaml" ? "corpus.yaml" : path;
}

/** A name that git gives a side; an older git leaves the sign that asks for it as it is. */
function said(name: string | undefined): string | null {
  return name === undefined || name === "" || /^%[A-Z]$/u.test(name) ? null : onOneLine(name);
}

function sizeOf(marks: string | undefined): number {
  const size = marks === undefined ? 7 : Number(marks);
  if (Number.isInteger(size) && size >= 1 && size <= 100) return size;
  throw new Stop(`Unexpected --marks ${marks ?? ""}, expected how many signs a mark has, from 7 to 100`);
}

function textAt(file: string, path: string): string {
  const seen = lstatSync(file, { throwIfNoEntry: false });
  if (!seen?.isFile()) throw new Stop(`Unknown file \`${file}\`, expected a version of \`${path}\``);
  if (seen.size > largestTable)
    throw new Stop(`Unexpected size of \`${path}\`, expected 64 MiB at most: nothing was merged`);
  const { text, problem } = textOf(
    path,
    onDisk(() => readFileSync(file), file),
  );
  if (problem !== undefined) throw new Stop(`\`${path}\`: ${inEnglish(problem)}: nothing was merged`);
  return text;
}

/** Written whole beside its place first: what git then takes is the merged file or what was there, never a half. */
function written(file: string, text: string): void {
  const beside = join(dirname(file), `.${basename(file)}.${process.pid}`);
  onDisk(() => {
    try {
      writeFileSync(beside, text, { flag: "wx", mode: lstatSync(file).mode & 0o777 });
      renameSync(beside, file);
    } finally {
      rmSync(beside, { force: true });
    }
  }, file);
}

/** What the disk refuses is said in a line, and is no fault of the program. */
function onDisk<T>(one: () => T, file: string): T {
  try {
    return one();
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    if (code === undefined) throw error;
    throw new Stop(`\`${file}\` cannot be read or written (${code}): nothing was merged`);
  }
}

/** Where the marks stand, and what leads on. */
function markedText(path: string, text: string): string {
  const places = (markedIn(text)?.pieces ?? []).flatMap((one) => (one.is === "differs" ? [one] : []));
  const lineOf = linesIn(new Map([[path, text]]));
  const lines = places.map(
    ({ start, end }) => `${lineOf(path, start).line}–${lineOf(path, Math.max(start, end - 1)).line}`,
  );
  const shown = lines.length > 5 ? [...lines.slice(0, 5), "…"] : lines;
  const where = places.length === 1 ? "one place" : `${places.length} places`;
  const name = onOneLine(path);
  return `Conflict marks in ${where} of ${name} (lines ${shown.join(", ")}): variorum merge-files --settle ${name} shows both versions`;
}
