import { basename, dirname } from "node:path";
import type { Disk, Open, Seen } from "../../src/host/desk/disk.ts";

/** The current that went: no call after it does anything. */
export class PowerLoss extends Error {}

interface Thing {
  readonly kind: "file" | "folder" | "link";
  bytes: Uint8Array;
  /** What the platter has of it. */
  synced: Uint8Array;
}

/** What happens at one call, counted from 1: the current goes, a write half done, or the call fails with a code, once. */
export interface Trouble {
  readonly at: number;
  readonly how: "half" | "EIO" | "ENOSPC";
}

/** What a loss of power leaves: names and bytes that the disk was not told to keep are there, or are not. */
export interface Left {
  readonly names: "all" | "synced";
  readonly bytes: "all" | "synced";
}

/** A disk in memory that counts its calls, and can be stopped at any of them. */
export interface MemoryDisk extends Disk {
  readonly calls: () => number;
  readonly trouble: (trouble: Trouble | null) => void;
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
  const opened = new Map<Open, { readonly thing: Thing; readonly path: string }>();
  let [calls, lost, trouble, next] = [0, false, null as Trouble | null, 10];
  let acting: { readonly at: number; readonly act: () => void } | null = null;
  let isActing = false;
  const call = (half: () => void = () => undefined): void => {
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
    if (calls !== trouble?.at) return;
    if (trouble.how === "EIO" || trouble.how === "ENOSPC") throw fault(trouble.how, "write");
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
    live.set(path, thing);
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
      call();
      if (how === "new") make(path, { kind: "file", bytes: none, synced: none }, "open");
      if (how === "add" && !live.has(path)) make(path, { kind: "file", bytes: none, synced: none }, "open");
      opened.set(next, { thing: at(path), path });
      return next++;
    },
    write: (open, bytes) => {
      call(() => add(open, bytes.subarray(0, bytes.length >> 1)));
      add(open, bytes);
      return bytes.length;
    },
    liken: () => call(),
    sync: (open) => {
      call();
      const { thing, path } = handle(open);
      if (thing.kind === "file") thing.synced = thing.bytes;
      else {
        for (const one of namesIn(kept, path)) if (!live.has(one)) kept.delete(one);
        for (const one of namesIn(live, path)) kept.set(one, at(one));
      }
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
      live.set(to, thing);
      live.delete(from);
    },
    link: (from, to) => {
      call();
      make(to, at(from, "link"), "link");
    },
    remove: (path) => {
      call();
      if (live.get(path)?.kind === "folder") throw fault("EISDIR", "rm");
      live.delete(path);
    },
    makeFolder: (path) => {
      call();
      make(path, { kind: "folder", bytes: none, synced: none }, "mkdir");
    },
    removeFolder: (path) => {
      call();
      if (namesIn(live, path).length > 0) throw fault("ENOTEMPTY", "rmdir");
      live.delete(path);
    },
    calls: () => calls,
    trouble: (one) => {
      [calls, trouble] = [0, one];
    },
    before: (at, act) => {
      acting = { at, act };
    },
    isLost: () => lost,
    after: ({ names, bytes }) => {
      const copies = new Map<Thing, Thing>();
      const found = new Map<string, Thing>();
      // Names whose folder is not there are not there either: those above come first.
      const all = [...(names === "all" ? live : kept)].toSorted(([a], [b]) => a.length - b.length);
      for (const [path, thing] of all) {
        if (path !== "/" && !found.has(dirname(path))) continue;
        const now = bytes === "all" ? thing.bytes : thing.synced;
        const copy = copies.get(thing) ?? { kind: thing.kind, bytes: now, synced: now };
        copies.set(thing, copy);
        found.set(path, copy);
      }
      return over(found);
    },
    save: saved,
    linkTo: (path) => void live.set(path, { kind: "link", bytes: none, synced: none }),
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
