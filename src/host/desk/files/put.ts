import { dirname, join } from "node:path";
import { coded, row, say } from "../../../base/text/said/said.ts";
import { cleared, emptied, keepNames, makeFolders, namesKept } from "../disk.ts";
import type { Disk } from "../disk.ts";
import { CannotWrite, refused } from "../refusal.ts";
import { besideOf, hasSecondName, hiddenStart, named, writeWhole } from "./beside.ts";
import { placeIn } from "./place.ts";
import { bytesAt, isSame, stale, staleFile } from "./standing.ts";

/** What one file is to become, byte for byte, and what it must be for it; null where there is none. */
export interface Move {
  readonly file: string;
  readonly was: Uint8Array | null;
  readonly is: Uint8Array | null;
}

interface Ready {
  readonly move: Move;
  readonly path: string;
  /** Where the new text waits; its name begins with a dot, so that it is no file of the corpus. */
  readonly beside: string;
  /** Where the text as it was waits, by a second name of the file, until every file is in its place. */
  readonly before: string;
}

/**
 * Puts files in their places, all of them or none: each is written whole beside its place, kept by the disk, and only
 * then put there. What stands in a place is looked at once more right before; what is saved there by another program
 * between that look and the renaming, some microseconds, is the one thing that can still be written over.
 */
export function putInPlace(disk: Disk, folder: string, moves: readonly Move[]): void {
  const ready: Ready[] = [];
  const made: string[] = [];
  let isDone = false;
  try {
    for (const move of moves) ready.push(prepared(disk, folder, move, made));
    // One alone is looked at when it is put in its place.
    if (ready.length > 1)
      for (const one of ready) if (!isNow(disk, one, one.move.was)) throw changedMeanwhile(disk, one);
    putAll(disk, ready);
    isDone = true;
  } finally {
    for (const { beside, before } of ready) for (const at of [beside, before]) cleared(disk, at);
    namesKept(disk, placesOf(ready));
    if (!isDone) for (const place of made.toReversed()) emptied(disk, place);
  }
}

/** Takes away what waits beside a file for a step that was broken off. */
export function clearBeside(disk: Disk, path: string): void {
  const [folder, start] = [dirname(path), hiddenStart(path)];
  if (disk.see(folder)?.kind !== "folder") return;
  for (const name of disk.list(folder)) {
    const isWaiting = name.startsWith(start) && /^\d+\.(part|was)$/.test(name.slice(start.length));
    if (isWaiting) cleared(disk, join(folder, name));
  }
}

function prepared(disk: Disk, folder: string, move: Move, made: string[]): Ready {
  const path = placeIn(disk, folder, move.file);
  const [beside, before] = [besideOf(path, "part"), besideOf(path, "was")];
  const waiting: string[] = [];
  try {
    if (move.was !== null) disk.tryWriting(path);
    if (move.is !== null) makeFolders(disk, dirname(path), made);
    const like = move.was === null ? null : disk.see(path);
    // What an earlier program with this number left when it was broken off.
    for (const at of [beside, before]) if (disk.see(at)?.kind === "file") cleared(disk, at);
    if (move.is !== null) {
      writeWhole(disk, beside, move.is, like);
      waiting.push(beside);
    }
    if (move.was !== null) {
      if (isSticky(disk, dirname(path)) || !hasSecondName(disk, path, before))
        writeWhole(disk, before, move.was, like);
      waiting.push(before);
    }
  } catch (error) {
    for (const at of waiting) cleared(disk, at);
    throw refused(error, move.file);
  }
  return { move, path, beside, before };
}

/** Whether in a folder nobody may take away a name of a file of somebody else's, so that a second one would stay. */
function isSticky(disk: Disk, folder: string): boolean {
  return ((disk.see(folder)?.mode ?? 0) & 0o1000) !== 0;
}

const placesOf = (ready: readonly Ready[]): readonly string[] => ready.map(({ path }) => dirname(path));

/** Puts every file in its place; where one cannot be put there, or is not kept there, all are taken back. */
function putAll(disk: Disk, ready: readonly Ready[]): void {
  const done: Ready[] = [];
  for (const one of ready) {
    try {
      if (isPut(disk, one)) done.push(one);
    } catch (error) {
      // Another program that took the step for one that was broken off has finished it.
      if (ready.every((it) => isNow(disk, it, it.move.is))) return;
      throw takenBack(disk, done, one, error);
    }
  }
  const last = new Map(ready.map((one) => [dirname(one.path), one]));
  for (const [place, one] of last) {
    try {
      keepNames(disk, place);
    } catch (error) {
      throw takenBack(disk, done, one, error);
    }
  }
}

/** Takes back what was put in its place, and gives the reason for whoever asked for it. */
function takenBack(disk: Disk, done: readonly Ready[], failed: Ready, error: unknown): unknown {
  const left = done.filter((it) => !isTakenBack(disk, it)).map(({ move }) => coded(move.file));
  if (left.length > 0)
    return new Unsettled(
      say`\`${failed.move.file}\` cannot be written, and ${row(left, "comma")} could not be put back: written only in part`,
    );
  const why = refused(error, failed.move.file);
  const isKept = namesKept(disk, placesOf(done));
  return !isKept && why instanceof CannotWrite ? new Unsettled(why.said) : why;
}

/** Why files were not changed, or some and others not, where the disk may not keep them as they now are. */
export class Unsettled extends CannotWrite {}

/** Puts one file in its place; false where another program that goes on with the same step has done so. */
function isPut(disk: Disk, one: Ready): boolean {
  const { path, beside, move } = one;
  // Before the look, so that nothing comes between that and the renaming.
  if (move.is !== null) waitAgain(disk, beside, move.is, path);
  const now = bytesAt(disk, path, move.file);
  if (isSame(now, move.is)) return false;
  if (!isSame(now, move.was)) throw changedMeanwhile(disk, one);
  if (move.is === null) disk.remove(path);
  else if (move.was !== null) disk.rename(beside, path);
  else if (!named(disk, beside, path)) throw changedMeanwhile(disk, one);
  return true;
}

/** Writes what waited beside a file once more where another program, to which the step seemed broken off, took it away. */
function waitAgain(disk: Disk, at: string, bytes: Uint8Array, path: string): void {
  if (!disk.see(at)) writeWhole(disk, at, bytes, disk.see(path));
}

function isTakenBack(disk: Disk, one: Ready): boolean {
  try {
    if (isNow(disk, one, one.move.was)) return true;
    if (!isNow(disk, one, one.move.is)) return false;
    if (one.move.was === null) disk.remove(one.path);
    else {
      waitAgain(disk, one.before, one.move.was, one.path);
      disk.rename(one.before, one.path);
    }
    return true;
  } catch {
    return false;
  }
}

function isNow(disk: Disk, { path, move }: Ready, bytes: Uint8Array | null): boolean {
  return isSame(bytesAt(disk, path, move.file), bytes);
}

function changedMeanwhile(disk: Disk, { path, move }: Ready): Error {
  const now = bytesAt(disk, path, move.file);
  return stale([{ ...staleFile(move.file, now), wasThere: move.was !== null }]);
}
