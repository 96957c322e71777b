import type { Random } from "../../../../src/base/outcome/random.ts";
import { bytesOf, few, oneOf, times } from "../input.ts";
import type { Format, Input } from "../input.ts";
import { oddPaths } from "../mutate/signs.ts";
import { besides, pathFor } from "../standing.ts";
import { longText, manyOf } from "./large.ts";
import { circles, numbersInCircles, reasoning } from "./records.ts";

/** A text that was made up for a format. */
export type Made = readonly [format: Format, text: string];

/** Brackets, elements, dashes and quotations in one another, closed or not. */
function nested(random: Random): Made {
  const deep = 1 + few(random, oneOf(random, [70, 2000, 200_000]));
  const both = (open: string, inner: string, close: string): string =>
    open.repeat(deep) + inner + (random.below(3) === 0 ? "" : close.repeat(deep));
  return oneOf<() => Made>(random, [
    () => ["records", `claims: ${both("[", "a", "]")}\n`],
    () => ["records", `claims: ${both("{ a: ", "b", "}")}\n`],
    () => ["records", `claims:\n${both("- ", "a", "")}\n`],
    () => ["records", `claims:\n${both("? ", "a", "")}\n`],
    () => ["records", times(Math.min(deep, 900), (at) => `${" ".repeat(at)}a:\n`).join("")],
    () => ["records", `claims:\n  - { id: a, text: t, x-a: ${both("[", "", "]")} }\n`],
    () => ["settings", `title: ${both("[", "Pits", "]")}\n`],
    () => ["settings", `title: Pits\nuse: ${both("[{ as: ", "a", "}]")}\n`],
    () => ["bibtex", `@book{a, title = ${both("{", "T", "}")}}`],
    () => ["bibtex", both("@book{a, crossref = {", "", "}}")],
    () => ["csl-json", both('[{"id":', '"a"', "}]")],
    () => ["csl-json", `[{"id":"a","title":${both("[", "1", "]")}}]`],
    () => ["table", `of,dimension,value\n${both('"', "a", '"')}\n`],
    () => [
      "style",
      `<style xmlns="http://purl.org/net/xbiblio/csl" version="1.0"><citation><layout>${both("<group>", '<text value="a"/>', "</group>")}</layout></citation></style>`,
    ],
    () => [
      "prose",
      both(
        oneOf(random, ["> ", "- ", "[", "*", "![", "`", "(", "# ", "<", "1. ", "[^"]),
        "a",
        oneOf(random, ["]", "*", "](b)", "`", ")", ""]),
      ),
    ],
    () => [
      "paper",
      `%PDF-1.7\n1 0 obj\n${both("<< /A [", "1", "] >>")}\nendobj\ntrailer << /Root 1 0 R >>\n%%EOF`,
    ],
  ])();
}

/** Anchors that name anchors, alone and in records. */
function aliases(random: Random): Made {
  const [levels, wide] = [1 + few(random, 30), 1 + few(random, 20)];
  const base = oneOf(random, ["[x]", "x", "{ a: b }", "[*a0]", "x".repeat(2000)]);
  const rest = times(levels, (at) => `x-${at + 1}: &a${at + 1} [${times(wide, () => `*a${at}`).join()}]\n`);
  const used = oneOf(random, [
    "claims: *a1\n",
    `claims: [{ id: a, text: *a0, note: *a${levels} }]\n`,
    `<<: *a0\n`,
    "",
  ]);
  return ["records", `x-0: &a0 ${base}\n${rest.join("")}${used}`];
}

/** Paths that lead out, or nowhere, in every field that names a path. */
function paths(random: Random): Made {
  const path = (): string => JSON.stringify(oneOf(random, oddPaths));
  return oneOf<() => Made>(random, [
    () => [
      "settings",
      `title: Pits\nbibliography: [${path()}, ${path()}]\nmeasurement-tables: [${path()}]\nartefact-tables: ${path()}\ncitation-style: ${path()}\nreview: [${path()}]\n`,
    ],
    () => [
      "settings",
      `title: Pits\nuse: [{ as: a, folder: ${path()} }, { as: ${path()}, folder: b }]\nwithhold: [${path()}]\n`,
    ],
    () => [
      "records",
      `artefacts: [{ id: a, name: a }]\nimages: [{ id: i, of: a, file: ${path()}, kind: plan }, { id: j, of: a, file: ${path()}, kind: scan, publish: true }]\n`,
    ],
    () => [
      "records",
      `passages: [{ id: ${path()}, at: p. 1, from: ${path()}, selector: { type: FragmentSelector, value: page=1, source: ${path()} } }]\nclaims: [{ id: a, text: t, from: ${path()} }]\n`,
    ],
    () => [
      "bibtex",
      `@book{${oneOf(random, oddPaths)}, title = {T}, file = ${path()}, crossref = ${path()}}`,
    ],
    () => [
      "prose",
      `![a](${oneOf(random, oddPaths)}) [@${oneOf(random, oddPaths)}] [b](${oneOf(random, oddPaths)})\n`,
    ],
  ])();
}

/** Parents of entries, strings of strings and macros of macros that lead round. */
function rounds(random: Random): Made {
  const size = 1 + few(random, 40);
  const next = (at: number): number => (random.below(4) === 0 ? random.below(size + 1) : (at + 1) % size);
  return oneOf<() => Made>(random, [
    () => [
      "bibtex",
      times(
        size,
        (at) =>
          `@incollection{k${at}, crossref = {k${next(at)}}, xdata = {k${next(at)}, k${next(at)}}, related = {k${next(at)}}, title = {T}}\n`,
      ).join(""),
    ],
    () => [
      "bibtex",
      `${times(size, (at) => `@string{s${at} = s${next(at)} # s${next(at)} # {x}}\n`).join("")}@book{k, title = s0 # s1}`,
    ],
    () => [
      "style",
      `<style xmlns="http://purl.org/net/xbiblio/csl" version="1.0" class="in-text"><info><title>A</title></info>${times(size, (at) => `<macro name="m${at}"><text macro="m${next(at)}"/></macro>`).join("")}<citation><layout><text macro="m0"/></layout></citation></style>`,
    ],
    () => [
      "paper",
      `%PDF-1.7\n${times(size, (at) => `${at + 1} 0 obj\n<< /Type /${at === 0 ? "Catalog" : "Pages"} /Pages ${next(at) + 1} 0 R /Kids [${next(at) + 1} 0 R] /Count 1 /Parent ${next(at) + 1} 0 R >>\nendobj\n`).join("")}trailer << /Root 1 0 R /Prev 0 >>\nstartxref\n0\n%%EOF`,
    ],
  ])();
}

const makers: readonly (readonly [how: string, made: (random: Random) => Made, often: number])[] = [
  ["references in circles", (random) => ["records", circles(random)], 60],
  ["numbers of numbers", (random) => ["records", numbersInCircles(random)], 60],
  ["arguments on arguments", (random) => ["records", reasoning(random)], 60],
  ["nested", nested, 60],
  ["anchors of anchors", aliases, 40],
  ["odd paths", paths, 40],
  ["parents in circles", rounds, 40],
  ["very many", manyOf, 6],
  ["ten million letters", longText, 3],
];
const often = makers.flatMap(([how, made, times]) =>
  Array.from({ length: times }, () => [how, made] as const),
);

/** An input that nobody has written: one that goes as far as its format does, or round in a circle. */
export function madeInput(random: Random): Input {
  const [how, made] = oneOf(random, often);
  const [format, text] = made(random);
  return { format, how, path: pathFor[format], bytes: bytesOf(text), beside: besides(format, false) };
}
