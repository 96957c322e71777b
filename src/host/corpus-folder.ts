import { lstatSync, readFileSync, readdirSync, realpathSync } from "node:fs";
import { join } from "node:path";
import { byText } from "../base/order.ts";
import { inEnglish } from "../base/text/said/english.ts";
import { say } from "../base/text/said/said.ts";
import type { Said, Text } from "../base/text/said/said.ts";
import {
  largestPlugin,
  largestProse,
  largestStyle,
  largestTable,
  largestYaml,
  pluginPath,
  prosePath,
} from "../read/source-file.ts";
import type { SourceFile } from "../read/source-file.ts";

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

/** The files of a corpus, ordered by path. The folder named may be a link; those in it are not followed, and a folder with a `corpus.yaml` of its own is another corpus. */
export function readCorpusFolder(folder: string): readonly SourceFile[] {
  const about = lookAt(followed(folder));
  if (!about) throw new NoCorpus(say`Unknown folder \`${folder}\`, expected the folder of a corpus`);
  if (!about.isDirectory())
    throw new NoCorpus(say`Unexpected file \`${folder}\`, expected the folder of a corpus`);
  if (!lookAt(join(folder, "corpus.yaml"))?.isFile()) {
    throw new NoCorpus(
      say`Missing \`${"corpus.yaml"}\` in \`${folder}\`, expected one: \`${"variorum new FOLDER"}\` starts a corpus`,
    );
  }
  const files: SourceFile[] = [];
  walk(folder, "", files);
  return files.sort((a, b) => byText(a.path, b.path));
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

function lookAt(path: string): ReturnType<typeof lstatSync> | null {
  return lstatSync(path, { throwIfNoEntry: false }) ?? null;
}

function walk(folder: string, below: string, files: SourceFile[]): void {
  let entries;
  try {
    entries = readdirSync(join(folder, below), { withFileTypes: true });
  } catch {
    files.push({
      path: below,
      text: "",
      problem: say`The folder cannot be opened, expected one that may be read`,
    });
    return;
  }
  if (below !== "" && entries.some((entry) => entry.name === "corpus.yaml")) return;
  for (const entry of entries) {
    if (entry.name.startsWith(".") || entry.name === "node_modules") continue;
    const path = below === "" ? entry.name : `${below}/${entry.name}`;
    if (entry.isDirectory()) walk(folder, path, files);
    else if (entry.isFile()) {
      const limit = mostBytesOf(path);
      if (limit !== null) files.push(fileAt(folder, path, limit));
    }
  }
}

/** One file's text, or what keeps it from being read; its size is looked at first. */
function fileAt(folder: string, path: string, limit: number): SourceFile {
  const absolute = join(folder, path);
  const size = lookAt(absolute)?.size ?? 0;
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

function sizeText(bytes: number): string {
  return bytes < 1024 * 1024 ? `${bytes / 1024} KiB` : `${bytes / 1024 / 1024} MiB`;
}

/** Bytes as text; anything but UTF-8 is a problem with the file. A byte-order mark stays in the text. */
export function textOf(path: string, bytes: Uint8Array): SourceFile {
  const wide = (bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff);
  if (wide)
    return { path, text: "", problem: say`Unexpected ${"UTF-16"}, expected a file saved as ${"UTF-8"}` };
  try {
    return { path, text: new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes) };
  } catch {
    return {
      path,
      text: "",
      problem: say`Unexpected bytes that are no ${"UTF-8"}, expected a text file saved as ${"UTF-8"}`,
    };
  }
}
