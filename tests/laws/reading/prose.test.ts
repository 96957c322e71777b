import fc from "fast-check";
import { expect, test } from "vitest";
import { plugins } from "../../../plugins/index.ts";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { groundOf } from "../../../src/build.ts";
import type { Checked, Ground, Lens, Model, SourceFile } from "../../../src/build.ts";
import { computingHere, emptyMemo, evaluate } from "../../../src/host/evaluate.ts";
import { renaming } from "../../../src/link/edit/renamed.ts";
import { namedBy } from "../../../src/read/prose/prose.ts";
import { readProse } from "../../../src/read/prose/read.ts";
import type { Block, Inlines } from "../../../src/show/telling/blocks/block.ts";
import { proseOf } from "../../../src/show/telling/prose/prose.ts";
import { sectionsOf } from "../../../src/show/telling/prose/sections.ts";
import { shownFindings, shownTexts } from "../../../src/show/withhold.ts";
import { ownTime } from "../base/processor.ts";

const corpus: Readonly<Record<string, string>> = {
  "corpus.yaml":
    "title: Two rings\nbibliography: [sources.bib]\nwithhold: [umbra]\nunits: { pace: { is: 0.743 m } }\n",
  "sources.bib":
    "@book{hale-1896, author = {Hale, Josiah}, title = {Rings}, year = 1896}\n@book{ferrant-1937, author = {Ferrant, Edith}, title = {Rings}, year = 1937}\n",
  "records.yaml": `scholars:
  - { id: ferrant, name: Edith Ferrant }
  - { id: hale, name: Josiah Hale }
artefacts:
  - { id: ring, name: the ring }
claims:
  - { id: in-paces, text: The ring was laid out in paces. }
  - { id: roofed, text: The ring carried a roof., from: ferrant-1937 p. 3 }
  - { id: umbra, text: The ring hid a hoard. }
passages:
  - { id: ferrant-p3, from: ferrant-1937, at: p. 3, quote: a roof }
measurements:
${["2.229", "3.715", "4.458", "5.201", "7.430", "8.173"].map((value, place) => `  - { id: a${place}, of: ring, dimension: side, between: "side ${place}", value: ${value} m, from: hale-1896 }`).join("\n")}
observations:
  - { id: daub, of: ring, text: Burnt daub lay in the ring., from: ferrant-1937 }
arguments:
  - { id: walls, because: daub, therefore: roofed, from: ferrant-1937 }
derivations:
  - { id: fit, plugin: unit-fit, inputs: { values: { of: ring, dimension: side } }, parameters: { unit: pace } }
`,
};

const filesOf = (more: Readonly<Record<string, string>>): readonly SourceFile[] =>
  Object.entries({ ...corpus, ...more }).map(([path, text]) => ({ path, text }));

async function judged(
  more: Readonly<Record<string, string>>,
  lens: Lens = {},
): Promise<Checked<Model> & { model: Model }> {
  const checked = await evaluate(filesOf(more), plugins, emptyMemo(), computingHere(plugins), { lens });
  if (!checked.model) throw new Error("expected a corpus that can be read");
  return { ...checked, model: checked.model };
}

const said = async (text: string, lens: Lens = {}): Promise<string> => {
  const { model } = await judged({ "review/intro.md": text }, lens);
  return words(proseOf(model, plugins).get("intro") ?? []);
};

/** All words of some blocks, pieces and notes in their places. */
function words(blocks: readonly Block[]): string {
  const line = (of: Inlines): string =>
    of
      .map((one) => {
        if (typeof one === "string" || "say" in one) return inEnglish(one);
        if (one.is === "citing")
          return `(${one.cites.map(({ id, at }) => `${id}${at === undefined ? "" : ` ${at}`}`).join("; ")})`;
        if (one.is === "note") return ` ${line(one.of)} `;
        if ("of" in one) return line(one.of);
        return "text" in one ? inEnglish(one.text) : "";
      })
      .join("");
  return blocks
    .flatMap((one) => (one.is === "list" ? one.items.map(line) : "of" in one ? [line(one.of)] : []))
    .join("\n");
}

test("what leads to the corpus is found where it stands, over lines and in quotations too", () => {
  const text =
    "\uFEFFA *{{claim:roofed\nstands}}* and\n\n> - [@hale-1896, p. 1; @b]: {{number:fit.p < 0.01}}\n\n`{{claim:no}}` \\{{claim:no}}\n";
  const { prose, findings } = readProse({ path: "review/x.md", text });
  expect(findings).toEqual([]);
  const written = prose.pieces.map(({ at }) => text.slice(at.start, at.end));
  expect(written).toEqual(["{{claim:roofed\nstands}}", "[@hale-1896, p. 1; @b]", "{{number:fit.p < 0.01}}"]);
  const ids = prose.pieces.flatMap(namedBy);
  expect(ids.map(({ id }) => id)).toEqual(["roofed", "hale-1896", "b", "fit"]);
  for (const { id, idAt } of ids) expect(text.slice(idAt.start, idAt.end)).toBe(id);
  expect(prose.pieces[0]).toMatchObject({ is: "claim", standing: "stands" });
  expect(prose.pieces[2]).toMatchObject({ name: "p", comparison: "< 0.01" });
});

test("a text woven in has every word that the scholar wrote, in order", () => {
  const word = fc.stringMatching(/^[a-z]{1,6}$/);
  const sentence = fc.array(word, { minLength: 1, maxLength: 6 });
  const marks = ["", "*", "**", "_"] as const;
  const inline = fc
    .array(fc.tuple(sentence, fc.constantFrom(...marks)), { minLength: 1, maxLength: 4 })
    .map((all) => all.map(([of, mark]) => `${mark}${of.join(" ")}${mark}`).join(" "));
  const block = fc.oneof(
    inline,
    inline.map((one) => `# ${one}`),
    inline.map((one) => `> ${one}`),
    fc.array(inline, { minLength: 1, maxLength: 3 }).map((all) => all.map((one) => `- ${one}`).join("\n")),
    fc.tuple(inline, inline).map(([one, other]) => `1. ${one}\n   - ${other}`),
    inline.map((one) => `    ${one}`),
    inline.map((one) => `[${one}](https://example.org)`),
  );
  fc.assert(
    fc.property(fc.array(block, { minLength: 1, maxLength: 6 }), (blocks) => {
      const text = blocks.join("\n\n");
      const { prose } = readProse({ path: "review/x.md", text });
      const has = words(prose.blocks as readonly Block[]).match(/[a-z]+/g) ?? [];
      expect(has).toEqual(text.match(/[a-z]+/g));
    }),
    { numRuns: 80 },
  );
});

test("claims, numbers and citations say what the corpus says", async () => {
  expect(
    await said(
      "Hale saw that {{claim:roofed}}, at p {{number:fit.p}}[^1]. {{claim:in-paces}}\n\n[^1]: So [@ferrant-p3].",
    ),
  ).toMatch(
    /^Hale saw that the ring carried a roof, at p < 1 × 10⁻⁹ So {2}\(ferrant-1937 p\. 3\)\. {2}\. The ring was laid out in paces\.$|^Hale saw that (the|The) ring carried a roof, at p < 1 × 10⁻⁹ So \(ferrant-1937 p\. 3\)\. \. The ring was laid out in paces\.$/u,
  );
  expect(await said("[@hale-1896, pp. 3-4; @ferrant-1937]")).toBe("(hale-1896 pp. 3-4; ferrant-1937)");
});

test("prose is about the record as it is: in another year it says what was not yet in print, and nothing is outdated", async () => {
  const text = "{{claim:roofed unsupported}}";
  expect(await said(text, { asOf: 1900 })).toBe("[not yet in print]");
  const rules = async (lens: Lens): Promise<number> =>
    (await judged({ "review/a.md": text }, lens)).findings.filter((one) => one.rule === "outdated-prose")
      .length;
  expect(await rules({})).toBe(1);
  expect(await rules({ asOf: 1900 })).toBe(0);
});

test("what leads nowhere is an error with the nearest name and its place, and mends by a fix", async () => {
  const text =
    "{{claim:roofd}} {{claim:daub}} {{number:fit.q2}} {{number:fitt.p}} [@hale-1986] {{foo}} {{number:fit.p is 3}}";
  const { findings } = await judged({ "review/a.md": text });
  const told = findings.filter((one) => one.at?.file === "review/a.md");
  expect(told.map(({ rule, level, at }) => [rule, level, text.slice(at?.start, at?.end)])).toEqual([
    ["unknown-reference", "error", "roofd"],
    ["unknown-reference", "error", "daub"],
    ["unknown-reference", "error", "q2"],
    ["unknown-reference", "error", "fitt"],
    ["unknown-reference", "error", "hale-1986"],
    ["bad-value", "error", "{{foo}}"],
    ["bad-value", "error", "{{number:fit.p is 3}}"],
  ]);
  const [first] = told;
  expect(inEnglish(first?.message ?? "")).toContain("`roofed`");
  expect(first?.fix?.edits).toEqual([{ file: "review/a.md", start: 8, end: 13, text: "roofed" }]);
});

test("sections that the settings name are the review's own or the scholar's, and others are told with the nearest", async () => {
  const settings = `${corpus["corpus.yaml"] ?? ""}review: [intro, answers, refrences]\n`;
  const { model, findings } = await judged({ "corpus.yaml": settings, "review/intro.md": "Hello" });
  expect(sectionsOf(model.graph)).toEqual(["intro", "answers"]);
  const told = findings.filter((one) => inEnglish(one.message).includes("section"));
  expect(told.map((one) => settings.slice(one.at?.start, one.at?.end))).toEqual(["refrences"]);
  expect(inEnglish(told[0]?.message ?? "")).toContain("`references`");
});

test("nothing withheld comes out of prose: not in the text, the findings, or the excerpts", async () => {
  const text = "There {{claim:umbra stands}}, and {{claim:umbraa}}.";
  const { model, findings } = await judged({ "review/a.md": text });
  expect(words(proseOf(model, plugins).get("a") ?? [])).toBe("There [withheld], and [not in the record].");
  const shown = shownFindings(model.graph, findings);
  expect(shown.some((one) => one.level === "error" && one.at === null)).toBe(true);
  expect(shown.map((one) => inEnglish(one.message)).join("\n")).not.toMatch(/`umbra`|hoard/);
  expect(shownTexts(model.graph, new Map([["review/a.md", text]])).get("review/a.md")).toBe(
    "There ······················, and {{claim:umbraa}}.",
  );
});

test("who renames a record or a source renames it in prose", async () => {
  const text = "{{claim:roofed stands}} [@hale-1896, p. 1] {{number:fit.p}}";
  const { model } = await judged({ "review/a.md": text });
  const files = new Map(filesOf({ "review/a.md": text }).map((one) => [one.path, one.text]));
  for (const [from, to] of [
    ["roofed", "a-roof"],
    ["hale-1896", "hale-96"],
    ["fit", "the-fit"],
  ] as const) {
    const done = renaming(model.graph, files, from, to);
    const edits = "edits" in done ? done.edits.filter(({ file }) => file === "review/a.md") : [];
    expect(edits.map(({ start, end, text: is }) => text.slice(0, start) + is + text.slice(end))).toEqual([
      text.replace(from, to),
    ]);
  }
});

test("a text made to trouble its reader is refused, soon and in words", () => {
  for (const text of [
    "[".repeat(20_000),
    "*a ".repeat(20_000),
    "> ".repeat(5000) + "x",
    "- ".repeat(3000) + "x",
    "x\n".repeat(100_000),
  ]) {
    const spent = ownTime();
    const { prose, findings } = readProse({ path: "review/x.md", text });
    expect(findings.map((one) => one.rule)).toEqual(["unreadable-file"]);
    expect(prose.blocks).toEqual([]);
    expect(spent()).toBeLessThan(1000);
  }
});

test("a text that is edited is read again, and nothing else is tied anew", () => {
  const { read } = emptyMemo();
  const files = filesOf({});
  const groundWith = (text: string, before?: Ground): Ground => {
    const ground = groundOf([...files, { path: "review/a.md", text }], read, undefined, before);
    if (!("graph" in ground)) throw new Error("expected a corpus that can be read");
    return ground;
  };
  const before = groundWith("One");
  const after = groundWith("Two [@hale-1896]", before);
  expect(after.graph.prose).toEqual([readProse({ path: "review/a.md", text: "Two [@hale-1896]" }).prose]);
  expect(after.graph.records).toBe(before.graph.records);
});
