import { dirname, join } from "node:path";
import { row, say } from "../../../base/text/said/said.ts";
import type { Made } from "../../../write/telling/made.ts";
import { cleared, emptied, makeFolders, namesKept, nodeDisk } from "../../desk/disk.ts";
import type { Disk } from "../../desk/disk.ts";
import { besideOf, writeWhole } from "../../desk/files/beside.ts";
import { CannotWrite, isOfDisk, refused } from "../../desk/refusal.ts";

/** Where a file that was made goes, and what it holds. */
export interface Placed {
  readonly path: string;
  readonly content: Made["content"];
}

/** The files below a folder; a path that would lead out of it is a fault of whoever made the file. */
export function placedBelow(folder: string, files: readonly Made[]): readonly Placed[] {
  return files.map(({ path, content }) => {
    const steps = path.split("/");
    if (steps.some((one) => one === "" || one === "." || one === "..") || path.includes("\\"))
      throw new RangeError(`Unexpected path ${path}, expected one below its folder`);
    return { path: join(folder, ...steps), content };
  });
}

/** The first of the files that is there already, if only as a link that leads nowhere; null for none. */
export function takenAmong(files: readonly Placed[]): string | null {
  return files.find(({ path }) => isThere(path))?.path ?? null;
}

interface Waiting {
  readonly path: string;
  readonly beside: string;
  /** A second name of what stood there; null where nothing did, or the disk knows no second names. */
  before: string | null;
  wasThere: boolean;
}

/**
 * Writes all files or none: each is written whole beside its place and kept by the disk before any is put there; where
 * one cannot be, those before it are taken back. Tells the path that could not be written; null for none. A disk without
 * room, and what could not be taken back, are thrown as `CannotWrite`. A program that is ended meanwhile leaves every file old or new, and whole.
 */
export function placeFiles(files: readonly Placed[], disk: Disk = nodeDisk): string | null {
  const waiting: Waiting[] = [];
  const made: string[] = [];
  let at: string | null = "";
  try {
    for (const { path, content } of files) {
      at = path;
      waiting.push(prepared(disk, path, content, made));
    }
    for (const [place, one] of waiting.entries()) {
      at = one.path;
      putOrTakeBack(disk, one, waiting.slice(0, place));
    }
    at = null;
    return at;
  } catch (error) {
    if (error instanceof CannotWrite || !isOfDisk(error)) throw error;
    if (hasNoRoom(error)) throw refused(error, at ?? "");
    return at;
  } finally {
    for (const { beside, before } of waiting)
      for (const left of [beside, before]) if (left !== null) cleared(disk, left);
    namesKept(
      disk,
      waiting.map(({ path }) => dirname(path)),
    );
    if (at !== null) for (const folder of made.toReversed()) emptied(disk, folder);
  }
}

const hasNoRoom = (error: NodeJS.ErrnoException): boolean => ["ENOSPC", "EDQUOT"].includes(error.code ?? "");

function prepared(disk: Disk, path: string, content: Made["content"], made: string[]): Waiting {
  makeFolders(disk, dirname(path), made);
  const beside = besideOf(path, "part");
  cleared(disk, beside);
  const there = disk.see(path);
  if (there?.kind === "folder") throw Object.assign(new Error("a folder"), { code: "EISDIR" });
  const bytes = typeof content === "string" ? Buffer.from(content, "utf8") : content;
  writeWhole(disk, beside, bytes, there?.kind === "file" ? there : null);
  return { path, beside, before: null, wasThere: false };
}

function putOrTakeBack(disk: Disk, one: Waiting, done: readonly Waiting[]): void {
  try {
    one.wasThere = disk.see(one.path) !== null;
    if (one.wasThere) one.before = secondName(disk, one.path);
    disk.rename(one.beside, one.path);
  } catch (error) {
    const left = done.filter((it) => !isTakenBack(disk, it)).map(({ path }) => `\`${path}\``);
    if (left.length === 0) throw error;
    throw new CannotWrite(
      say`\`${one.path}\` cannot be written, and ${row(left, "comma")} could not be put back: written only in part`,
    );
  }
}

function secondName(disk: Disk, path: string): string | null {
  const before = besideOf(path, "was");
  cleared(disk, before);
  try {
    disk.link(path, before);
    return before;
  } catch (error) {
    if (!isOfDisk(error)) throw error;
    return null;
  }
}

function isTakenBack(disk: Disk, { path, before, wasThere }: Waiting): boolean {
  try {
    if (before !== null) disk.rename(before, path);
    else if (!wasThere) disk.remove(path);
    return before !== null || !wasThere;
  } catch (error) {
    if (!isOfDisk(error)) throw error;
    return false;
  }
}

function isThere(path: string): boolean {
  try {
    return nodeDisk.see(path) !== null;
  } catch {
    // What cannot be looked at is told when it is written.
    return false;
  }
}
