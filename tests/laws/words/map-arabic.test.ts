import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { plugins } from "../../../plugins/index.ts";
import { inLanguage } from "../../../src/app/words/reader/tongues.ts";
import { build } from "../../../src/build.ts";
import type { Lens, Model } from "../../../src/build.ts";
import { readCorpusFolder } from "../../../src/host/corpus-folder.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";
import { textWidth } from "../../../src/show/map/letters/letters.ts";
import { mapPage } from "../../../src/show/map/page.ts";
import type { MapDesk } from "../../../src/show/map/page.ts";
import type { MapPage, MapView, PlacedBox } from "../../../src/show/map/scene.ts";
import { wholeWords } from "../../../src/show/map/whole.ts";
import { decidesInWords } from "../../../src/show/plan/wording.ts";

const files = readCorpusFolder(fileURLToPath(new URL("../../../demo-corpus", import.meta.url)));
const memo = emptyMemo();
const built = new Map<string, Model>();

function under(lens: Lens): Model {
  const key = JSON.stringify(lens);
  const model = built.get(key) ?? build(files, plugins, memo, lens).model;
  if (!model) throw new Error("the demo has no model");
  built.set(key, model);
  return model;
}

const view: MapView = { question: null, unfolded: [], focus: null, only: false, narrow: false };

function pageIn(language: "en" | "ar", lens: Lens = {}): MapPage {
  const desk: MapDesk = { model: under(lens), under, told: inLanguage[language] };
  return mapPage(desk, view);
}

const arabicLetters = /[\u0600-\u06ff]/;

describe("the map in Arabic", () => {
  test("shows the same boxes and lines, with words of its own in Arabic", () => {
    const [english, page] = [pageIn("en"), pageIn("ar")];
    expect(page.scene.boxes.map((box) => box.id).sort()).toEqual(
      expect.arrayContaining(
        english.scene.boxes.filter((box) => box.look.as !== "mark").map((box) => box.id),
      ),
    );
    const folded = page.scene.boxes.flatMap((box) => box.folded ?? []);
    expect(folded.length).toBeGreaterThan(3);
    for (const words of folded) expect(words).toMatch(arabicLetters);
    const standings = Object.values(page.states).filter((one) => one.standing === "falls" && one.said !== "");
    expect(standings.length).toBeGreaterThan(0);
    for (const { said } of standings) expect(said).toMatch(arabicLetters);
  });

  test("claims and texts of the corpus stay as they are", () => {
    const text = (box: PlacedBox): readonly string[] =>
      box.look.as === "claim" || box.look.as === "answer" ? box.look.text.lines : [];
    const [english, page] = [pageIn("en"), pageIn("ar")];
    const texts = new Map(english.scene.boxes.map((box) => [box.id, text(box)]));
    for (const box of page.scene.boxes) expect(text(box)).toEqual(texts.get(box.id) ?? []);
    const [whole, own] = [page, english].map((one) => wholeWords(under({}).graph, one, inLanguage.ar).whole);
    expect(Object.keys(whole ?? {}).sort()).toEqual(Object.keys(own ?? {}).sort());
  });

  test("its words have the room that was measured for them", () => {
    for (const { look, width } of pageIn("ar").scene.boxes) {
      if (look.as === "beam")
        for (const line of look.words.lines)
          expect(look.length + textWidth(line, "sans", 13)).toBeLessThanOrEqual(width + 1);
      if (look.as === "mark")
        for (const line of look.words.lines) expect(textWidth(line, "sans", 13)).toBeLessThan(width);
    }
  });

  test("what a year changed is told in Arabic", () => {
    const { years } = pageIn("en");
    const told = years.flatMap((asOf) => pageIn("ar", { asOf }).changes);
    expect(told.length).toBeGreaterThan(5);
    for (const sentence of told) expect(sentence).toMatch(/^[«ج].*[\u0600-\u06ff]/u);
  });
});

test("what an examination would decide has the dual and the plural of what else it changes", () => {
  const told = (changed: number): string =>
    inLanguage.ar(
      decidesInWords(
        { decides: ["a"], overturns: [], changed, always: false, outcomes: 2, idle: false, pending: false },
        String,
      ),
    );
  expect(told(1)).toBe("يستطيع أن يحسم \u2068a\u2069.");
  expect(told(2)).toContain("دعوى أخرى");
  expect(told(3)).toContain("دعويين أخريين");
  expect(told(6)).toContain("5 دعاوى أخرى");
  expect(told(13)).toContain("12 دعوى أخرى");
});
