import * as fc from "fast-check";
import { expect, test } from "vitest";
import { build } from "../../../src/build.ts";
import { mostBytesOf } from "../../../src/host/corpus-folder.ts";
import type { CslItem } from "../../../src/read/bibliography/csl.ts";
import { sheetOf } from "../../../src/show/pages/sheet.ts";
import { htmlOf, plainOf } from "../../../src/write/references/runs.ts";
import { references, similarItems } from "./references-items.ts";

const ids = ["a", "b", "c", "d", "e", "f", "g", "h"];
const styles = ["chicago-author-date", "apa", "american-journal-of-archaeology"];

function sheetsOf(items: readonly CslItem[], settings = ""): (id: string) => ReturnType<typeof sheetOf> {
  const files = [
    { path: "corpus.yaml", text: `format: 1\ntitle: Cited\nbibliography: [sources.json]\n${settings}` },
    { path: "sources.json", text: JSON.stringify(items) },
  ];
  const { model, findings } = build(files, [], { read: new Map(), compute: new Map() });
  if (!model) throw new Error("no model");
  return (id) => sheetOf(model, findings, new Map(), id);
}

test("the reference on a sheet is the one among all sources of the corpus, letter and all", () => {
  const kept = styles.map((name) => [references(name, []), references(name, [])] as const);
  fc.assert(
    fc.property(similarItems(ids), fc.constantFrom(...kept), (items, [all, few]) => {
      const sheets = sheetsOf(items);
      all.update(items);
      for (const { id } of items) {
        const asked = sheets(id)?.reference;
        expect(asked?.key).toBe(id);
        few.update(asked?.items ?? []);
        expect(plainOf(few.reference(id))).toBe(plainOf(all.reference(id)));
      }
    }),
    { numRuns: 40 },
  );
});

const alike = ["first", "second"].map((id) => ({
  id,
  type: "book",
  title: `The ${id} ring`,
  author: [{ family: "Vane", given: "Isolde" }],
  issued: { "date-parts": [[1968]] },
}));

test("a source that is withheld leaves no trace, not even the letter after a year", () => {
  const open = sheetsOf(alike)("second")?.reference;
  expect(plainOf(references("apa", open?.items ?? []).reference("second"))).toContain("(1968b)");
  const sheets = sheetsOf(alike, "withhold: [first]\n");
  expect(sheets("first")).toBeNull();
  const asked = sheets("second")?.reference;
  expect(JSON.stringify(asked)).not.toContain("first");
  expect(plainOf(references("apa", asked?.items ?? []).reference("second"))).toContain("(1968)");
});

test("the marks of CSL in a title are for the reference alone", () => {
  const [first] = alike;
  const sheet = sheetsOf([{ ...first, id: "first", type: "book", title: "Of <i>pes</i> and <script>" }])(
    "first",
  );
  expect(sheet?.title).toBe("Of pes and <script>");
  const runs = references("apa", sheet?.reference?.items ?? []).reference("first");
  expect(htmlOf(runs)).toContain("<em>Of </em>pes<em> and &lt;script&gt;</em>");
});

test("the style and language of the corpus go along, and a record has no reference", () => {
  const sheets = sheetsOf(alike, "language: de\ncitation-style: apa\n");
  expect(sheets("first")?.reference).toMatchObject({ style: { shipped: "apa" }, language: "de" });
  expect(sheetsOf(alike)("first")?.reference?.style).toEqual({ shipped: "chicago-author-date" });
  expect(mostBytesOf("styles/own.csl")).toBe(1024 * 1024);
});
