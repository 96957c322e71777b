import { dirname } from "node:path";
import { keepNames } from "../disk.ts";
import type { Disk } from "../disk.ts";
import { placeIn } from "../files/place.ts";
import { clearBeside, putInPlace } from "../files/put.ts";
import type { Move } from "../files/put.ts";
import { bytesAt, hashOfBytes } from "../files/standing.ts";
import { CannotWrite } from "../refusal.ts";
import type { Journal } from "./journal.ts";
import type { Begun } from "./lines.ts";

/**
 * Brings every step that was broken off to an end: where one of its files is already new, all others become so; where
 * none is, it is taken back. So all files of a step are old, or all are new. A file that somebody changed since is left
 * as it is. Where another program is just making the step, both do the same, and it comes to the same.
 */
export function recover(disk: Disk, folder: string, journal: Journal): void {
  for (const step of journal.read().open) {
    const found = step.files.map((one) => ({ ...one, ...placed(disk, folder, one.file) }));
    const isBegun = found.some(({ path, now, was, is }) => path !== null && was !== is && now === is);
    if (isBegun && step.kind !== "outside") {
      putInPlace(
        disk,
        folder,
        found.flatMap((one) => (one.now === one.was ? moveOf(journal, one) : [])),
      );
    }
    const paths = found.flatMap(({ path }) => (path !== null && disk.see(dirname(path)) ? [path] : []));
    for (const path of paths) clearBeside(disk, path);
    for (const place of new Set(paths.map((path) => dirname(path)))) keepNames(disk, place);
    journal.add([{ end: step.begin, how: isBegun ? "done" : "back" }]);
  }
}

/** Where a file stands and the SHA-256 of what is there; no path where it is none that the desk writes. */
function placed(
  disk: Disk,
  folder: string,
  file: string,
): { readonly path: string | null; readonly now: string | null } {
  try {
    const path = placeIn(disk, folder, file);
    return { path, now: hashOfBytes(bytesAt(disk, path, file)) };
  } catch (error) {
    if (error instanceof CannotWrite) return { path: null, now: null };
    throw error;
  }
}

function moveOf(
  journal: Journal,
  { file, was, is, path }: Begun["files"][number] & { readonly path: string | null },
): readonly Move[] {
  const [before, after] = [was, is].map((hash) => (hash === null ? null : journal.text(hash)));
  // Without its text the step cannot be finished; what then stands there is noted as made outside.
  const isKept = (was === null || before) && (is === null || after);
  return path !== null && isKept ? [{ file, was: before ?? null, is: after ?? null }] : [];
}
