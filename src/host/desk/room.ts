import { join } from "node:path";
import { say } from "../../base/text/said/said.ts";
import type { Said } from "../../base/text/said/said.ts";
import { setAside } from "./aside.ts";
import { makeFolders } from "./disk.ts";
import type { Disk } from "./disk.ts";
import { putNew } from "./files/beside.ts";
import { CannotWrite, isOfDisk, kindsSeen, nothingWritten } from "./refusal.ts";

/** Where a corpus's desk keeps things. */
export interface Room {
  readonly desk: string;
  readonly history: string;
  readonly texts: string;
  readonly drafts: string;
}

/** The folders of a corpus's desk, whether or not they are there yet. */
export function roomIn(folder: string): Room {
  const desk = join(folder, ".variorum");
  const history = join(desk, "history");
  return { desk, history, texts: join(history, "texts"), drafts: join(desk, "drafts") };
}

/** Why a corpus cannot be changed, found without writing anything; null where it can. */
export function readOnlyReason(disk: Disk, folder: string): Said | null {
  try {
    return reasonFound(disk, folder);
  } catch (error) {
    if (!isOfDisk(error)) throw error;
    return say`The folder of the corpus cannot be looked into (${(error as NodeJS.ErrnoException).code ?? ""})`;
  }
}

function reasonFound(disk: Disk, folder: string): Said | null {
  if (!mayWrite(disk, folder)) return say`The folder of the corpus may only be read`;
  for (const path of pathsIn(folder)) {
    const kind = disk.see(path)?.kind ?? null;
    const name = nameOf(folder, path);
    if (kind === "link" && isDesk(folder, path))
      return say`Unexpected ${kindsSeen[kind]} at \`${name}\`, expected a folder`;
    if (kind === "folder" && !mayWrite(disk, path))
      return say`The folder \`${name}\`, where edits are kept, may only be read`;
  }
  const files = disk.list(folder).filter((name) => /^[^.].*\.(ya?ml|bib|ris|json|csv)$/.test(name));
  const isClosed = files.length > 0 && !files.some((name) => mayWrite(disk, join(folder, name)));
  return isClosed ? say`The files of the corpus may only be read` : null;
}

const pathsIn = (folder: string): readonly string[] => Object.values(roomIn(folder)) as readonly string[];

const nameOf = (folder: string, path: string): string => path.slice(folder.length).replace(/^[/\\]+/, "");

const isDesk = (folder: string, path: string): boolean => path === roomIn(folder).desk;

/**
 * Sets aside what stands where the desk has its folders and is none, and says so. A link in the place of the whole desk
 * is left alone: somebody laid it, and nothing behind it is touched.
 */
export function roomCleared(disk: Disk, folder: string): readonly Said[] {
  return pathsIn(folder).flatMap((path) => {
    const kind = disk.see(path)?.kind ?? "folder";
    if (kind === "folder" || (kind === "link" && isDesk(folder, path))) return [];
    const aside = nameOf(folder, setAside(disk, path));
    const name = nameOf(folder, path);
    return [say`Unexpected ${kindsSeen[kind]} at \`${name}\`, expected a folder: set aside as \`${aside}\``];
  });
}

function mayWrite(disk: Disk, path: string): boolean {
  try {
    disk.tryWriting(path);
    return true;
  } catch (error) {
    if (!isOfDisk(error)) throw error;
    return false;
  }
}

const ignoring =
  "# What is in this folder belongs to one person at one machine: a history of edits, drafts, permissions.\n" +
  "# It is no part of the corpus, so it is kept out of what is shared with others.\n*\n";

/** Makes a folder of the desk, with a word to keep the desk out of what is shared; nothing behind a link is touched. */
export function makeRoom(disk: Disk, folder: string, path: string): void {
  for (const one of pathsIn(folder)) {
    const kind = disk.see(one)?.kind ?? "folder";
    if (kind !== "folder")
      throw new CannotWrite(
        nothingWritten(say`Unexpected ${kindsSeen[kind]} in \`${".variorum"}\`, expected a folder`),
      );
  }
  makeFolders(disk, path);
  const note = join(roomIn(folder).desk, ".gitignore");
  if (!disk.see(note)) putNew(disk, note, Buffer.from(ignoring, "utf8"));
}
