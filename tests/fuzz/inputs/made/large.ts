import type { Random } from "../../../../src/base/outcome/random.ts";
import { oneOf, times } from "../input.ts";
import type { Made } from "./made.ts";

const million = 1_000_000;

/** A value of ten million letters wherever one may stand. */
const longTexts: readonly ((long: string) => Made)[] = [
  (long) => ["records", `claims:\n  - id: a\n    text: ${long.slice(0, 8 * million)}\n`],
  (long) => ["records", `claims:\n  - id: a\n    text: "${long}"\n`],
  (long) => ["records", `x-${long.slice(0, 4 * million)}: a\n`],
  (long) => ["settings", `title: "${long.slice(0, 8 * million)}"\nlanguage: en\n`],
  (long) => ["bibtex", `@book{a, title = {${long}}, year = 1990}\n@book{b, title = {B}}\n`],
  (long) => ["bibtex", `@book{${long}`],
  (long) => ["ris", `TY  - BOOK\nTI  - ${long}\nER  - \n`],
  (long) => ["csl-json", `[{"id":"a","type":"book","title":"${long}"}]`],
  (long) => ["table", `of,dimension,value\na,depth,"${long}"\n`],
  (long) => ["table", `of,dimension,value,${long}\na,depth,3 m,1\n`],
  (long) => ["prose", long.slice(0, 500_000)],
  (long) => [
    "style",
    `<style xmlns="http://purl.org/net/xbiblio/csl" version="1.0"><info a="${long.slice(0, million)}"/></style>`,
  ],
  (long) => ["paper", `%PDF-1.7\n1 0 obj\n(${long})\nendobj\ntrailer << /Root 1 0 R >>`],
];

/** Ten million letters of one sort or another. */
export function longText(random: Random): Made {
  const unit = oneOf(random, ["x", "a b ", "é", "{}", "\\", "[", "1", "- ", "a, ", "( "]);
  return oneOf(random, longTexts)(unit.repeat((10 * million) / unit.length));
}

/** A hundred thousand keys, records, entries, cells or lines. */
export function manyOf(random: Random): Made {
  const n = oneOf(random, [1000, 10_000, 100_000]);
  const lines = (made: (place: number) => string): string => times(n, made).join("");
  return oneOf<() => Made>(random, [
    () => ["records", lines((at) => `x-${at}: ${at}\n`)],
    () => ["records", `claims:\n  - id: a\n    text: t\n${lines((at) => `    x-${at}: ${at}\n`)}`],
    () => [
      "records",
      `artefacts:\n  - id: a\n    name: a\n    numbers: {${lines((at) => `k${at}: ${at}, `)}}\n`,
    ],
    () => ["records", `artefacts:\n${times(Math.min(n, 10_000), () => "  - { id: a, name: a }\n").join("")}`],
    () => ["records", `claims: [${lines(() => "{}, ")}]\n`],
    () => [
      "settings",
      `title: Pits\nunits:\n${times(n / 10, (at) => `  unit${at}: { is: ${at} m }\n`).join("")}`,
    ],
    () => ["settings", `title: Pits\nbibliography: [${lines((at) => `b${at}.bib, `)}]\n`],
    () => ["bibtex", lines((at) => `@misc{k${at % 1000}, title = {T}}\n`)],
    () => ["bibtex", `@misc{k, ${lines((at) => `f${at} = {v}, `)}}`],
    () => ["ris", `TY  - BOOK\n${lines((at) => `AU  - A, ${at}\n`)}ER  - \n`],
    () => ["csl-json", `[${lines((at) => `{"id":"${at}"},`)}{"id":"a"}]`],
    () => ["csl-json", `[{${lines((at) => `"k${at}":1,`)}"id":"a"}]`],
    () => ["table", `of,dimension,value\n${lines(() => "a,depth,3 m\n")}`],
    () => ["table", `of,dimension,value${lines((at) => `,c${at}`)}\na,depth,3 m\n`],
    () => ["prose", times(Math.min(n, 40_000), (at) => `[^${at}]\n`).join("")],
  ])();
}
