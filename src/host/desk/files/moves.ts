import { edited, inPlace } from "../../../base/text/edit.ts";
import type { Edit } from "../../../base/finding.ts";
import type { FileChange } from "../../../base/text/edit.ts";
import { say } from "../../../base/text/said/said.ts";
import type { Disk } from "../disk.ts";
import { CannotWrite, nothingWritten } from "../refusal.ts";
import { checkNew } from "./new-name.ts";
import { seen } from "./known.ts";
import { placeIn } from "./place.ts";
import type { Move } from "./put.ts";
import { bytesAt, hashOfBytes, stale, staleFile, textIn } from "./standing.ts";

/** What the files of a corpus are to become by changes; refused, all of them, where one was made for another text than now stands there. */
export function movesOf(disk: Disk, folder: string, changes: readonly FileChange[]): readonly Move[] {
  const found = changes.map((change) => ({
    change,
    now: bytesAt(disk, placeIn(disk, folder, change.file), change.file),
  }));
  const made = found.filter(({ change, now }) => change.madeFor === null && now === null && !change.gone);
  const coming = made.map(({ change }) => change.file);
  for (const file of coming) checkNew(disk, folder, file, coming);
  const others = found.filter(({ change, now }) => hashOfBytes(now) !== change.madeFor);
  if (others.length > 0) {
    throw stale(
      others.map(({ change: { file, madeFor }, now }) => ({
        ...staleFile(file, now),
        wasThere: madeFor !== null,
      })),
    );
  }
  return found.map(({ change, now }) => ({ file: change.file, was: now, is: after(change, now) }));
}

function after({ file, edits, gone }: FileChange, now: Uint8Array | null): Uint8Array | null {
  if (gone) {
    if (file === "corpus.yaml")
      throw new CannotWrite(nothingWritten(say`\`${file}\` makes the folder a corpus, expected it to stay`));
    return null;
  }
  const text = now === null ? "" : textIn(now);
  if (text === null)
    throw new CannotWrite(nothingWritten(say`\`${file}\` is no text in UTF-8, expected one`));
  const isWithin = edits
    .toSorted(inPlace)
    .every(
      ({ start, end }, at, all) => start >= (all[at - 1]?.end ?? 0) && start <= end && end <= text.length,
    );
  if (!isWithin)
    throw new CannotWrite(
      nothingWritten(say`Unexpected place of an edit in \`${file}\`, expected one of its text`),
    );
  const then = edited(text, edits);
  const bytes = Buffer.from(then, "utf8");
  return edits.every((edit) => isWhole(text, edit, edits.length)) ? seen(bytes, then) : bytes;
}

/** Whether an edit, the only one, leaves no half of a sign: bytes have no such half, so they would be another text. */
function isWhole(text: string, { start, end, text: put }: Edit, count: number): boolean {
  return (
    count === 1 &&
    !/\p{Surrogate}/u.test(text.slice(Math.max(0, start - 1), start) + put + text.slice(end, end + 1))
  );
}
