import type { Id } from "../../../base/finding.ts";
import { byText } from "../../../base/order.ts";
import { portable } from "../../../read/source-file.ts";

/** Where papers lie, below the corpus's folder. */
export const papersFolder = "papers/";

/** Signs that no file name can have on every system; they are `-` in the name of a paper. */
const unnameable = /[\\/:*?"<>|\p{Cc}]/gu;

/** A key as the name of a file begins with it. */
export function fileNameOf(key: Id): string {
  return key.normalize("NFC").replace(unnameable, "-").replace(/^\./u, "-");
}

/**
 * The papers of each source, in the order of their names: a file below `papers/` belongs to the longest key that its name
 * begins with and that no letter or figure continues (`papers/KEY.pdf`, `papers/KEY-plates.pdf`, `papers/KEY/01.png`).
 */
export function papersOf(keys: Iterable<Id>, files: readonly string[]): ReadonlyMap<Id, readonly string[]> {
  const named = new Map<string, Id>();
  for (const key of [...keys].toSorted(byText))
    if (!named.has(fileNameOf(key))) named.set(fileNameOf(key), key);
  const papers = new Map<Id, string[]>();
  for (const file of files.toSorted(inReadingOrder)) {
    const key = file.startsWith(papersFolder) ? keyIn(file.slice(papersFolder.length), named) : null;
    if (key !== null) papers.set(key, [...(papers.get(key) ?? []), file]);
  }
  return papers;
}

/** The longest name that begins a file's. */
function keyIn(file: string, named: ReadonlyMap<string, Id>): Id | null {
  const name = file.normalize("NFC");
  for (let end = name.length - 1; end > 0; end--) {
    const key = named.get(name.slice(0, end));
    if (key !== undefined && !/^[\p{L}\p{N}]/u.test(name.slice(end))) return key;
  }
  return null;
}

/** By name, runs of figures as numbers: page 2 before page 10. */
export function inReadingOrder(a: string, b: string): number {
  return byText(numbered(a), numbered(b)) || byText(a, b);
}

function numbered(name: string): string {
  return name.replace(/\d+/gu, (digits) => digits.replace(/^0+(?=\d)/u, "").padStart(12, "0"));
}

/** A free name for a paper that is brought in: `papers/KEY.pdf`, or with the next number. */
export function freePaper(key: Id, extension: string, files: readonly string[]): string {
  const taken = new Set(files.map((file) => file.normalize("NFC").toLowerCase()));
  for (let n = 1; ; n++) {
    const file = `${papersFolder}${portable(fileNameOf(key))}${n === 1 ? "" : `-${n}`}.${extension}`;
    if (!taken.has(file.toLowerCase())) return file;
  }
}
