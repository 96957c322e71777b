import { homedir } from "node:os";
import { basename, dirname, join, resolve } from "node:path";
import { hashOf } from "../base/text/hash.ts";
import { inEnglish } from "../base/text/said/english.ts";
import { say } from "../base/text/said/said.ts";
import type { Said } from "../base/text/said/said.ts";
import { isWhole } from "../derive/run.ts";
import type { Outcome } from "../derive/run.ts";
import { setAside } from "./desk/aside.ts";
import { cleared, makeFolders, nodeDisk } from "./desk/disk.ts";
import type { Disk, Seen } from "./desk/disk.ts";
import { replaceSoon } from "./desk/files/beside.ts";
import { hashOfBytes } from "./desk/files/standing.ts";
import { isOfDisk } from "./desk/refusal.ts";

/** The outcomes of earlier runs, kept in the user's cache folder; it may be deleted at any time. */
export interface MemoStore {
  readonly load: () => Map<string, Outcome>;
  /** Keeps what the given runs gave; a cache that cannot be written is no fault of the user's and is passed over. */
  readonly save: (outcomes: ReadonlyMap<string, Outcome>) => void;
}

/** The store of one corpus, named by its folder. */
export function memoStoreFor(corpus: string): MemoStore {
  return memoStoreIn(cacheFileFor(corpus, ".json"));
}

/**
 * The same for a question about losses. What only that asks for is kept on a shelf of its own: thousands of outcomes that
 * no other question should wait for. They are numbers alone; what is whole goes where every other question finds it.
 */
export function memoStoreWithLosses(corpus: string): MemoStore {
  const [store, shelf] = [memoStoreFor(corpus), memoStoreIn(cacheFileFor(corpus, "-losses.json"))];
  let kept = store.load();
  return {
    load: () => together(shelf.load(), kept),
    save: (outcomes) => {
      const isOwn = ([key, one]: readonly [string, Outcome]): boolean =>
        kept.has(key) || (one.status === "computed" && isWhole(one));
      const own = together(kept, new Map([...outcomes].filter(isOwn)));
      if ([...own].some(([key, one]) => kept.get(key) !== one)) store.save(own);
      kept = own;
      shelf.save(new Map([...outcomes].filter(([key]) => !own.has(key))));
    },
  };
}

/** Outcomes with others that came after them; one that has numbers alone takes the place of none that is whole. */
export function together(
  kept: ReadonlyMap<string, Outcome>,
  more: ReadonlyMap<string, Outcome>,
): Map<string, Outcome> {
  const all = new Map(kept);
  for (const [key, one] of more) {
    const before = all.get(key);
    if (!before || isWhole(one) || !isWhole(before)) all.set(key, one);
  }
  return all;
}

/** A file of the user's cache folder that is about one corpus. */
export function cacheFileFor(corpus: string, ending: string): string {
  return join(cacheFolder(), `${hashOf(resolve(corpus)).slice(0, 32)}${ending}`);
}

/** What a store is kept with, and who is told that what was kept could not be read. */
export interface Keeping {
  readonly disk: Disk;
  readonly tell: (told: Said) => void;
}

/** How a store of outcomes is kept. */
interface MemoKeeping extends Keeping {
  /** So many UTF-16 units of JSON are kept: more than a text may have cannot be written at all. */
  readonly most: number;
}

const usual: MemoKeeping = {
  disk: nodeDisk,
  tell: (told) => void process.stderr.write(`${inEnglish(told)}\n`),
  most: 384 * 1024 * 1024,
};

/**
 * A store in a file. What cannot be read is set aside and told: the numbers are computed again. Of an earlier version of
 * the program nothing is taken.
 */
export function memoStoreIn(file: string, given: Partial<MemoKeeping> = {}): MemoStore {
  const { disk, tell, most } = { ...usual, ...given };
  return {
    load: () => {
      try {
        const found = disk.see(file);
        if (!found) return new Map();
        if (found.kind === "file") closedToOthers(disk, file, found);
        const outcomes = found.kind === "file" ? outcomesKept(disk.read(file)) : null;
        if (outcomes) return outcomes;
        // Of spoilt files the last alone is left: they can be large, and nothing in them is the scholar's own.
        if (found.kind === "file") cleared(disk, `${file}.set-aside`);
        const aside = setAside(disk, file);
        tell(
          say`Unexpected content of \`${file}\`, expected outcomes of earlier runs: set aside as \`${basename(aside)}\``,
        );
        return new Map();
      } catch {
        return new Map();
      }
    },
    save: (outcomes) => {
      try {
        makeFolders(disk, dirname(file));
        // For its owner alone: numbers and figures may be of what the corpus withholds.
        replaceSoon(disk, file, sealed(tableOf(lasting(outcomes), most)), "own");
      } catch (error) {
        if (!isOfDisk(error)) throw error;
      }
    },
  };
}

const head = (sha256: string): string => `{"version":2,"sha256":"${sha256}","compute":`;

/** What a cache file holds: JSON that says its own SHA-256, so that a spoilt figure is no figure. */
function sealed(compute: string): Uint8Array {
  const bytes = Buffer.from(compute, "utf8");
  return Buffer.concat([Buffer.from(head(hashOfBytes(bytes))), bytes, Buffer.from("}")]);
}

/** The outcomes in a cache file; null where it is spoilt, none where an earlier version of the program wrote it. */
function outcomesKept(file: Uint8Array): Map<string, Outcome> | null {
  const long = head("0".repeat(64)).length;
  const compute = file.subarray(long, -1);
  const isWhole = Buffer.from(file.subarray(0, long)).toString("utf8") === head(hashOfBytes(compute));
  const text = Buffer.from(isWhole ? compute : file).toString("utf8");
  try {
    const json: unknown = JSON.parse(text);
    if (isWhole) return outcomesIn({ version: 1, compute: json });
    return (json as { readonly version?: unknown } | null)?.version === 1 ? new Map() : null;
  } catch {
    return null;
  }
}

/** Takes a file from all but its owner: an earlier version of the program let others read it. */
function closedToOthers(disk: Disk, file: string, found: Seen): void {
  if ((found.mode & 0o077) === 0) return;
  try {
    const open = disk.open(file, "add");
    try {
      disk.liken(open, { ...found, mode: found.mode & 0o700 });
    } finally {
      disk.close(open);
    }
  } catch (error) {
    if (!isOfDisk(error)) throw error;
  }
}

/** The outcomes that another try would give again. */
function lasting(outcomes: ReadonlyMap<string, Outcome>): readonly (readonly [string, Outcome])[] {
  return [...outcomes].filter(([, outcome]) => outcome.status !== "failed" || outcome.passing !== true);
}

/** A table of outcomes in JSON; where they are too many, those that have been kept longest are left out. */
function tableOf(outcomes: readonly (readonly [string, Outcome])[], most: number): string {
  const rows: string[] = [];
  let size = 2;
  for (const [key, outcome] of outcomes.toReversed()) {
    const row = `${JSON.stringify(key)}:${JSON.stringify(outcome)}`;
    // One that is too large by itself takes no other's room.
    if (row.length > most) continue;
    size += row.length + 1;
    if (size > most) break;
    rows.push(row);
  }
  return `{${rows.reverse().join(",")}}`;
}

/** The outcomes in a table of them, as far as they can be some. */
export function outcomesIn(kept: unknown): Map<string, Outcome> {
  const table = kept as { readonly version?: unknown; readonly compute?: unknown } | null;
  if (table?.version !== 1 || typeof table.compute !== "object" || table.compute === null) return new Map();
  const states = ["computed", "refused", "failed"];
  return new Map(
    Object.entries(table.compute as Readonly<Record<string, Outcome>>).filter(
      ([key, outcome]) => /^[0-9a-f]{64}$/.test(key) && states.includes(outcome?.status),
    ),
  );
}

function cacheFolder(): string {
  const { XDG_CACHE_HOME, LOCALAPPDATA } = process.env;
  const base = XDG_CACHE_HOME || LOCALAPPDATA || join(homedir(), ".cache");
  return join(base, "variorum");
}
