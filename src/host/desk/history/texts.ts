import { dirname, join } from "node:path";
import { deflateSync, inflateSync } from "node:zlib";
import { largestTable } from "../../../read/source-file.ts";
import { setAside } from "../aside.ts";
import { cleared, makeFolders } from "../disk.ts";
import type { Disk } from "../disk.ts";
import { replaceWhole } from "../files/beside.ts";
import { hashOfBytes } from "../files/standing.ts";
import { isOfDisk } from "../refusal.ts";

/** An edit waits until the text is kept: on 2 MB of records the least pains take a third of the time of the usual ones, and 12 % of the room instead of 9 %. */
const quickly = { level: 1 };

/** Texts that this program has put on the disk or read there, by hash: where, and the file as it was then. */
export type Kept = Map<string, { readonly path: string; readonly size: number; readonly changed: number }>;

/**
 * Keeps a text among those of a history, named by its SHA-256; gives how many bytes that took, 0 where it was there.
 * Each is on the disk, name and all, before anything refers to it. One whose file is as `known` has it is not read again.
 */
export function keepText(disk: Disk, texts: string, bytes: Uint8Array, known: Kept): number {
  const hash = hashOfBytes(bytes);
  if (isAsKnown(disk, known.get(hash))) return 0;
  const found = placeKept(disk, texts, hash);
  if (found !== null) {
    remember(disk, known, hash, found.path);
    return 0;
  }
  const small = bytes.length > 1024 ? deflateSync(bytes, quickly) : bytes;
  const isDeflated = small.length < bytes.length;
  const content = isDeflated ? small : bytes;
  const [plain, deflated] = pathsOf(texts, hash);
  const path = isDeflated ? deflated : plain;
  // A text that was damaged, or something else in its place, makes room; whoever mends a disk may want it.
  const [kind, below] = [disk.see(dirname(path))?.kind ?? "folder", [plain, deflated]];
  if (kind !== "folder") setAside(disk, dirname(path));
  else for (const one of below) if (disk.see(one)) setAside(disk, one);
  makeFolders(disk, dirname(path));
  try {
    replaceWhole(disk, path, content);
  } catch (error) {
    // One whose name the disk would not keep is not taken for one that is kept by the next step.
    cleared(disk, path);
    throw error;
  }
  remember(disk, known, hash, path);
  return content.length;
}

function isAsKnown(disk: Disk, known: ReturnType<Kept["get"]>): boolean {
  const now = known && disk.see(known.path);
  return now?.kind === "file" && now.size === known?.size && now.changed === known.changed;
}

function remember(disk: Disk, known: Kept, hash: string, path: string): void {
  const now = disk.see(path);
  if (now) known.set(hash, { path, size: now.size, changed: now.changed });
}

/** A text of a history by its hash; null where it is not there, or no longer what its name says. */
export function textKept(disk: Disk, texts: string, hash: string): Uint8Array | null {
  return placeKept(disk, texts, hash)?.bytes ?? null;
}

function placeKept(
  disk: Disk,
  texts: string,
  hash: string,
): { readonly path: string; readonly bytes: Uint8Array } | null {
  for (const [place, path] of pathsOf(texts, hash).entries()) {
    try {
      if (disk.see(path)?.kind !== "file") continue;
      const content = disk.read(path);
      const bytes = place === 0 ? content : inflateSync(content, { maxOutputLength: 2 * largestTable });
      if (hashOfBytes(bytes) === hash) return { path, bytes };
    } catch (error) {
      // Damaged or locked away, which is as good as gone.
      if (!isOfDisk(error)) throw error;
    }
  }
  return null;
}

/** The texts that are kept, with the bytes each takes and when it was written, in milliseconds since 1970. */
export function textsKept(
  disk: Disk,
  texts: string,
): readonly {
  readonly hash: string;
  readonly path: string;
  readonly size: number;
  readonly changed: number;
}[] {
  if (disk.see(texts)?.kind !== "folder") return [];
  return disk.list(texts).flatMap((start) => {
    const folder = join(texts, start);
    if (!/^[0-9a-f]{2}$/.test(start) || disk.see(folder)?.kind !== "folder") return [];
    return disk.list(folder).flatMap((name) => {
      const hash = /^([0-9a-f]{64})(\.z)?$/.exec(name)?.[1];
      const seen = hash === undefined ? null : disk.see(join(folder, name));
      if (hash === undefined || !seen) return [];
      return [{ hash, path: join(folder, name), size: seen.size, changed: seen.changed }];
    });
  });
}

function pathsOf(texts: string, hash: string): readonly [string, string] {
  const path = join(texts, hash.slice(0, 2), hash);
  return [path, `${path}.z`];
}
