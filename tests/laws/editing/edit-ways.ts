import fc from "fast-check";
import type { SourceFile } from "../../../src/build.ts";

/** Ways in which people change a file: each gives the text after it; where it does not apply, the same. */
const ways: readonly ((text: string, at: (most: number) => number) => string)[] = [
  (text, at) => nth(text, /value: (\d+)/g, at, (found) => `value: ${Number(found.slice(7)) + 1}`),
  (text, at) => nth(text, /value: (\d+)/g, at, (found) => `${found}0`),
  (text, at) => nth(text, /value: \d[\d.]* m/g, at, (found) => found.replace(/ m$/, " kg")),
  (text, at) => nth(text, /value: \d/g, at, (found) => found.replace(/\d/, "-3")),
  (text, at) => nth(text, /dimension: \w+/g, at, () => "dimension: gap"),
  (text, at) => nth(text, /state: \w+/g, at, () => "state: preserved"),
  (text, at) => nth(text, / {2}- (?:id|of): [^\n]*\n(?: {4}[^\n]*\n)+/g, at, () => ""),
  (text, at) => nth(text, / {2}- of: [^\n]*\n(?: {4}[^\n]*\n)+/g, at, (found) => found + found),
  (text, at) => nth(text, / {2}- (?:id|of|who): [^\n]*\n/g, at, (found) => `${found}    note: Read again.\n`),
  (text, at) => nth(text, /because: \[[^\]]*\]/g, at, () => "because: [nothing-there]"),
  (text, at) => nth(text, /present: true/g, at, () => "present: not-reported"),
  (text, at) => nth(text, /stance: \w+/g, at, () => "stance: doubts"),
  (text, at) => nth(text, /strength: \w+/g, at, () => "strength: strong"),
  (text, at) => nth(text, /year: \d+/g, at, () => "year: 1871"),
  (text, at) => nth(text, /text: "?[A-Z]\w+/g, at, (found) => `${found}ly`),
  (text, at) => nth(text, /year *= \{\d+\}/g, at, () => "year = {1999}"),
  (text) => (text.startsWith("# Invented") ? `${text}plus-minus: expanded\n` : text),
];

function nth(
  text: string,
  pattern: RegExp,
  at: (most: number) => number,
  put: (found: string) => string,
): string {
  const found = [...text.matchAll(pattern)];
  const hit = found[at(found.length)];
  if (!hit) return text;
  return text.slice(0, hit.index) + put(hit[0]) + text.slice(hit.index + hit[0].length);
}

/** One change of one file, by its way and its place from 0 to 1 among all where it applies. */
export interface WayTaken {
  readonly way: number;
  readonly place: number;
}

/** A change of a file, drawn at random. */
export const wayTaken: fc.Arbitrary<WayTaken> = fc.record({
  way: fc.nat(ways.length - 1),
  place: fc.double({ min: 0, max: 0.999, noNaN: true }),
});

/** The files of a corpus after a change; the same where it applies to none of them. */
export function changedBy(files: readonly SourceFile[], { way, place }: WayTaken): readonly SourceFile[] {
  const edit = ways[way] ?? ((text: string) => text);
  const fitting = files.filter(({ text }) => edit(text, () => 0) !== text);
  const file = fitting[Math.floor(place * fitting.length)];
  if (!file) return files;
  const text = edit(file.text, (most) => Math.floor(place * most));
  return files.map((it) => (it === file ? { ...it, text } : it));
}
