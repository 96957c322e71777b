import { existsSync, lstatSync, mkdirSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import type { Made } from "../../../write/telling/made.ts";

/** Where a file that was made goes, and what it holds. */
export interface Placed {
  readonly path: string;
  readonly content: Made["content"];
}

/** The files below a folder; a path that would lead out of it is a fault of whoever made the file. */
export function placedBelow(folder: string, files: readonly Made[]): readonly Placed[] {
  return files.map(({ path, content }) => {
    const steps = path.split("/");
    if (steps.some((one) => one === "" || one === "." || one === "..") || path.includes("\\"))
      throw new RangeError(`Unexpected path ${path}, expected one below its folder`);
    return { path: join(folder, ...steps), content };
  });
}

/** The first of the files that is there already, if only as a link that leads nowhere; null for none. */
export function takenAmong(files: readonly Placed[]): string | null {
  return files.find(({ path }) => isThere(path))?.path ?? null;
}

/** Writes all files or none: each is written whole beside its place before any is put there. Tells the path that could not be written; null for none. */
export function placeFiles(files: readonly Placed[]): string | null {
  const beside = files.map((one) => ({ ...one, part: `${one.path}.${process.pid}.part` }));
  let at = "";
  try {
    for (const { path, content, part } of beside) {
      at = path;
      mkdirSync(dirname(path), { recursive: true });
      writeFileSync(part, content);
    }
    for (const { path, part } of beside) {
      at = path;
      renameSync(part, path);
    }
    return null;
  } catch {
    for (const { part } of beside) if (existsSync(part)) rmSync(part);
    return at;
  }
}

function isThere(path: string): boolean {
  try {
    return lstatSync(path, { throwIfNoEntry: false }) !== undefined;
  } catch {
    // What cannot be looked at is told when it is written.
    return false;
  }
}
