import { join } from "node:path";
import { say } from "../../../base/text/said/said.ts";
import type { Said } from "../../../base/text/said/said.ts";
import { setAside } from "../aside.ts";
import { keepNames, writeAll } from "../disk.ts";
import type { Disk } from "../disk.ts";
import { makeRoom, roomIn } from "../room.ts";
import { bound, stepsIn } from "./bound.ts";
import type { Limits, Part } from "./bound.ts";
import { linesIn, writtenLine } from "./lines.ts";
import type { Line } from "./lines.ts";
import { knownAfter, replayed } from "./replay.ts";
import type { History } from "./replay.ts";
import { keepText, textKept } from "./texts.ts";
import type { Kept } from "./texts.ts";

/** The history of a corpus's files as it is kept on its desk. */
export interface Journal {
  /** As the disk has it now, also where another program adds to it. */
  readonly read: () => History & { readonly broken: number };
  /** Adds lines, kept by the disk when this returns. */
  readonly add: (lines: readonly Line[]) => void;
  readonly keep: (bytes: Uint8Array) => void;
  readonly text: (hash: string) => Uint8Array | null;
  /** Lets the oldest steps go where there are too many; `now` in milliseconds since 1970. */
  readonly bound: (now: number) => void;
}

/** The most of a part that is read, in bytes: a history that came with a corpus may be anything. */
const largestPart = 32 * 1024 * 1024;

/**
 * The journal of a corpus. Lines are only ever added, each in one go at the end of a part's file, so two programs can
 * write one journal. Parts are named by the number of their first step; the oldest goes as a whole, and one of which
 * nothing can be read is set aside and told.
 */
export function journalOf(disk: Disk, folder: string, limits: Limits, tell: (told: Said) => void): Journal {
  const room = roomIn(folder);
  const partsNow = partsOf(disk, room.history);
  const kept: Kept = new Map();
  let freshBytes = 0;
  let keptPart = "";
  let isNewPart = false;
  const read = (): History & { readonly broken: number } => {
    const parts = partsNow();
    const lines = parts.flatMap((one) => one.lines);
    return { ...replayed(lines), broken: parts.reduce((sum, one) => sum + one.broken, 0) };
  };
  /** Whoever began a part may have been broken off before its name, or that of a folder, was kept. */
  const addTo = (name: string, lines: readonly Line[]): void => {
    addLines(disk, join(room.history, name), lines);
    if (keptPart === name) return;
    for (const place of [folder, room.desk, room.history]) keepNames(disk, place);
    keptPart = name;
  };
  return {
    read,
    add: (lines) => {
      makeRoom(disk, folder, room.history);
      for (const { name } of partsNow().filter(isUnreadable)) {
        const aside = setAside(disk, join(room.history, name)).slice(room.history.length + 1);
        tell(
          say`Unexpected content of \`${name}\` in the history, expected its steps: set aside as \`${aside}\``,
        );
      }
      const last = partsNow().at(-1);
      const isFull = !last || stepsIn(last.lines) >= limits.part || freshBytes > limits.bytes / 10;
      if (!isFull) return addTo(last.name, lines);
      const history = read();
      const from = Math.max(history.next, last ? Number.parseInt(last.name, 10) + 1 : 1);
      const head = { from, known: [...knownAfter(history, Infinity)] };
      const name = `${String(from).padStart(9, "0")}.jsonl`;
      addTo(name, [head, ...lines]);
      freshBytes = 0;
      isNewPart = true;
    },
    keep: (bytes) => {
      makeRoom(disk, folder, room.texts);
      freshBytes += keepText(disk, room.texts, bytes, kept);
    },
    text: (hash) => textKept(disk, room.texts, hash),
    bound: (now) => {
      if (isNewPart) bound(disk, room, partsNow(), limits, now);
      isNewPart = false;
    },
  };
}

/** A part as it was read; nothing is read of one that is no file, or far too large. */
interface ReadPart extends Part {
  readonly broken: number;
}

const isUnreadable = ({ lines, broken }: ReadPart): boolean => lines.length === 0 && broken > 0;

/** Reads the parts of a history, those that have grown since the last time anew. */
function partsOf(disk: Disk, history: string): () => readonly ReadPart[] {
  const known = new Map<
    string,
    { readonly size: number; readonly changed: number; readonly part: ReadPart }
  >();
  const partAt = (name: string): ReadPart => {
    const path = join(history, name);
    const seen = disk.see(path);
    if (seen?.kind !== "file" || seen.size > largestPart) return { name, lines: [], broken: 1 };
    const before = known.get(name);
    if (before?.size === seen.size && before.changed === seen.changed) return before.part;
    const read = linesIn(Buffer.from(disk.read(path)).toString("utf8"));
    const part = { name, ...read };
    known.set(name, { size: seen.size, changed: seen.changed, part });
    return part;
  };
  return () => {
    if (disk.see(history)?.kind !== "folder") return [];
    const names = disk.list(history).filter((name) => /^\d{9}\.jsonl$/.test(name));
    return names.toSorted().map(partAt);
  };
}

function addLines(disk: Disk, path: string, lines: readonly Line[]): void {
  const open = disk.open(path, "add");
  try {
    writeAll(disk, open, Buffer.from(lines.map(writtenLine).join(""), "utf8"));
    disk.sync(open);
  } finally {
    disk.close(open);
  }
}
