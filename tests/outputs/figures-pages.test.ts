import { expect, test } from "vitest";
import { inEnglish } from "../../src/base/text/said/english.ts";
import { build } from "../../src/build.ts";
import { emptyMemo } from "../../src/host/evaluate.ts";
import { svgDocument } from "../../src/host/print/svg-document.ts";
import { figures } from "../../src/host/telling/figures.ts";
import type { Told } from "../../src/host/telling/kind.ts";
import type { Figure, Mark } from "../../src/plugin.ts";
import { picturePages } from "../../src/write/pictures/picture.ts";

const dots = (count: number): Mark => ({
  mark: "dots",
  label: "",
  dots: Array.from({ length: count }, (_, n) => ({ at: [1 + (n % 7), n] as const, label: `post ${n}` })),
});

/** A figure with a panel of so many rows between two others. */
const long = (rows: number): Figure => ({
  title: "Posts",
  panels: [
    {
      title: "First",
      caption: "C.",
      shows: "each",
      x: { label: "x", unit: "m" },
      y: { label: "y", unit: "1" },
      marks: [dots(4)],
    },
    {
      title: "Rows",
      caption: "C.",
      shows: "each",
      x: { label: "x", unit: "m" },
      y: { label: "", unit: "1", names: Array.from({ length: rows }, (_, n) => `post ${n}`) },
      marks: [dots(rows), { mark: "rule", axis: "x", at: 3, role: "null", label: "three" }],
    },
    {
      title: "Last",
      caption: "C.",
      shows: "each",
      x: { label: "x", unit: "m" },
      y: { label: "y", unit: "1" },
      marks: [dots(4)],
    },
  ],
});

const textsIn = (svg: string): readonly string[] =>
  [...svg.matchAll(/<(?:text|tspan)[^>]*>([^<]+)</g)].map(([, text = ""]) => text);

test.each([1, 20, 37, 38, 90, 200])(
  "a panel of %i rows stands on as many pages as it needs, each row once",
  (rows) => {
    const picture = { is: "computed", derivation: "d", figure: long(rows) } as const;
    const pages = picturePages(picture, { width: 85, document: svgDocument() });
    for (const page of pages) expect(page.height).toBeLessThanOrEqual(230);
    const texts = pages.flatMap(({ svg }) => textsIn(svg));
    const names = texts.filter((text) => /^post \d+$/.test(text));
    expect(names).toEqual(Array.from({ length: rows }, (_, n) => `post ${n}`));
    expect(pages.flatMap(({ svg }) => [...svg.matchAll(/<circle /g)]).length).toBe(rows + 8);
    const titles = texts.filter((text) => /^[abc] /.test(text)).map((text) => text.replace(/\s+/g, " "));
    expect([...new Set(titles)]).toEqual(["a First", "b Rows", "c Last"]);
    // The axis is the same on each page: so is the place of the rule.
    const ids = pages.flatMap(({ svg }) => [...svg.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id));
    expect(new Set(ids).size).toBe(ids.length);
  },
);

const written: Readonly<Record<string, string>> = {
  "corpus.yaml": `title: Bowls of the Row
withhold: [umbra-bowl, umbra-claim, umbra-look]
`,
  "records.yaml": `artefacts:
  - { id: bowl, name: The red bowl, shape: { circle: [rim] }, coordinates: [51.1789, -1.8262], found-at: Umbra Weir, withhold-location: true }
  - { id: umbra-bowl, name: The umbra bowl, shape: { circle: [rim] } }
measurements:
  - { of: bowl, dimension: rim, value: 18 cm }
  - { of: umbra-bowl, dimension: rim, value: 44.4 cm }
questions:
  - { id: what, text: What was it for?, answers: [oil, umbra-claim] }
claims:
  - { id: oil, text: The bowl held oil. }
  - { id: umbra-claim, text: The umbra bowl held grain. }
observations:
  - { id: stain, of: bowl, text: A stain runs round the wall., feature: stain }
  - { id: umbra-look, of: umbra-bowl, text: An umbra stain., feature: stain }
arguments:
  - { id: a, because: stain, therefore: oil }
  - { id: umbra-why, because: umbra-look, therefore: oil }
  - { id: umbra-too, because: umbra-look, therefore: umbra-claim }
images:
  - { id: umbra-photo, of: [bowl], file: images/umbra.jpg, credit: Umbra Studio }
`,
};

test("nothing withheld, and no place, is in a figure or its caption, which says that something is", async () => {
  const files = Object.entries(written).map(([path, text]) => ({ path, text }));
  const memo = emptyMemo();
  const { model, findings } = build(files, [], memo);
  if (!model) throw new Error(findings.map(({ message }) => inEnglish(message)).join("\n"));
  const under = async () => build(files, [], memo);
  const told: Told = {
    folder: "/nowhere",
    files,
    model,
    findings,
    plugins: [],
    memo,
    under,
    today: "2025-11-26",
  };
  const made = await figures.make(told, "svg", "figs", {
    of: ["what", "bowl", "around:oil", "around:stain:1", "map:what"],
  });
  if ("refused" in made) throw new Error(inEnglish(made.refused));
  expect(made.length).toBeGreaterThanOrEqual(8);
  for (const { path, content } of made) expect(String(content), path).not.toMatch(/umbra|51\.17|44\.4/i);
  const captions = made.filter(({ path }) => path.endsWith(".caption.md"));
  for (const { content } of captions) expect(String(content)).toContain("Some records are withheld");
  for (const asked of ["umbra-bowl", "around:umbra-claim", "umbra-look", "bowl+umbra-bowl", "umbra-photo"]) {
    const refused = await figures.make(told, "svg", "figs", { of: [asked] });
    const words = "refused" in refused ? inEnglish(refused.refused) : "drawn";
    // What was asked for is repeated; nothing else that is withheld is named.
    const [, hint] = /^(?:Unknown figure|Nothing to show of) `[^`]+`, expected (.*)$/.exec(words) ?? [];
    expect(hint, words).toBeDefined();
    expect(hint, words).not.toContain("umbra");
  }
});
