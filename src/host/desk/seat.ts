import { randomBytes } from "node:crypto";
import { hostname } from "node:os";
import { join } from "node:path";
import { say } from "../../base/text/said/said.ts";
import { writeAll } from "./disk.ts";
import type { Disk } from "./disk.ts";
import { CannotWrite, isOfDisk, nothingWritten } from "./refusal.ts";
import { roomIn } from "./room.ts";

/** How programs that want the same desk are told apart. */
export interface Sitting {
  /** Names this program and this sitting; no other has it. */
  readonly mark: () => string;
  /** Whether the program that a mark names has ended, as far as this one can know. */
  readonly hasEnded: (mark: string) => boolean;
  /** Lets some milliseconds pass. */
  readonly wait: (ms: number) => void;
}

/** The sittings of this machine's programs, named by machine and number of the process. */
export const usualSitting: Sitting = {
  mark: () => `${hostname()} ${process.pid} ${randomBytes(8).toString("hex")}`,
  hasEnded: (mark) => {
    const [, machine, pid] = /^(.*) (\d{1,9}) [0-9a-f]{16}$/.exec(mark) ?? [];
    return machine === hostname() && (Number(pid) === process.pid || !isRunning(Number(pid)));
  },
  wait: (ms) => void Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, ms),
};

/** The marks of this program's own sittings that are not over. */
const own = new Set<string>();

/** What is waited between two looks, in milliseconds. */
const pause = 4;

/** After how many a mark that does not change is taken for one that was left, and one that was put there without a word. */
const [patience, hesitation] = [5000, 500] as const;

/** The most that is waited at all. */
const longest = 20_000;

/**
 * Does one thing at a desk while no other program does: who sits there has put a mark on the seat, and takes it away.
 * A mark that was left by a program that was broken off is taken away by the next. Should two ever sit at once, all
 * files of a step are still old or new, and what one wrote over is in the history.
 */
export function seated<T>(disk: Disk, folder: string, sitting: Sitting, one: () => T): T {
  const seat = join(roomIn(folder).desk, "seat");
  const mark = sitting.mark();
  sitDown(disk, seat, mark, sitting);
  own.add(mark);
  try {
    return one();
  } finally {
    own.delete(mark);
    standUp(disk, seat, mark);
  }
}

function sitDown(disk: Disk, seat: string, mark: string, sitting: Sitting): void {
  let last: string | null = null;
  let since = 0;
  for (let waited = 0; waited <= longest; waited += pause) {
    if (isPut(disk, seat, mark)) return;
    const found = markAt(disk, seat);
    if (found === null) continue;
    if (own.has(found)) break;
    if (found !== last) [last, since] = [found, waited];
    const most = found === "" ? hesitation : patience;
    if (sitting.hasEnded(found) || waited - since >= most) takeAway(disk, seat, found, mark);
    else sitting.wait(pause);
  }
  throw new CannotWrite(
    nothingWritten(say`Another program is just changing the corpus, expected it to come to an end`),
  );
}

/** Puts a mark on a seat that is free. */
function isPut(disk: Disk, seat: string, mark: string): boolean {
  let open;
  try {
    open = disk.open(seat, "new");
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "EEXIST") return false;
    throw error;
  }
  try {
    writeAll(disk, open, Buffer.from(mark, "utf8"));
    return true;
  } catch (error) {
    disk.remove(seat);
    throw error;
  } finally {
    disk.close(open);
  }
}

/** The mark on a seat; null where there is none, and what stands there as it is where it is no mark. */
function markAt(disk: Disk, seat: string): string | null {
  const seen = disk.see(seat);
  if (!seen) return null;
  if (seen.kind !== "file" || seen.size > 1024) return seen.kind;
  try {
    return Buffer.from(disk.read(seat)).toString("utf8");
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "ENOENT") return null;
    throw error;
  }
}

/** Takes a mark away that was left. Should another have been put there since the look, that one is put back. */
function takeAway(disk: Disk, seat: string, left: string, mark: string): void {
  const aside = `${seat}.${mark.slice(-16)}`;
  try {
    disk.rename(seat, aside);
    if (markAt(disk, aside) !== left) disk.link(aside, seat);
  } catch (error) {
    if (!isOfDisk(error)) throw error;
  }
  if (disk.see(aside)?.kind === "file") disk.remove(aside);
}

/** Leaves the seat to others; a mark that cannot be taken away is taken for left when its program has ended. */
function standUp(disk: Disk, seat: string, mark: string): void {
  try {
    if (markAt(disk, seat) === mark) disk.remove(seat);
  } catch (error) {
    if (!isOfDisk(error)) throw error;
  }
}

function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code !== "ESRCH";
  }
}
