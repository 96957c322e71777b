import { coded, row, say } from "../../../base/text/said/said.ts";
import { mergedFile } from "../../../read/edit/merge/file.ts";
import type { Disk } from "../disk.ts";
import { placeIn } from "../files/place.ts";
import type { Move } from "../files/put.ts";
import { bytesAt, isSame, textIn } from "../files/standing.ts";
import { CannotWrite, Stale, nothingWritten } from "../refusal.ts";
import type { StaleFile } from "../refusal.ts";
import type { Journal } from "./journal.ts";
import type { Begun } from "./lines.ts";

/**
 * What the files of a step are to become for it to be taken back. A file that was changed since keeps what was
 * changed in it, by lines or by records; where both changed the same nothing is taken back, and both texts are told.
 */
export function movesBack(disk: Disk, folder: string, journal: Journal, step: Begun): readonly Move[] {
  const clashes: StaleFile[] = [];
  const moves = step.files.flatMap(({ file, was, is }): readonly Move[] => {
    const now = bytesAt(disk, placeIn(disk, folder, file), file);
    const [left, wanted] = [textFor(journal, file, is), textFor(journal, file, was)];
    if (isSame(now, wanted)) return [];
    if (isSame(now, left)) return [{ file, was: now, is: wanted }];
    const text = merged(file, left, now, wanted);
    if (text !== null) return isSame(now, text) ? [] : [{ file, was: now, is: text }];
    clashes.push({ file, text: textIn(now), wanted: textIn(wanted) });
    return [];
  });
  if (clashes.length === 0) return moves;
  const names = clashes.map(({ file }) => coded(file));
  throw new Stale(
    nothingWritten(
      say`${row(names, "comma")}: changed since in the same lines, expected as the step left it`,
    ),
    clashes,
  );
}

/** The bytes a history keeps by a hash, null for no file; refused where they are gone. */
export function textFor(journal: Journal, file: string, hash: string | null): Uint8Array | null {
  if (hash === null) return null;
  const bytes = journal.text(hash);
  if (bytes) return bytes;
  throw new CannotWrite(
    nothingWritten(say`Missing text of \`${file}\` in the history, expected it as it was`),
  );
}

function merged(
  file: string,
  left: Uint8Array | null,
  now: Uint8Array | null,
  wanted: Uint8Array | null,
): Uint8Array | null {
  const [base, mine, theirs] = [textIn(left), textIn(now), textIn(wanted)];
  if (base === null || mine === null || theirs === null) return null;
  const both = mergedFile(file, base, mine, theirs);
  return "text" in both ? Buffer.from(both.text, "utf8") : null;
}
