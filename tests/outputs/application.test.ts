import { describe, expect, test } from "vitest";
import { inEnglish } from "../../src/base/text/said/english.ts";
import { build } from "../../src/build.ts";
import type { Model } from "../../src/build.ts";
import { emptyMemo } from "../../src/host/evaluate.ts";
import { applicationOf } from "../../src/show/telling/application/application.ts";
import type { Block, Inlines, Manuscript } from "../../src/show/telling/blocks/block.ts";

const files: Readonly<Record<string, string>> = {
  "corpus.yaml": `title: Bowls of the Row
bibliography: [sources.bib]
authors: [{ name: Ines Marrow, orcid: 0000-0002-1825-0097 }]
withhold: [sealed-lid]
costs-in: days
`,
  "sources.bib": `@book{hale-1990, author = {Hale, Ada}, title = {The Row}, year = 1990}
@book{reed-2001, author = {Reed, Mal}, title = {The Row Again}, year = 2001}
`,
  "records.yaml": `scholars:
  - { id: hale, name: Ada Hale }
  - { id: reed, name: Mal Reed }
artefacts:
  - id: bowl
    name: The red bowl
    numbers: { store: K 17, excavation: R 4 }
    held-at: county store, bay 6
    found-at: below the old weir
    withhold-location: true
    access: { keeper: county store, permit: form S2, lead-time: eight weeks, note: Gloves are worn. }
    history:
      - { when: "1991-09", what: joined with wax, kind: conservation, from: reed-2001 p. 2 }
      - { when: "1991-08", what: washed, kind: conservation, from: reed-2001 p. 1 }
  - { id: bowl/rim, name: its rim }
  - { id: sealed-lid, name: The lid of the garden, part-of: bowl }
questions:
  - { id: what, text: What was it for?, answers: [for-oil, for-grain] }
claims:
  - { id: for-oil, text: The bowl held oil. , from: hale-1990 p. 8 }
  - { id: for-grain, text: The bowl held grain., from: reed-2001 p. 9 }
observations:
  - { id: stain, of: bowl, text: A dark stain runs round the wall., feature: stain, basis: autopsy, from: hale-1990 p. 4 }
  - { id: lid-mark, of: sealed-lid, text: The lid has a groove., from: hale-1990 p. 5 }
measurements:
  - { of: bowl/rim, dimension: rim, value: 18.2 cm, basis: photograph, from: reed-2001 p. 3 }
arguments:
  - { id: by-stain, because: stain, therefore: for-oil, text: Only oil stains so., by: hale }
examinations:
  - id: sample
    of: [bowl]
    method: residue analysis of the stain
    destructive: true
    cost: 3
    permit: form S2
    outcomes:
      - { id: oil, text: The stain is of oil., sees: [{ feature: oil, present: true }], therefore: [for-oil] }
      - { id: soot, text: The stain is soot., sees: [{ feature: oil, present: false }], against: [by-stain] }
  - id: lamp
    of: [bowl]
    method: ultraviolet light on the wall
    outcomes:
      - { id: glows, text: The stain glows., sees: [{ feature: glow, present: true }], therefore: [for-oil] }
`,
};
const sources = Object.entries(files).map(([path, text]) => ({ path, text }));
const { model, findings } = build(sources, [], emptyMemo(), {}, { plan: true });
const desk = { model: model as Model, findings, plugins: [], memo: new Map() };
const written = (id: string): Manuscript => {
  const one = applicationOf(desk, id);
  if (!one) throw new Error(id);
  return one;
};

function plain(of: Inlines): string {
  return of
    .map((one) => {
      if (typeof one === "string" || "say" in one) return inEnglish(one);
      if (one.is === "citing") return `(${one.cites.map(({ id, at }) => `${id} ${at ?? ""}`).join("; ")})`;
      if (one.is === "standing") return one.standing;
      return "of" in one ? plain(one.of) : inEnglish(one.text);
    })
    .join("");
}

function textOf(block: Block): string {
  switch (block.is) {
    case "terms":
      return block.rows.map((row) => row.map(plain).join(": ")).join("\n");
    case "list":
      return block.items.map(plain).join("\n");
    case "table":
      return [
        block.caption,
        ...[block.head, ...block.rows].map((row) => row.flatMap((cell) => [...cell, " | "])),
      ]
        .map(plain)
        .join("\n");
    case "room":
      return `${block.lines} lines`;
    default:
      return "of" in block ? plain(block.of) : block.is;
  }
}

const textIn = ({ title, blocks }: Manuscript): string =>
  [inEnglish(title), ...blocks.map(textOf)].join("\n").replaceAll("\u00a0", " ");

describe("an application for what uses something up", () => {
  const text = textIn(written("sample"));

  test("says what is asked of whom, by all numbers of the object", () => {
    expect(text).toContain("Application to examine The red bowl");
    expect(text).toContain("Object: The red bowl, store K 17, excavation R 4");
    for (const told of [
      "Keeper: county store",
      "Permission: form S2",
      "Cost: 3 days",
      "Asked ahead by: eight weeks",
    ])
      expect(text).toContain(told);
    expect(text).toContain("Applicants: Ines Marrow (ORCID 0000-0002-1825-0097)");
  });

  test("asks for the gentle way first, and leaves room for each thing that a keeper asks", () => {
    expect(text).toContain("Ways that use nothing up come first: Ultraviolet light on the wall.");
    expect(text.match(/\?\n2 lines/g)).toHaveLength(6);
    expect(text).toContain("the law of the place and licensed people decide");
  });

  test("tells what each outcome decides", () => {
    expect(text).toMatch(/The stain is soot\.\nThe bowl held oil: now stands, then (?:falls|unsupported)\./);
    expect(text).toContain("What was it for?");
    expect(text).toContain(
      "The bowl held oil (hale-1990 p. 8). This answer stands; nothing that works is against that.",
    );
  });

  test("lists what was done, by source and by what was looked at", () => {
    expect(text).toContain("1990 | Ada Hale | the thing itself | 1 | 0 | (hale-1990 ) | ");
    expect(text).toContain("2001 | Mal Reed | a photograph | 0 | 1 | (reed-2001 ) | ");
    expect(text).toContain(
      "August 1991, conservation: washed\nSeptember 1991, conservation: joined with wax",
    );
  });

  test("names nothing that is withheld, and no place of finding", () => {
    expect(text).not.toMatch(/lid|garden|weir/i);
    expect(text).toContain("Exact places of finds are withheld.");
  });
});

test("what uses nothing up is said to take nothing", () => {
  const text = textIn(written("lamp"));
  expect(text).toContain("Nothing is taken from the object");
  expect(text).not.toContain("uses something up.");
});

test("there is none for what is not recorded", () => {
  expect(applicationOf(desk, "nothing")).toBeNull();
  expect(applicationOf(desk, "bowl")).toBeNull();
});
