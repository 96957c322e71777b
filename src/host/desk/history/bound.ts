import { join } from "node:path";
import { cleared, keepNames } from "../disk.ts";
import type { Disk } from "../disk.ts";
import type { Room } from "../room.ts";
import type { Line } from "./lines.ts";
import { textsKept } from "./texts.ts";

/** How much of a history is kept. */
export interface Limits {
  readonly steps: number;
  /** Of the texts, as they are kept. */
  readonly bytes: number;
  /** Steps in one part of the history; the oldest part goes as a whole. */
  readonly part: number;
}

/** The newest thousand steps, in at most 200 MiB. */
export const usualLimits: Limits = { steps: 1000, bytes: 200 * 1024 * 1024, part: 100 };

/** A part of a history: the name of its file and its lines. */
export interface Part {
  readonly name: string;
  readonly lines: readonly Line[];
}

const day = 24 * 60 * 60 * 1000;

/**
 * Lets the oldest parts of a history go where there is too much of it, and the texts that only they needed. A text that
 * nothing refers to stays for a day: another program may just be about to.
 */
export function bound(disk: Disk, room: Room, parts: readonly Part[], limits: Limits, now: number): void {
  const texts = textsKept(disk, room.texts);
  const size = (hashes: ReadonlySet<string>): number =>
    texts.reduce((sum, one) => sum + (hashes.has(one.hash) ? one.size : 0), 0);
  let kept = parts;
  const isMuch = (): boolean => {
    const [, ...others] = kept;
    return (
      others.reduce((sum, { lines }) => sum + stepsIn(lines), 0) >= limits.steps ||
      size(hashesIn(kept)) > limits.bytes
    );
  };
  while (kept.length > 1 && isMuch()) kept = kept.slice(1);
  const older = parts.slice(0, parts.length - kept.length);
  if (older.length === 0) return;
  for (const { name } of older) cleared(disk, join(room.history, name));
  keepNames(disk, room.history);
  const isThere = ({ name }: Part): boolean => disk.see(join(room.history, name)) !== null;
  const needed = hashesIn(parts.filter(isThere));
  const unneeded = hashesIn(parts.filter((one) => !isThere(one)));
  for (const { hash, path, changed } of texts)
    if (!needed.has(hash) && (unneeded.has(hash) || changed < now - day)) cleared(disk, path);
}

/** How many steps were finished in some lines of a history. */
export function stepsIn(lines: readonly Line[]): number {
  return lines.filter((line) => "end" in line && line.how === "done").length;
}

function hashesIn(parts: readonly Part[]): ReadonlySet<string> {
  const hashes = parts.flatMap(({ lines }) =>
    lines.flatMap((line) => {
      if ("begin" in line) return line.files.flatMap(({ was, is }) => [was, is]);
      return "from" in line ? line.known.map(([, hash]) => hash) : [];
    }),
  );
  return new Set(hashes.filter((hash) => hash !== null));
}
