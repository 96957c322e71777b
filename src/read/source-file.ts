import { byText } from "../base/order.ts";
import { hashOf } from "../base/text/hash.ts";
import type { Text } from "../base/text/said/said.ts";
import { lookedUp } from "../base/text/texts.ts";
import type { Texts } from "../base/text/texts.ts";

/** A file of the corpus as the host found it; `problem` says why its text could not be had. */
export interface SourceFile {
  /** Path below the corpus's folder, parted by `/`. */
  readonly path: string;
  readonly text: string;
  readonly problem?: Text;
}

/** The bytes decoded last: the steps of reading ask for the text of one file after another. */
let last: { readonly bytes: Uint8Array; readonly text: string } | null = null;

/**
 * A file held as bytes of valid UTF-8 and decoded whenever its text is asked for: a text in memory takes two bytes for
 * every letter as soon as one of them needs two.
 */
export function fileOfBytes(
  path: string,
  bytes: Uint8Array,
  decode: (bytes: Uint8Array) => string,
): SourceFile {
  return {
    path,
    get text() {
      if (last?.bytes !== bytes) last = { bytes, text: decode(bytes) };
      return last.text;
    },
  };
}

/** Whether two files say the same; of one that did not change, which is the same object, no text is made. */
export function hasSameText(one: SourceFile, other: SourceFile): boolean {
  return one === other || one.text === other.text;
}

/** The texts of files by their paths, each asked of its file when it is looked up. */
export function textsOf(files: readonly SourceFile[]): Texts {
  const byPath = new Map(files.map((file) => [file.path, file]));
  const texts = lookedUp(byPath.keys(), (path) => byPath.get(path)?.text ?? "");
  filesOf.set(texts, byPath);
  return texts;
}

const filesOf = new WeakMap<Texts, ReadonlyMap<string, SourceFile>>();

/** Whether texts say the same at a path; those of one and the same file are not made to see that. */
export function hasSameTextIn(one: Texts, other: Texts, path: string): boolean {
  const file = filesOf.get(one)?.get(path);
  if (file !== undefined && file === filesOf.get(other)?.get(path)) return true;
  return one.get(path) === other.get(path);
}

/** Order by path: the same on every disk, whether it writes an accented letter whole or in parts (Unicode NFC or NFD). */
export function inPathOrder(a: string, b: string): number {
  return byText(a.normalize("NFC"), b.normalize("NFC")) || byText(a, b);
}

/** Names that mean a device on some systems, with any ending (Microsoft, "Naming Files, Paths, and Namespaces"). */
const device = /^(?:con|prn|aux|nul|com[0-9¹²³]|lpt[0-9¹²³])(?=\.|$)/iu;

/** Whether every system can have a file or folder of this name. */
export function isPortable(name: string): boolean {
  return !device.test(name) && !/[<>:"|?*\\]|[. ]$/u.test(name);
}

/** A name of letters, digits and hyphens for a file that is made, changed where it would mean a device. */
export function portable(name: string): string {
  return name.replace(device, "$&_");
}

/** Largest YAML file read, in bytes. */
export const largestYaml = 8 * 1024 * 1024;

/** Largest plug-in of a corpus, in bytes. */
export const largestPlugin = 256 * 1024;

/** Largest citation style of a corpus, in bytes. */
export const largestStyle = 1024 * 1024;

/** Largest file of prose read, in bytes. */
export const largestProse = 512 * 1024;

/** The path of a file of the scholar's own prose below the corpus's folder. */
export const prosePath = /^review\/([^/]+)\.md$/;

/** Largest bibliography or table read, in bytes. */
export const largestTable = 64 * 1024 * 1024;

/** A plug-in that came with the corpus: a stranger's code, which reading never runs. */
export interface PluginFile {
  /** The name derivations use: that of the file, without its ending. */
  readonly name: string;
  readonly file: string;
  /** SHA-256 of the file's text. */
  readonly hash: string;
  readonly text: string;
}

/** The path of a plug-in's file below the corpus's folder. */
export const pluginPath = /^plugins\/([a-z0-9]+(?:-[a-z0-9]+)*)\.js$/;

/** The plug-ins among the files of a corpus, as texts; one that could not be read is left out. */
export function pluginFilesIn(files: readonly SourceFile[]): readonly PluginFile[] {
  return files.flatMap(({ path, text, problem }) => {
    const name = pluginPath.exec(path)?.[1];
    if (name === undefined || problem !== undefined) return [];
    return [{ name, file: path, hash: hashOf(text), text }];
  });
}
