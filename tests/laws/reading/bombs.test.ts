import { expect, test } from "vitest";
import { plugins } from "../../../plugins/index.ts";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { build } from "../../../src/build.ts";
import type { Model } from "../../../src/build.ts";
import { computingHere, emptyMemo, evaluate } from "../../../src/host/evaluate.ts";
import { styleTrouble } from "../../../src/read/bibliography/style/csl-style.ts";
import { ownTime } from "../base/processor.ts";

/** How much of the processor anything small may take to be read and judged, in ms. */
const patience = 5000;

const settings =
  "title: The Sallow Row\nbibliography: [s.bib, s.json, s.ris]\nmeasurement-tables: [t.csv]\ndimensions: { w: { kind: length } }\n";
const range = (n: number): readonly number[] => Array.from({ length: n }, (_, at) => at);
const things = "artefacts: [{ id: a, name: a }]\n";
const measured = (value: string): string =>
  `${things}measurements: [{ of: a, dimension: w, value: ${JSON.stringify(value)} }]`;

/** Each level nine times the one below, as deep as there are letters. */
const laughs = (indent: string): string =>
  [..."bcdefghijkl"]
    .map((to, at) => `${indent}x-${to}: &${to} [${Array(9).fill(`*${"abcdefghijkl"[at]}`).join()}]`)
    .join("\n");

const derivations = (n: number, taken: (at: number) => number): string =>
  `${things}derivations:\n${range(n)
    .map(
      (at) =>
        ` - { id: d${at}, plugin: unit-fit, inputs: { values: { of: a, dimension: w } }, parameters: { low: { number: d${taken(at)}.q }, high: { number: d${taken(at)}.q } } }`,
    )
    .join("\n")}`;

/** Small files that come to something large, or would take long, by what is in them; with what is said of them, where it is. */
const bombs: Readonly<Record<string, readonly [file: string, text: string, said?: RegExp]>> = {
  "aliases of aliases": [
    "a.yaml",
    `claims:\n - id: c\n   text: t\n   x-a: &a [xxxx, x, x, x, x, x, x, x, x]\n${laughs("   ")}\n   note: *l\n`,
    /comes to too much/,
  ],
  "aliases of aliases in what is read as it stands": [
    "a.yaml",
    `x-a: &a [xxxx, x, x, x, x, x, x, x, x]\n${laughs("")}\nderivations: [{ id: d, plugin: counts, inputs: *l }]\n`,
    /comes to too much/,
  ],
  "aliases that go deep": [
    "a.yaml",
    `x-a0: &a0 ${"[".repeat(40)}x${"]".repeat(40)}\n${range(90)
      .map((at) => `x-a${at + 1}: &a${at + 1} ${"[".repeat(40)}*a${at}${"]".repeat(40)}`)
      .join("\n")}\n`,
    /comes to too much/,
  ],
  "a long text by many aliases": [
    "a.yaml",
    `x-a: &a ${"x".repeat(200_000)}\nx-b: [${Array(60).fill("*a").join()}]\n`,
    /comes to too much/,
  ],
  "lists in lists": ["a.yaml", `claims: ${"[".repeat(300_000)}`, /nesting|deep/i],
  "dashes in a line": ["a.yaml", `claims:\n${"- ".repeat(100_000)}a`, /nesting|deep/i],
  "keys in a line": ["a.yaml", `claims:\n  - ${"a: ".repeat(3000)}b`, /nesting|deep/i],
  "keys in brackets": ["a.yaml", `claims: [{ x: ",", ${"a:\n ".repeat(3000)}b }]`, /nesting|deep/i],
  "strings that double": [
    "s.bib",
    `@string{a0 = {xxxxxxxxxx}}\n${range(60)
      .map((at) => `@string{a${at + 1} = a${at} # a${at}}`)
      .join("\n")}\n@book{k, title = a60, year = 1990}`,
  ],
  "braces in braces": ["s.bib", `@book{k, title = ${"{".repeat(30_000)}x${"}".repeat(30_000)}, year = 1990}`],
  "entries that never end": ["s.bib", "@book{k, title = {".repeat(20_000)],
  "parents of parents": [
    "s.bib",
    range(60)
      .map(
        (at) =>
          `@xdata{k${at}, xdata = {${range(60)
            .map((to) => `k${to}`)
            .join()}}, n${at} = {t}}`,
      )
      .join("\n"),
  ],
  "maps in maps": ["s.json", `[{"id":"a","note":${'{"a":'.repeat(100_000)}1${"}".repeat(100_000)}}]`],
  "a hundred thousand columns": [
    "t.csv",
    `of,dimension,value${",x".repeat(100_000)}\na,w,3 m${",1".repeat(100_000)}`,
  ],
  "a quote that never ends": ["t.csv", `of,dimension,value\n"${"a\n".repeat(100_000)}`],
  "records that never end": ["s.ris", "TY  - BOOK\n".repeat(10_000)],
  "a number past all numbers": ["a.yaml", measured("1e999999 m"), /Unexpected|Unreadable|expected/],
  "a number of a hundred thousand digits": ["a.yaml", measured(`1${"0".repeat(100_000)} m`)],
  "a quantity of ten thousand parts": ["a.yaml", measured("1 ft ".repeat(10_000))],
  "a fraction without end": ["a.yaml", measured("1/".repeat(30_000))],
  "a year of the far future": [
    "a.yaml",
    `artefacts: [{ id: a, name: a, date: Y-999999999/Y999999999 }]\nclaims: [{ id: c, text: t, dates: [{ event: e, is: Y-999999999/Y999999999 }] }]\n`,
  ],
  "a set of dates": ["a.yaml", `artefacts: [{ id: a, name: a, date: "[${"1990,".repeat(30_000)}1990]" }]`],
  "names like names": [
    "a.yaml",
    `claims:\n${range(400)
      .map(
        (at) =>
          ` - { id: claim-${at}-${"x".repeat(90)}, text: t, incompatible-with: [claym-${at}-${"x".repeat(90)}] }`,
      )
      .join("\n")}`,
    /Unknown id/,
  ],
  "a row of numbers": ["a.yaml", derivations(3000, (at) => at + 1), /Missing number|Unknown/],
  "a row of numbers from the end": ["a.yaml", derivations(3000, (at) => Math.max(0, at - 1)), /circle/],
  "a circle of numbers": ["a.yaml", derivations(3000, (at) => (at + 1) % 3000), /circle/],
  "backticks of every length": [
    "review/introduction.md",
    range(700)
      .map((at) => "`".repeat(at))
      .join(" "),
    /never ends/,
  ],
  "stars and brackets": ["review/introduction.md", "**a _b [c](".repeat(10_000), /never ends/],
  "quotations in quotations": ["review/introduction.md", "> ".repeat(10_000), /nesting/],
};

function read(
  file: string,
  text: string,
): { readonly model: Model | null; readonly said: readonly string[] } {
  const files = [
    { path: "corpus.yaml", text: settings },
    { path: file, text },
  ];
  const { model, findings } = build(files, plugins, emptyMemo(new Map()), {});
  return { model, said: findings.map(({ message }) => inEnglish(message)) };
}

test.each(Object.entries(bombs))(
  "is read in a moment, and the rest with it: %s",
  (_, [file, text, wanted]) => {
    const spent = ownTime();
    const { model, said } = read(file, text);
    expect(spent()).toBeLessThan(patience);
    expect(model).not.toBeNull();
    if (wanted)
      expect(
        said.some((one) => wanted.test(one)),
        said.slice(0, 5).join("\n").slice(0, 2000),
      ).toBe(true);
    // Nor is what is said of it longer than anybody would read.
    expect(Math.max(0, ...said.filter((one) => wanted?.test(one)).map((one) => one.length))).toBeLessThan(
      5000,
    );
  },
);

test("an anchor that stands in a hundred places is read like what is written there", () => {
  const list = range(50).map((at) => `c${at}`);
  const claims = list.map((id) => ` - { id: ${id}, text: t }`).join("\n");
  const rest = range(99)
    .map((at) => ` - { id: q${at}, text: t, answers: *all, exclusive: false }`)
    .join("\n");
  const { model, said } = read(
    "a.yaml",
    `claims:\n${claims}\nquestions:\n - { id: q, text: t, answers: &all [${list.join()}], exclusive: false }\n${rest}\n`,
  );
  expect(said.filter((one) => /alias/.test(one))).toEqual([]);
  expect(model?.graph.list("questions").at(-1)?.values.answers).toEqual(list);
});

const row = range(8)
  .map((at) => ` - { of: p${at}, dimension: w, value: ${at + 2}.${37 * at + 1}00000000 m }`)
  .join("\n");
const asking = (plugin: string, parameters: string): string =>
  `artefacts:\n${range(8)
    .map((at) => ` - { id: p${at}, name: p }`)
    .join(
      "\n",
    )}\nmeasurements:\n${row}\nderivations:\n - id: d\n   plugin: ${plugin}\n   inputs: { ${plugin === "spacing" ? "gaps" : "values"}: { of: [${range(
    8,
  )
    .map((at) => `p${at}`)
    .join()}], dimension: w } }\n   parameters: { ${parameters} }\n`;

test.each([
  ["unit-fit", "low: 0.3 m, high: 1 m, draws: 1000000000000", "failed", /at most 1000000/],
  ["spacing", "low: 0.3 m, high: 1 m, draws: 1000000000000", "failed", /at most 1000000/],
  ["unit-fit", "low: 0.0000001 m, high: 1 m, draws: 9", "refused", /narrower/],
  ["spacing", "low: 0.000000000001 m, high: 1 m, draws: 9", "refused", /narrower/],
  ["unit-fit", "low: 0.00001 m, high: 1 m, draws: 1000000", "refused", /narrower/],
])("a number that would never be there is refused: %s { %s }", async (plugin, parameters, status, why) => {
  const spent = ownTime();
  const files = [
    { path: "corpus.yaml", text: settings },
    { path: "a.yaml", text: asking(plugin, parameters) },
  ];
  const { model } = await evaluate(files, plugins, emptyMemo(new Map()), computingHere(plugins));
  const derived = model?.derivations.byId.get("d");
  expect(derived?.status).toBe(status);
  expect(derived?.why && inEnglish(derived.why)).toMatch(why);
  expect(spent()).toBeLessThan(patience);
});

test("a style whose macros double is none", () => {
  const macros = range(40)
    .map((at) => `<macro name="m${at}"><text macro="m${at + 1}"/><text macro="m${at + 1}"/></macro>`)
    .join("");
  const style = `<style xmlns="http://purl.org/net/xbiblio/csl" version="1.0" class="note">${macros}<macro name="m40"><text value="x"/></macro><citation><layout><text macro="m0"/></layout></citation></style>`;
  const spent = ownTime();
  expect(styleTrouble(style)).not.toBeNull();
  expect(spent()).toBeLessThan(patience);
});
