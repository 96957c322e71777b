import { isUtf8 } from "node:buffer";
import { lstatSync, readFileSync, readdirSync, realpathSync } from "node:fs";
import type { Dirent, Stats } from "node:fs";
import { join } from "node:path";
import { inEnglish } from "../base/text/said/english.ts";
import { say } from "../base/text/said/said.ts";
import type { Said, Text } from "../base/text/said/said.ts";
import {
  fileOfBytes,
  inPathOrder,
  largestPlugin,
  largestProse,
  largestStyle,
  largestTable,
  largestYaml,
  pluginPath,
  prosePath,
} from "../read/source-file.ts";
import type { SourceFile } from "../read/source-file.ts";
import { textSeen } from "./desk/files/known.ts";
import { filesOfCompanions } from "./desk/files/companions.ts";
import type { Earlier } from "./desk/files/companions.ts";

/** Paths of the files that can say something about a corpus, with the most bytes that are read of one. */
const readable: readonly (readonly [RegExp, number])[] = [
  [/\.ya?ml$/, largestYaml],
  [/\.(bib|ris|json|csv)$/, largestTable],
  [/\.csl$/i, largestStyle],
  [pluginPath, largestPlugin],
  [prosePath, largestProse],
];

/** What cannot be divided, by its limit. */
const smaller: ReadonlyMap<number, Said> = new Map([
  [largestPlugin, say`a smaller plug-in`],
  [largestProse, say`a shorter text`],
  [largestStyle, say`a smaller style`],
]);

/** The most bytes that are read of a file with this path; null where it can say nothing about a corpus. */
export function mostBytesOf(path: string): number | null {
  // Nearly all are.
  if (path.endsWith(".yaml")) return largestYaml;
  return readable.find(([pattern]) => pattern.test(path))?.[1] ?? null;
}

/** Why a folder is no corpus; it names the folder as the user did. */
export class NoCorpus extends Error {
  readonly said: Text;

  /** The message is what is said, in English. */
  constructor(said: Text) {
    super(inEnglish(said));
    this.said = said;
  }
}

/**
 * The files of a corpus, ordered by path, and those that are taken from of the corpora it uses. The folder named may be a
 * link; those in it are not followed, and a folder with a `corpus.yaml` of its own is another corpus.
 */
export function readCorpusFolder(folder: string, earlier?: Earlier): readonly SourceFile[] {
  const about = lookAt(followed(folder));
  if (!about) throw new NoCorpus(say`Unknown folder \`${folder}\`, expected the folder of a corpus`);
  if (!about.isDirectory())
    throw new NoCorpus(say`Unexpected file \`${folder}\`, expected the folder of a corpus`);
  if (!lookAt(join(folder, "corpus.yaml"))?.isFile()) {
    throw new NoCorpus(
      say`Missing \`${"corpus.yaml"}\` in \`${folder}\`, expected one: \`${"variorum new FOLDER"}\` starts a corpus`,
    );
  }
  const files = filesBelow(folder, () => true, earlier);
  const main = files.find(({ path }) => path === "corpus.yaml");
  return [...files, ...filesTaken(folder, main, earlier)].sort((a, b) => inPathOrder(a.path, b.path));
}

/** The files that are taken from, as they now are, of the corpora that a `corpus.yaml` of the folder uses. */
export function filesTaken(
  folder: string,
  main: SourceFile | undefined,
  earlier?: Earlier,
): readonly SourceFile[] {
  return filesOfCompanions(folder, main, filesBelow, earlier);
}

/** The files of the one corpus in a folder, those whose paths are wanted, in no order. */
function filesBelow(
  folder: string,
  wanted: (path: string) => boolean = () => true,
  earlier: Earlier = () => null,
): readonly SourceFile[] {
  const files: SourceFile[] = [];
  walk(folder, "", files, { wanted, earlier });
  return files;
}

/** One file of a corpus as it now is; null where there is none of that path, or none that is read. */
export function fileIn(folder: string, path: string): SourceFile | null {
  const limit = mostBytesOf(path);
  if (limit === null || !lookAt(join(folder, path))?.isFile()) return null;
  return fileAt(folder, path, limit);
}

/** Where a link leads; what leads nowhere stays as it is named. */
function followed(path: string): string {
  try {
    return realpathSync(path);
  } catch {
    return path;
  }
}

/** What the disk says of a path; null where there is nothing, and where none so long can be. */
function lookAt(path: string): Stats | null {
  try {
    return lstatSync(path, { throwIfNoEntry: false }) ?? null;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "ENAMETOOLONG") return null;
    throw error;
  }
}

/** Which files of a folder are read, and what is known of them. */
interface Walk {
  readonly wanted: (path: string) => boolean;
  readonly earlier: Earlier;
}

function walk(folder: string, below: string, files: SourceFile[], how: Walk): void {
  let entries;
  try {
    entries = readdirSync(`${folder}/${below}`, { withFileTypes: true });
  } catch {
    files.push({
      path: below,
      text: "",
      problem: say`The folder cannot be opened, expected one that may be read`,
    });
    return;
  }
  if (below !== "" && entries.some((entry) => entry.name === "corpus.yaml")) return;
  for (const entry of entries) take(entry, folder, below, files, how);
}

function take(entry: Dirent, folder: string, below: string, files: SourceFile[], how: Walk): void {
  const { name } = entry;
  if (name.startsWith(".") || name === "node_modules") return;
  const path = below === "" ? name : `${below}/${name}`;
  if (entry.isDirectory()) walk(folder, path, files, how);
  else if (entry.isFile()) {
    const limit = mostBytesOf(path);
    if (limit !== null && how.wanted(path)) files.push(fileAt(folder, path, limit, how.earlier));
  }
}

/** One file as it is known, or as it is read. */
function fileAt(folder: string, path: string, limit: number, earlier: Earlier = () => null): SourceFile {
  // Put together by hand: there are thousands of files, and nothing in their paths to be made shorter.
  const absolute = `${folder}/${path}`;
  const about = lookAt(absolute);
  return (about && earlier(path, about)) ?? fileRead(path, limit, absolute, about?.size ?? 0);
}

/** One file's text, or what keeps it from being read; its size is looked at first. */
function fileRead(path: string, limit: number, absolute: string, size: number): SourceFile {
  if (size > limit) {
    const [most, other] = [sizeText(limit), smaller.get(limit)];
    const problem = other
      ? say`Unexpected size of more than ${most}, expected ${other}`
      : say`Unexpected size of more than ${most}, expected the records divided among several files`;
    return { path, text: "", problem };
  }
  let bytes: Buffer;
  try {
    bytes = readFileSync(absolute);
  } catch {
    return { path, text: "", problem: say`The file cannot be opened, expected one that may be read` };
  }
  return textOf(path, bytes);
}

/** A file whose bytes are known to be UTF-8. */
export function fileOfUtf8(path: string, bytes: Uint8Array): SourceFile {
  return fileOfBytes(path, bytes, decoded);
}

function decoded({ buffer, byteOffset, byteLength }: Uint8Array): string {
  return Buffer.from(buffer, byteOffset, byteLength).toString("utf8");
}

function sizeText(bytes: number): string {
  return bytes < 1024 * 1024 ? `${bytes / 1024} KiB` : `${bytes / 1024 / 1024} MiB`;
}

/** Bytes as text; anything but UTF-8 is a problem with the file. A byte-order mark stays in the text. */
export function textOf(path: string, bytes: Uint8Array): SourceFile {
  const known = textSeen(bytes);
  if (known !== undefined) return { path, text: known };
  const wide = (bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff);
  if (wide)
    return { path, text: "", problem: say`Unexpected ${"UTF-16"}, expected a file saved as ${"UTF-8"}` };
  if (isUtf8(bytes)) return fileOfUtf8(path, bytes);
  return {
    path,
    text: "",
    problem: say`Unexpected bytes that are no ${"UTF-8"}, expected a text file saved as ${"UTF-8"}`,
  };
}
