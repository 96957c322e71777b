import type { Random } from "../../../src/base/outcome/random.ts";
import type { SourceFile } from "../../../src/read/source-file.ts";

/** What an input is read as. */
export const formats = [
  "settings",
  "records",
  "bibtex",
  "ris",
  "csl-json",
  "table",
  "style",
  "paper",
  "prose",
] as const;

export type Format = (typeof formats)[number];

/** One file as somebody might hand it in, with the files of the corpus that it stands in. */
export interface Input {
  readonly format: Format;
  /** What was done to it, or how it was made: for whoever reads of a find. */
  readonly how: string;
  readonly path: string;
  readonly bytes: Uint8Array;
  readonly beside: readonly SourceFile[];
}

/** One of several, each as likely. */
export function oneOf<T>(random: Random, from: readonly T[]): T {
  const one = from[random.below(from.length)];
  if (one === undefined) throw new Error("Nothing to choose from, expected at least one");
  return one;
}

/** 0 to `most`, small ones more often. */
export function few(random: Random, most: number): number {
  return Math.floor(most * random.uniform() ** 3 + random.uniform());
}

/** So many of what is made by place. */
export function times<T>(n: number, made: (place: number) => T): readonly T[] {
  return Array.from({ length: n }, (_, place) => made(place));
}

/** A text as its bytes; half of a pair of UTF-16 becomes the three bytes that no UTF-8 has. */
export function bytesOf(text: string): Uint8Array {
  if (!/[\ud800-\udfff]/u.test(text)) return Buffer.from(text, "utf8");
  const parts = text
    .split(/([\ud800-\udfff])/u)
    .map((part) =>
      /^[\ud800-\udfff]$/u.test(part) ? halfOf(part.charCodeAt(0)) : Buffer.from(part, "utf8"),
    );
  return Buffer.concat(parts);
}

function halfOf(unit: number): Uint8Array {
  return Uint8Array.of(0xe0 | (unit >> 12), 0x80 | ((unit >> 6) & 0x3f), 0x80 | (unit & 0x3f));
}
