import {
  accessSync,
  closeSync,
  constants,
  fchmodSync,
  fchownSync,
  fsyncSync,
  linkSync,
  lstatSync,
  mkdirSync,
  openSync,
  readFileSync,
  readdirSync,
  renameSync,
  rmSync,
  rmdirSync,
  writeSync,
} from "node:fs";
import type { Stats } from "node:fs";
import { dirname } from "node:path";

/** What stands at a path; a link is not followed. */
export interface Seen {
  readonly kind: "file" | "folder" | "link" | "device";
  /** In bytes. */
  readonly size: number;
  readonly mode: number;
  readonly uid: number;
  readonly gid: number;
  /** When its bytes were last written, in milliseconds since 1970. */
  readonly changed: number;
}

/** A file opened on a disk. */
export type Open = number;

/** The calls that writing a corpus makes of a disk, one by one; each may fail with the codes of the system. */
export interface Disk {
  /** Null where there is nothing. */
  readonly see: (path: string) => Seen | null;
  /** Fails where the user may not write. */
  readonly tryWriting: (path: string) => void;
  readonly read: (path: string) => Uint8Array;
  /** The names in a folder. */
  readonly list: (path: string) => readonly string[];
  /** A new file (refused where one is), one that is only added to, or a folder whose names are to be kept. */
  readonly open: (path: string, how: "new" | "add" | "folder") => Open;
  /** How many of the bytes were written, at least one. */
  readonly write: (open: Open, bytes: Uint8Array) => number;
  /** Gives a file the owner and the permissions of another, as far as the user may. */
  readonly liken: (open: Open, like: Seen) => void;
  readonly sync: (open: Open) => void;
  readonly close: (open: Open) => void;
  /** Takes the place of what stood there. */
  readonly rename: (from: string, to: string) => void;
  /** A second name for a file; refused where something stands there. */
  readonly link: (from: string, to: string) => void;
  /** Takes a file away; nothing where there is none. */
  readonly remove: (path: string) => void;
  /** The folders above it are there; refused where something stands there. */
  readonly makeFolder: (path: string) => void;
  /** Refused where something is in it. */
  readonly removeFolder: (path: string) => void;
}

/** What stands at a path; undefined where nothing does, and below something that is no folder. */
function lookedAt(path: string): Stats | undefined {
  try {
    return lstatSync(path, { throwIfNoEntry: false });
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "ENOTDIR") return undefined;
    throw error;
  }
}

/** The disk of this machine. */
export const nodeDisk: Disk = {
  see: (path) => {
    const is = lookedAt(path);
    if (!is) return null;
    const kind = is.isFile() ? "file" : is.isDirectory() ? "folder" : is.isSymbolicLink() ? "link" : "device";
    return { kind, size: is.size, mode: is.mode, uid: is.uid, gid: is.gid, changed: is.mtimeMs };
  },
  tryWriting: (path) => accessSync(path, constants.W_OK),
  read: (path) => readFileSync(path),
  list: (path) => readdirSync(path),
  open: (path, how) => openSync(path, how === "new" ? "wx" : how === "add" ? "a" : "r"),
  write: (open, bytes) => writeSync(open, bytes),
  liken: (open, like) => {
    try {
      fchownSync(open, like.uid, like.gid);
    } catch {
      // Only who may give files away can keep another owner.
    }
    fchmodSync(open, like.mode & 0o7777);
  },
  sync: fsyncSync,
  close: closeSync,
  rename: renameSync,
  link: linkSync,
  remove: (path) => rmSync(path, { force: true }),
  makeFolder: (path) => void mkdirSync(path),
  removeFolder: rmdirSync,
};

/** Writes a new file whole and has the disk keep its bytes, or leaves none; its name is kept by `keepNames`. */
export function writeWhole(disk: Disk, path: string, bytes: Uint8Array, like: Seen | null = null): void {
  const open = disk.open(path, "new");
  try {
    try {
      writeAll(disk, open, bytes);
      if (like) disk.liken(open, like);
      disk.sync(open);
    } finally {
      disk.close(open);
    }
  } catch (error) {
    cleared(disk, path);
    throw error;
  }
}

/** Takes a file away that is no part of the corpus; where that cannot be done, it stays and is passed over. */
export function cleared(disk: Disk, path: string): void {
  try {
    disk.remove(path);
  } catch {
    // What is left has a name that begins with a dot.
  }
}

/** Writes all of some bytes, in as many goes as the disk takes. */
export function writeAll(disk: Disk, open: Open, bytes: Uint8Array): void {
  for (let at = 0; at < bytes.length;) at += disk.write(open, bytes.subarray(at));
}

/** Has the disk keep the names in a folder, too, where it can be asked to. */
export function keepNames(disk: Disk, folder: string): void {
  try {
    const open = disk.open(folder, "folder");
    try {
      disk.sync(open);
    } finally {
      disk.close(open);
    }
  } catch {
    // Some systems do not open folders; the files themselves are kept all the same.
  }
}

/** Makes a folder and those above it, and has the disk keep their names; gives those that were not there, outermost first. */
export function makeFolders(disk: Disk, path: string, made: string[] = []): readonly string[] {
  if (disk.see(path)) return made;
  makeFolders(disk, dirname(path), made);
  disk.makeFolder(path);
  made.push(path);
  keepNames(disk, dirname(path));
  return made;
}
