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

/**
 * Keeps a text among those of a history, named by its SHA-256; gives how many bytes that took, 0 where it was there.
 * Each is on the disk, name and all, before anything refers to it.
 */
export function keepText(disk: Disk, texts: string, bytes: Uint8Array): number {
  const hash = hashOfBytes(bytes);
  if (textKept(disk, texts, hash) !== null) return 0;
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
  return content.length;
}

/** A text of a history by its hash; null where it is not there, or no longer what its name says. */
export function textKept(disk: Disk, texts: string, hash: string): Uint8Array | null {
  for (const [place, path] of pathsOf(texts, hash).entries()) {
    try {
      if (disk.see(path)?.kind !== "file") continue;
      const content = disk.read(path);
      const bytes = place === 0 ? content : inflateSync(content, { maxOutputLength: 2 * largestTable });
      if (hashOfBytes(bytes) === hash) return bytes;
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
