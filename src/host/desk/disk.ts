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
  /** A new file (refused where one is), one that its owner alone may read, one that is only added to, or a folder whose names are to be kept. */
  readonly open: (path: string, how: "new" | "own" | "add" | "folder") => Open;
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

/** What stands at a path; undefined where nothing does, below something that is no folder, and where no name so long can be. */
function lookedAt(path: string): Stats | undefined {
  try {
    return lstatSync(path, { throwIfNoEntry: false });
  } catch (error) {
    if (["ENOTDIR", "ENAMETOOLONG"].includes((error as NodeJS.ErrnoException).code ?? "")) return undefined;
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
  open: (path, how) =>
    openSync(path, { new: "wx", own: "wx", add: "a", folder: "r" }[how], how === "own" ? 0o600 : 0o666),
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

/** Takes a file away that is no part of the corpus; where that cannot be done, it stays and is passed over. */
export function cleared(disk: Disk, path: string): void {
  try {
    disk.remove(path);
  } catch {
    // What is left has a name that begins with a dot.
  }
}

/** Takes a folder away that was made for what then could not be written; one in which somebody put something stays. */
export function emptied(disk: Disk, path: string): void {
  try {
    disk.removeFolder(path);
  } catch {
    // What is in it is somebody else's.
  }
}

/** Writes all of some bytes, in as many goes as the disk takes. */
export function writeAll(disk: Disk, open: Open, bytes: Uint8Array): void {
  for (let at = 0; at < bytes.length;) at += disk.write(open, bytes.subarray(at));
}

/** Has the disk keep the names in a folder, too, where it can be asked to; fails where it says that it could not. */
export function keepNames(disk: Disk, folder: string): void {
  try {
    const open = disk.open(folder, "folder");
    try {
      disk.sync(open);
    } finally {
      disk.close(open);
    }
  } catch (error) {
    // Some systems do not open folders, or cannot sync them; the files themselves are kept all the same.
    if (["EIO", "ENOSPC", "EDQUOT", "EROFS"].includes((error as NodeJS.ErrnoException).code ?? ""))
      throw error;
  }
}

/** The same of several folders; whether all could be kept. */
export function namesKept(disk: Disk, folders: Iterable<string>): boolean {
  try {
    for (const folder of new Set(folders)) keepNames(disk, folder);
    return true;
  } catch {
    return false;
  }
}

/** Makes a folder and those above it, and has the disk keep their names; gives those that were not there, outermost first. */
export function makeFolders(disk: Disk, path: string, made: string[] = []): readonly string[] {
  if (disk.see(path)) return made;
  makeFolders(disk, dirname(path), made);
  try {
    disk.makeFolder(path);
  } catch (error) {
    // Another program made it meanwhile; whether it is a folder is found out by who writes in it.
    if (disk.see(path)) return made;
    throw error;
  }
  try {
    keepNames(disk, dirname(path));
  } catch (error) {
    // One whose name is not kept is not taken for one that is by the next.
    emptied(disk, path);
    throw error;
  }
  made.push(path);
  return made;
}
