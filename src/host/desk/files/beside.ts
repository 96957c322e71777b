import { createHash } from "node:crypto";
import { basename, dirname, join } from "node:path";
import { cleared, keepNames, writeAll } from "../disk.ts";
import type { Disk, Seen } from "../disk.ts";

/** Whose a new file is: as the system has it, its owner's alone, or like that of another. */
export type Like = Seen | "own" | null;

/** The most bytes of a file's name that stand in the name of what waits beside it; a whole name may have 255. */
const longest = 200;

/** How the names begin of what waits beside a file: with a dot, so that it is no file of the corpus. */
export function hiddenStart(path: string): string {
  const name = basename(path);
  if (Buffer.byteLength(name, "utf8") <= longest) return `.${name}.`;
  return `.${createHash("sha256").update(name).digest("hex").slice(0, 32)}.`;
}

/** Where something of this program waits beside a file, by what it is. */
export function besideOf(path: string, what: string): string {
  return join(dirname(path), `${hiddenStart(path)}${process.pid}.${what}`);
}

/** Writes a new file whole and has the disk keep its bytes, or leaves none; its name is kept by `keepNames`. */
export function writeWhole(disk: Disk, path: string, bytes: Uint8Array, like: Like = null): void {
  const open = disk.open(path, like === "own" ? "own" : "new");
  try {
    try {
      writeAll(disk, open, bytes);
      if (like !== null && like !== "own") disk.liken(open, like);
      disk.sync(open);
    } finally {
      disk.close(open);
    }
  } catch (error) {
    cleared(disk, path);
    throw error;
  }
}

/** Puts a file in the place of what stood there, whole and kept by the disk; where that fails the place has the one or the other. */
export function replaceWhole(disk: Disk, path: string, bytes: Uint8Array): void {
  replaceSoon(disk, path, bytes);
  keepNames(disk, dirname(path));
}

/** The same, where it is no harm if the disk should go back to what stood there before: what fails changes nothing. */
export function replaceSoon(disk: Disk, path: string, bytes: Uint8Array, like: Like = null): void {
  const beside = besideOf(path, "part");
  cleared(disk, beside);
  writeWhole(disk, beside, bytes, like);
  try {
    disk.rename(beside, path);
  } catch (error) {
    cleared(disk, beside);
    throw error;
  }
}

/** Puts a new file in its place, whole and kept by the disk; false where something stands there. */
export function putNew(disk: Disk, path: string, bytes: Uint8Array, like: Like = null): boolean {
  const beside = besideOf(path, "part");
  cleared(disk, beside);
  writeWhole(disk, beside, bytes, like);
  let isPut = false;
  try {
    isPut = named(disk, beside, path);
  } finally {
    cleared(disk, beside);
  }
  if (isPut) keptOrTaken(disk, path);
  return isPut;
}

/** Has the disk keep the name of a new file; one that it would not keep is taken away, and the reason thrown. */
export function keptOrTaken(disk: Disk, path: string): void {
  try {
    keepNames(disk, dirname(path));
  } catch (error) {
    cleared(disk, path);
    throw error;
  }
}

/**
 * Gives a file that was written its name; false where something stands there. A second name and not a renaming: it is
 * refused where somebody made such a file meanwhile.
 */
export function named(disk: Disk, beside: string, path: string): boolean {
  try {
    if (!hasSecondName(disk, beside, path)) disk.rename(beside, path);
    return true;
  } catch (error) {
    if (disk.see(path)) return false;
    throw error;
  }
}

/** Gives a file a second name; false where the disk knows none, refused where something stands there. */
export function hasSecondName(disk: Disk, path: string, second: string): boolean {
  try {
    disk.link(path, second);
    return true;
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code ?? "";
    if (disk.see(second) || !noSecondNames.includes(code)) throw error;
    return false;
  }
}

const noSecondNames = ["EPERM", "ENOSYS", "ENOTSUP", "EOPNOTSUPP", "EMLINK", "EXDEV"];
