import { basename, dirname } from "node:path";
import type { Disk, Open, Seen } from "../../../src/host/desk/disk.ts";

/** The current that went: no call after it does anything. */
export class PowerLoss extends Error {}

interface Thing {
  readonly kind: "file" | "folder" | "link";
  bytes: Uint8Array;
  /** What the platter has of it. */
  synced: Uint8Array;
}

/**
 * What happens at one call, counted from 1: the current goes, a write half done; or the call fails with a code, once; or
 * the disk is full from then on.
 */
export interface Trouble {
  readonly at: number;
  readonly how: "half" | "full" | "EIO" | "ENOSPC" | "EACCES" | "EPERM" | "EROFS" | "EXDEV";
}

/**
 * What a loss of power leaves of what the disk was not told to keep: all of it, none, or of each change of a name,
 * counted from 0, whether it is there, and of each file what share of its end, from 0 to 1.
 */
export interface Left {
  readonly names: "all" | "synced" | ((change: number) => boolean);
  readonly bytes: "all" | "synced" | ((file: number) => number);
}

/** A change of names in a folder that the disk was not told to keep. */
interface Change {
  readonly folder: string;
  readonly apply: (names: Map<string, Thing>) => void;
}

/** A disk in memory that counts its calls, and can be stopped at any of them. */
export interface MemoryDisk extends Disk {
  readonly calls: () => number;
  readonly trouble: (trouble: Trouble | null) => void;
  /** Has the disk write at most so many bytes in one go. */
  readonly most: (bytes: number) => void;
  /** Has something done right before a call, counted from 1; calls made in it are not counted. */
  readonly before: (at: number, act: () => void) => void;
  readonly isLost: () => boolean;
  /** The disk as the next program finds it. */
  readonly after: (left: Left) => MemoryDisk;
  /** Writes as some other program would, in one go and kept. */
  readonly save: (path: string, text: string | Uint8Array | null) => void;
  readonly linkTo: (path: string) => void;
  /** All files outside of folders that begin with a dot, as texts by path. */
  readonly texts: (folder: string) => Readonly<Record<string, string>>;
  readonly paths: () => readonly string[];
}

const none = new Uint8Array();

/** A disk with some files, all of them kept. */
export function memoryDisk(files: Readonly<Record<string, string | Uint8Array>> = {}): MemoryDisk {
  const disk = over(new Map([["/", { kind: "folder", bytes: none, synced: none }]]));
  for (const [path, text] of Object.entries(files)) disk.save(path, text);
  return disk;
}

function fault(code: string, syscall: string): Error {
  return Object.assign(new Error(`${code}: ${syscall}`), { code, syscall });
}

function over(kept: Map<string, Thing>): MemoryDisk {
  const live = new Map(kept);
  let pending: Change[] = [];
  const opened = new Map<Open, { readonly thing: Thing; readonly path: string }>();
  let [calls, lost, trouble, next, most] = [0, false, null as Trouble | null, 10, Infinity];
  let acting: { readonly at: number; readonly act: () => void } | null = null;
  let isActing = false;
  const call = (
    half: () => void = () => undefined,
    needs: "room" | "rights" | "neither" = "rights",
  ): void => {
    if (lost) throw new PowerLoss("the current is gone");
    if (isActing) return;
    calls += 1;
    if (calls === acting?.at) {
      isActing = true;
      try {
        acting.act();
      } finally {
        isActing = false;
      }
    }
    if (needs === "room" && trouble?.how === "full" && calls >= trouble.at) throw fault("ENOSPC", "write");
    if (calls !== trouble?.at || trouble.how === "full") return;
    // That folders are not to be opened is the way of a system, and none of a moment.
    if (needs === "neither" && ["EACCES", "EPERM", "EXDEV"].includes(trouble.how)) return;
    if (trouble.how !== "half") throw fault(trouble.how, "write");
    half();
    lost = true;
    throw new PowerLoss(`the current went at call ${calls}`);
  };
  const at = (path: string, syscall = "open"): Thing => {
    const thing = live.get(path);
    if (!thing) throw fault("ENOENT", syscall);
    return thing;
  };
  const make = (path: string, thing: Thing, syscall: string): void => {
    if (live.has(path)) throw fault("EEXIST", syscall);
    if (at(dirname(path), syscall).kind !== "folder") throw fault("ENOTDIR", syscall);
    change(dirname(path), (names) => void names.set(path, thing));
  };
  /** Changes names, for good when the folder is synced. */
  const change = (folder: string, apply: Change["apply"]): void => {
    apply(live);
    pending.push({ folder, apply });
  };
  const keepNamesIn = (folder: string): void => {
    for (const one of pending) if (one.folder === folder) one.apply(kept);
    pending = pending.filter((one) => one.folder !== folder);
  };
  const namesIn = (names: ReadonlyMap<string, Thing>, folder: string): readonly string[] =>
    [...names.keys()].filter((path) => path !== "/" && dirname(path) === folder);
  const add = (open: Open, bytes: Uint8Array): void => {
    const { thing } = handle(open);
    thing.bytes = Buffer.concat([thing.bytes, bytes]);
  };
  const handle = (open: Open): { readonly thing: Thing; readonly path: string } => {
    const found = opened.get(open);
    if (!found) throw fault("EBADF", "write");
    return found;
  };
  const saved = (path: string, text: string | Uint8Array | null): void => {
    for (let folder = dirname(path); folder !== "/"; folder = dirname(folder)) keepNamesIn(folder);
    if (text === null) {
      live.delete(path);
      kept.delete(path);
      return;
    }
    const bytes = typeof text === "string" ? Buffer.from(text, "utf8") : text;
    for (let folder = dirname(path); !live.has(folder); folder = dirname(folder)) {
      const thing: Thing = { kind: "folder", bytes: none, synced: none };
      live.set(folder, thing);
      kept.set(folder, thing);
    }
    const thing: Thing = { kind: "file", bytes, synced: bytes };
    live.set(path, thing);
    kept.set(path, thing);
  };
  return {
    see: (path) => {
      call();
      const thing = live.get(path);
      if (!thing) return null;
      return {
        kind: thing.kind,
        size: thing.bytes.length,
        mode: 0o644,
        uid: 0,
        gid: 0,
        changed: 0,
      } satisfies Seen;
    },
    tryWriting: (path) => {
      call();
      at(path, "access");
    },
    read: (path) => {
      call();
      const thing = at(path);
      if (thing.kind !== "file") throw fault("EISDIR", "read");
      return thing.bytes;
    },
    list: (path) => {
      call();
      at(path, "scandir");
      return namesIn(live, path).map((one) => basename(one));
    },
    open: (path, how) => {
      const isMade = how === "new" || how === "own" || (how === "add" && !live.has(path));
      call(undefined, isMade ? "room" : how === "folder" ? "neither" : "rights");
      if (how === "new" || how === "own") make(path, { kind: "file", bytes: none, synced: none }, "open");
      if (how === "add" && !live.has(path)) make(path, { kind: "file", bytes: none, synced: none }, "open");
      opened.set(next, { thing: at(path), path });
      return next++;
    },
    write: (open, bytes) => {
      call(() => add(open, bytes.subarray(0, bytes.length >> 1)), "room");
      const some = bytes.subarray(0, most);
      add(open, some);
      return some.length;
    },
    liken: () => call(),
    sync: (open) => {
      call(undefined, "neither");
      const { thing, path } = handle(open);
      if (thing.kind === "file") thing.synced = thing.bytes;
      else keepNamesIn(path);
    },
    close: (open) => {
      call();
      handle(open);
      opened.delete(open);
    },
    rename: (from, to) => {
      call();
      const thing = at(from, "rename");
      at(dirname(to), "rename");
      if (live.get(to)?.kind === "folder") throw fault("EISDIR", "rename");
      const below = [...live.keys()].filter((path) => path.startsWith(`${from}/`));
      change(dirname(to), (names) => {
        if (names.get(from) !== thing) return;
        for (const path of [from, ...below]) {
          const one = names.get(path);
          if (one) names.set(`${to}${path.slice(from.length)}`, one);
          names.delete(path);
        }
      });
    },
    link: (from, to) => {
      call();
      make(to, at(from, "link"), "link");
    },
    remove: (path) => {
      call();
      if (live.get(path)?.kind === "folder") throw fault("EISDIR", "rm");
      if (live.has(path)) change(dirname(path), (names) => void names.delete(path));
    },
    makeFolder: (path) => {
      call(undefined, "room");
      make(path, { kind: "folder", bytes: none, synced: none }, "mkdir");
    },
    removeFolder: (path) => {
      call();
      if (namesIn(live, path).length > 0) throw fault("ENOTEMPTY", "rmdir");
      change(dirname(path), (names) => void names.delete(path));
    },
    calls: () => calls,
    trouble: (one) => {
      [calls, trouble] = [0, one];
    },
    most: (bytes) => {
      most = bytes;
    },
    before: (at, act) => {
      acting = { at, act };
    },
    isLost: () => lost,
    after: ({ names, bytes }) => {
      const copies = new Map<Thing, Thing>();
      const found = new Map<string, Thing>();
      // Names whose folder is not there are not there either: those above come first.
      const left = new Map(kept);
      for (const [n, { apply }] of pending.entries())
        if (names === "all" || (names !== "synced" && names(n))) apply(left);
      const all = [...left].toSorted(([a], [b]) => a.length - b.length);
      for (const [path, thing] of all) {
        if (path !== "/" && !found.has(dirname(path))) continue;
        const share = bytes === "all" ? 1 : bytes === "synced" ? 0 : bytes(found.size);
        const more = Math.floor(share * (thing.bytes.length - thing.synced.length));
        const now = thing.bytes.subarray(0, thing.synced.length + more);
        const copy = copies.get(thing) ?? { kind: thing.kind, bytes: now, synced: now };
        copies.set(thing, copy);
        found.set(path, copy);
      }
      return over(found);
    },
    save: saved,
    linkTo: (path) => {
      const thing: Thing = { kind: "link", bytes: none, synced: none };
      for (const names of [live, kept]) names.set(path, thing);
    },
    texts: (folder) => {
      const files = [...live].filter(([path, { kind }]) => kind === "file" && path.startsWith(`${folder}/`));
      const own = files.map(([path, { bytes }]) => [path.slice(folder.length + 1), bytes] as const);
      const shown = own.filter(([path]) => !path.split("/").some((part) => part.startsWith(".")));
      return Object.fromEntries(
        shown
          .map(([path, bytes]) => [path, Buffer.from(bytes).toString("utf8")])
          .toSorted(([a = ""], [b = ""]) => (a < b ? -1 : 1)),
      );
    },
    paths: () => [...live.keys()].toSorted(),
  };
}
