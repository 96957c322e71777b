import { say } from "../../../base/text/said/said.ts";
import { largestTable } from "../../../read/source-file.ts";
import type { Disk } from "../disk.ts";
import type { Sitting } from "../seat.ts";
import { placeIn } from "../files/place.ts";
import { Unsettled, putInPlace } from "../files/put.ts";
import type { Move } from "../files/put.ts";
import { bytesAt, hashOfBytes } from "../files/standing.ts";
import { CannotWrite, isOfDisk, nothingWritten } from "../refusal.ts";
import type { Step, StepFile } from "../state.ts";
import type { Limits } from "./bound.ts";
import type { Journal } from "./journal.ts";
import { knownAfter } from "./replay.ts";
import { textFor } from "./turn.ts";

/** What a desk works with: the disk, the clock and the names of steps can be others than this machine's. */
export interface Tools {
  readonly disk: Disk;
  /** Milliseconds since 1970. */
  readonly now: () => number;
  /** A name for a step that no other has, of sixteen hexadecimal digits. */
  readonly name: () => string;
  readonly limits: Limits;
  readonly sitting: Sitting;
}

/** The corpus whose files are changed, and where that is written down. */
export interface Site {
  readonly folder: string;
  readonly tools: Tools;
  readonly journal: Journal;
}

/** Makes a step and gives its number: its texts are kept first, then that it was begun, then the files are put in place, then that it is done. */
export function makeStep(
  { folder, tools, journal }: Site,
  about: { readonly kind: Step["kind"]; readonly step: string; readonly of?: string },
  moves: readonly Move[],
): number {
  const begin = tools.name();
  let n = journal.read().next;
  for (const bytes of moves.flatMap(({ was, is }) => [was, is])) if (bytes !== null) journal.keep(bytes);
  const files = moves.map(({ file, was, is }) => ({ file, was: hashOfBytes(was), is: hashOfBytes(is) }));
  journal.add([{ begin, ...about, when: new Date(tools.now()).toISOString(), files }]);
  try {
    putInPlace(tools.disk, folder, moves);
  } catch (error) {
    // What the disk may not keep so is brought to an end before anything else is done.
    if (!(error instanceof Unsettled)) tried(() => journal.add([{ end: begin, how: "back" }]));
    throw error;
  }
  // The files are new, whatever becomes of this line: without it the next to sit down here finds them so.
  tried(() => {
    journal.add([{ end: begin, how: "done" }]);
    n = journal.read().next - 1;
    journal.bound(tools.now());
  });
  return n;
}

/** Notes files, usually all, that are no longer as the history last knew them; those it does not know of say nothing. */
export function noteOutside({ folder, tools, journal }: Site, files?: readonly string[]): void {
  const known = knownAfter(journal.read(), Infinity);
  const changed = (files ?? [...known.keys()]).flatMap((file): readonly StepFile[] => {
    const was = known.get(file);
    if (was === undefined) return [];
    try {
      const path = placeIn(tools.disk, folder, file);
      if ((tools.disk.see(path)?.size ?? 0) > largestTable) return [];
      const now = bytesAt(tools.disk, path, file);
      const is = hashOfBytes(now);
      if (is === was) return [];
      if (now !== null) journal.keep(now);
      return [{ file, was, is }];
    } catch (error) {
      if (error instanceof CannotWrite) return [];
      throw error;
    }
  });
  if (changed.length === 0) return;
  const begin = tools.name();
  const when = new Date(tools.now()).toISOString();
  journal.add([
    { begin, kind: "outside", step: "", when, files: [...changed] },
    { end: begin, how: "done" },
  ]);
}

/** What makes the files as they were after a step, as far as they are not. */
export function movesTo({ folder, tools: { disk }, journal }: Site, n: number): readonly Move[] {
  const history = journal.read();
  const first = history.made[0]?.n ?? history.next;
  if (!Number.isInteger(n) || n < first - 1 || n >= history.next)
    throw new CannotWrite(nothingWritten(say`Unknown step ${String(n)}, expected one that is kept`));
  return [...knownAfter(history, n)].flatMap(([file, hash]) => {
    const now = bytesAt(disk, placeIn(disk, folder, file), file);
    if (hashOfBytes(now) === hash) return [];
    return [{ file, was: now, is: textFor(journal, file, hash) }];
  });
}

function tried(one: () => void): void {
  try {
    one();
  } catch (error) {
    if (!isOfDisk(error)) throw error;
  }
}
