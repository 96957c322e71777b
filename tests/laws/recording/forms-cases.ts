import { plugins } from "../../../plugins/index.ts";
import { build } from "../../../src/build.ts";
import type { SourceFile } from "../../../src/build.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";
import type { Graph } from "../../../src/link/graph.ts";
import type { ListName } from "../../../src/read/grammar/field.ts";
import type { EnteredMap } from "../../../src/show/desk/forms/filled/entered.ts";

/** Two rings and what is kept out of print, invented. */
export const small: readonly SourceFile[] = [
  {
    path: "corpus.yaml",
    text:
      "title: Two rings\nlanguage: en\nbibliography: [sources.bib]\nwithhold: [secret-pit, quiet-book]\n" +
      "units:\n  pace: { is: 0.743 ± 0.006 m }\n",
  },
  {
    path: "sources.bib",
    text:
      "@book{vane-1968, author = {Vane, Isolde}, title = {Posts of the Down}, year = 1968}\n" +
      "@book{quiet-book, author = {Mumm, Ida}, title = {Umbragarden}, year = 1903}\n",
  },
  {
    path: "rings.yaml",
    text: `artefacts:
  - { id: ring-a, name: The inner ring, coordinates: 51.23456 N, numbers: { inventory: MD/98/1 } }
  - id: ring-b
    name: The outer ring
    found-at: Hollowmarsh
    withhold-location: true
  - { id: secret-pit, name: Umbrapit }
scholars:
  - { id: vane, name: Isolde Vane, known-as: [I. Vane, ايزولد] }
claims:
  - { id: roofed, text: The inner ring carried a roof., about: [ring-a, secret-pit], x-mood: unsure }
  - { id: open-ring, text: The inner ring stood open. }
questions:
  - { id: what-was-it, text: What was it?, answers: [roofed, open-ring] }
observations:
  - { id: deep, of: ring-a, text: The posts stood deep. }
  - { id: secret-seen, of: secret-pit, text: Umbratrace. }
measurements:
  - { of: ring-a, dimension: diameter, value: 7.60 ± 0.02 m, from: vane-1968 p. 3 }
  - { of: ring-b, dimension: diameter, value: 15.2 m, from: [vane-1968 p. 4, quiet-book p. 9] }
arguments:
  - { id: deep-so-roofed, because: [deep, secret-seen], therefore: roofed }
`,
  },
  {
    path: "head.yaml",
    text: "source: vane-1968\n\npassages:\n  - { id: vane-legs, at: p. 9, quote: long legs }\n",
  },
];

/** The graph of some files, read by themselves. */
export function graphOf(files: readonly SourceFile[]): Graph {
  const { model } = build(files, plugins, emptyMemo());
  if (!model) throw new Error("The corpus of the test cannot be read");
  return model.graph;
}

/** What somebody types wrongly into a form, and the record as they would have typed it into a file. */
export const slips: readonly {
  readonly list: ListName;
  readonly entered: EnteredMap;
  readonly typed: string;
  /** The field that is to tell it. */
  readonly at: string;
}[] = [
  {
    list: "measurements",
    entered: { of: "ring-a", dimension: "depth", value: "18,2 cm" },
    typed: `{ of: ring-a, dimension: depth, value: "18,2 cm" }`,
    at: "value",
  },
  {
    list: "measurements",
    entered: { of: "ring-a", dimension: "depth", value: "3 cubits of nowhere" },
    typed: "{ of: ring-a, dimension: depth, value: 3 cubits of nowhere }",
    at: "value",
  },
  {
    list: "measurements",
    entered: { of: "ring-a", dimension: "diameter", value: "3 kg" },
    typed: "{ of: ring-a, dimension: diameter, value: 3 kg }",
    at: "value",
  },
  {
    list: "measurements",
    entered: { of: "roofed", dimension: "depth", value: "3 cm" },
    typed: "{ of: roofed, dimension: depth, value: 3 cm }",
    at: "of",
  },
  {
    list: "measurements",
    entered: { of: "ring-a", dimension: "depth", value: "3 cm", year: "-480", n: "some" },
    typed: "{ of: ring-a, dimension: depth, value: 3 cm, n: some, year: -480 }",
    at: "year",
  },
  {
    list: "claims",
    entered: { id: "a claim", text: "It was so." },
    typed: "{ id: a claim, text: It was so. }",
    at: "id",
  },
  {
    list: "claims",
    entered: { id: "roofed", text: "It was so." },
    typed: "{ id: roofed, text: It was so. }",
    at: "id",
  },
  {
    list: "claims",
    entered: { id: "so", text: "It was so.", from: ["vane-1698 p. 3"] },
    typed: "{ id: so, text: It was so., from: vane-1698 p. 3 }",
    at: "from",
  },
  {
    list: "claims",
    entered: { id: "so", text: "It was so.", short: "x".repeat(41) },
    typed: `{ id: so, text: It was so., short: ${"x".repeat(41)} }`,
    at: "short",
  },
  {
    list: "arguments",
    entered: { id: "so", because: ["deep"], therefore: "roofed", against: ["open-ring"] },
    typed: "{ id: so, because: deep, therefore: roofed, against: open-ring }",
    at: "therefore",
  },
  {
    list: "artefacts",
    entered: { id: "thing", name: "A thing", date: [{ is: "about 1850 AD or so" }] },
    typed: "{ id: thing, name: A thing, date: about 1850 AD or so }",
    at: "date",
  },
  {
    list: "examinations",
    entered: {
      id: "look",
      of: ["ring-a"],
      method: "looking",
      outcomes: [{ id: "deep-one", text: "Deep.", probability: "1.5" }],
    },
    typed:
      "{ id: look, of: ring-a, method: looking, outcomes: [{ id: deep-one, text: Deep., probability: 1.5 }] }",
    at: "outcomes",
  },
];
