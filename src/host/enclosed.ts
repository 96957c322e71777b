import { closeSync, constants, fstatSync, openSync, readdirSync } from "node:fs";
import { dirname, join } from "node:path";
import { byText } from "../base/order.ts";
import { row, say } from "../base/text/said/said.ts";
import { cleared, makeFolders, nodeDisk, writeAll } from "./desk/disk.ts";
import type { Disk } from "./desk/disk.ts";
import { besideOf, keptOrTaken, named } from "./desk/files/beside.ts";
import { asOnDisk, checkNew } from "./desk/files/new-name.ts";
import { pathIn } from "./desk/files/place.ts";
import { CannotWrite, isOfDisk, nothingWritten, refused } from "./desk/refusal.ts";
import { readOnlyReason } from "./desk/room.ts";

/** A paper or picture that lies in a corpus's folder, by its path there, with its size. */
export interface Enclosed {
  readonly file: string;
  readonly bytes: number;
}

/** The media that are known, by the ending of a file's name. */
const media: readonly (readonly [string, string])[] = [
  ["pdf", "application/pdf"],
  ["png", "image/png"],
  ["jpg", "image/jpeg"],
  ["jpeg", "image/jpeg"],
  ["webp", "image/webp"],
  ["gif", "image/gif"],
  ["svg", "image/svg+xml"],
];

/** The most bytes of a paper or picture that is brought in: 200 MiB. */
export const largestEnclosed = 200 * 1024 * 1024;

/** The media type of a file by its name; null where it is none of the known ones. */
export function mediaTypeOf(file: string): string | null {
  const ending = /\.([a-z]+)$/i.exec(file)?.[1]?.toLowerCase();
  return media.find(([one]) => one === ending)?.[1] ?? null;
}

/** The papers and pictures in a corpus's folder, ordered by path; links are not followed, names that begin with a dot and other corpora are passed over. */
export function enclosedIn(folder: string): readonly Enclosed[] {
  const found: Enclosed[] = [];
  gather(folder, "", found);
  return found.sort((a, b) => byText(a.file, b.file));
}

function gather(folder: string, below: string, found: Enclosed[]): void {
  let entries;
  try {
    entries = readdirSync(join(folder, below), { withFileTypes: true });
  } catch {
    // A folder that may not be read holds nothing that could be shown.
    return;
  }
  if (below !== "" && entries.some((entry) => entry.name === "corpus.yaml")) return;
  for (const entry of entries) {
    const file = below === "" ? entry.name : `${below}/${entry.name}`;
    if (entry.name.startsWith(".") || entry.name === "node_modules") continue;
    if (entry.isDirectory()) gather(folder, file, found);
    else if (entry.isFile() && mediaTypeOf(file) !== null) {
      const seen = nodeDisk.see(join(folder, file));
      if (seen?.kind === "file") found.push({ file, bytes: seen.size });
    }
  }
}

/** A paper or picture that is open for reading; whoever asked for it closes it. */
export interface OpenEnclosed {
  readonly open: number;
  readonly type: string;
  readonly bytes: number;
}

/** Opens a paper or picture of a corpus; null where the path is none of one: nothing leads out of the corpus. */
export function openEnclosed(folder: string, file: string): OpenEnclosed | null {
  const type = mediaTypeOf(file);
  if (type === null) return null;
  try {
    const path = pathIn(nodeDisk, folder, asOnDisk(nodeDisk, folder, file));
    if (nodeDisk.see(path)?.kind !== "file") return null;
    const open = openSync(path, constants.O_RDONLY | (constants.O_NOFOLLOW ?? 0));
    const is = fstatSync(open);
    if (is.isFile()) return { open, type, bytes: is.size };
    closeSync(open);
    return null;
  } catch (error) {
    if (isOfDisk(error)) return null;
    throw error;
  }
}

/** Why a paper or picture is not brought in where another lies already. */
export class AlreadyThere extends CannotWrite {}

/** Why a paper or picture is not brought in that is larger than `largestEnclosed`. */
export class TooLarge extends CannotWrite {
  /** It says the limit. */
  constructor() {
    super(nothingWritten(say`Unexpected size of more than ${"200 MiB"}, expected a smaller file`));
  }
}

let brought = 0;

/**
 * Brings a new paper or picture into a corpus, below `papers/` or `images/`: written whole beside its place, kept by
 * the disk, and only then named, so that nothing is ever written over. What cannot be done is thrown as `CannotWrite`.
 */
export async function encloseNew(
  folder: string,
  file: string,
  content: AsyncIterable<Uint8Array>,
  disk: Disk = nodeDisk,
): Promise<void> {
  const reason = readOnlyReason(disk, folder);
  if (reason !== null) throw new CannotWrite(nothingWritten(reason));
  let beside: string | null = null;
  try {
    const path = placeOfNew(disk, folder, file);
    brought += 1;
    beside = besideOf(path, `${brought}.part`);
    makeFolders(disk, dirname(path));
    cleared(disk, beside);
    await written(disk, beside, content);
    // A second look: another window may have brought one in while this one was being sent.
    placeOfNew(disk, folder, file);
    if (!named(disk, beside, path)) throw alreadyThere(file);
    keptOrTaken(disk, path);
  } catch (error) {
    throw refused(error, file);
  } finally {
    if (beside !== null) cleared(disk, beside);
  }
}

function placeOfNew(disk: Disk, folder: string, file: string): string {
  if (!/^(papers|images)\/./.test(file))
    throw new CannotWrite(
      nothingWritten(say`Unexpected place \`${file}\`, expected one in \`${"papers/"}\` or \`${"images/"}\``),
    );
  if (mediaTypeOf(file) === null) {
    const endings = media.map(([ending]) => `.${ending}`);
    throw new CannotWrite(
      nothingWritten(say`Unexpected ending of \`${file}\`, expected ${row(endings, "or")}`),
    );
  }
  const path = pathIn(disk, folder, file);
  if (disk.see(path)) throw alreadyThere(file);
  checkNew(disk, folder, file, []);
  return path;
}

const alreadyThere = (file: string): AlreadyThere =>
  new AlreadyThere(nothingWritten(say`Unexpected file at \`${file}\`, expected none`));

async function written(disk: Disk, path: string, content: AsyncIterable<Uint8Array>): Promise<void> {
  const open = disk.open(path, "new");
  try {
    let bytes = 0;
    for await (const part of content) {
      bytes += part.length;
      if (bytes > largestEnclosed) throw new TooLarge();
      writeAll(disk, open, part);
    }
    disk.sync(open);
  } finally {
    disk.close(open);
  }
}
