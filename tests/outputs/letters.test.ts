import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { create } from "fontkit";
import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";
import { describe, expect, test } from "vitest";
import { familyNames, fontsAfter, printFont } from "../../src/host/print/fonts.ts";
import { pdfOf } from "../../src/host/print/pdf.ts";
import { pngOf } from "../../src/host/print/png.ts";
import { svgWithFonts } from "../../src/host/print/svg.ts";
import { seenOrder } from "../../src/host/print/text/order.ts";
import { setLine } from "../../src/host/print/text/runs.ts";
import { settled, signsLacking } from "../../src/host/print/text/settled.ts";
import { judged } from "./judges/judged.ts";
import { difference, inkOf, pixelsOf } from "./reading/pixels.ts";

const [width, height] = [80, 20];
const inWords = (words: string, more = "", family = "Source Serif 4"): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 320 80"><title>T</title><text x="160" y="50" text-anchor="middle" font-family="${family}" font-size="20" fill="#000000"${more}>${words}</text></svg>`;
const drawn = async (svg: string) => pixelsOf(await pngOf(svg, { width, dpi: 150 }));
/** As many boxes as a text has letters: a sign of the private use area is in no font. */
const boxes = (words: string): string => words.replace(/\S/gu, "\u{f8ff}");

/** What each text looks like is told from what it would look like as boxes, and from what it would if its marks were lost. */
const texts: readonly (readonly [string, string])[] = [
  ["Ω ± Ἀθῆναι", "Ω ± Αθηναι"],
  ["−0.5 ≤ 3 × 10⁻³", "-0.5 < 3 x 10-3"],
  ["ṭaḥā ½", "taha 1"],
  ["حفرة القائم", "حڡره الٯاىم"],
];

describe.each(texts)("%s", (words, plain) => {
  test("is drawn by letters, not by boxes, with all its marks", async () => {
    expect(signsLacking(inWords(words))).toEqual([]);
    const [is, box, bare] = await Promise.all([words, boxes(words), plain].map((one) => drawn(inWords(one))));
    if (!is || !box || !bare) throw new Error("nothing drawn");
    expect(inkOf(is)).toBeGreaterThan(100);
    expect(difference(is, box)).toBeGreaterThan(0.3 * inkOf(is));
    expect(difference(is, bare)).toBeGreaterThan(0.02 * inkOf(is));
  });

  judged(["pdftoppm"], "has in a PDF, drawn by poppler, the ink that it has in a PNG", async () => {
    const folder = mkdtempSync(join(tmpdir(), "letters-"));
    try {
      writeFileSync(join(folder, "t.pdf"), await pdfOf(inWords(words), { width, height }));
      spawnSync("pdftoppm", ["-r", "150", "-png", "-singlefile", "t.pdf", "t"], { cwd: folder });
      const poppler = pixelsOf(readFileSync(join(folder, "t.png")));
      const own = await drawn(inWords(words));
      expect(inkOf(poppler) / inkOf(own)).toBeGreaterThan(0.94);
      expect(inkOf(poppler) / inkOf(own)).toBeLessThan(1.06);
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });

  judged(["pdftotext"], "can be taken from a PDF as it was written", async () => {
    const pdf = await pdfOf(inWords(words), { width, height });
    const told = spawnSync("pdftotext", ["-", "-"], { input: pdf }).stdout.toString("utf8");
    expect(told.replace(/[\u200e\u200f\u202a-\u202e\f]/g, "").trim()).toBe(words);
  });
});

test("a PDF has its fonts embedded, text that is what was written, its size, and no day of its own", async () => {
  const words = "Ω ± Ἀθῆναι −0.5 ≤ 3 × 10⁻³";
  const svg = inWords(words);
  const pdf = await pdfOf(svg, { width, height, title: "Gaps & posts" });
  const text = Buffer.from(pdf).toString("latin1");
  const fonts = [...text.matchAll(/\/Type \/FontDescriptor\n\/FontName \/[A-Z]{6}\+/g)];
  expect(fonts.length).toBeGreaterThan(1);
  expect([...text.matchAll(/\/FontFile2 /g)].length).toBe(fonts.length);
  expect(text).not.toMatch(/\/BaseFont \/(?:Helvetica|Times|Courier)/);
  const document = await getDocument({ data: new Uint8Array(pdf), verbosity: 0 }).promise;
  const page = await document.getPage(1);
  expect(page.view[2]).toBeCloseTo((width * 72) / 25.4, 3);
  expect(page.view[3]).toBeCloseTo((height * 72) / 25.4, 3);
  const { items } = await page.getTextContent();
  expect(items.map((item) => ("str" in item ? item.str : "")).join("")).toBe(words);
  const { info } = await document.getMetadata();
  expect(info).toMatchObject({ Title: "Gaps & posts", CreationDate: "D:19700101000000Z" });
  expect(
    Buffer.compare(Buffer.from(pdf), Buffer.from(await pdfOf(svg, { width, height, title: "Gaps & posts" }))),
  ).toBe(0);
  await document.destroy();
});

test("a PNG tells its resolution, is the same each time, and as wide as asked", async () => {
  const svg = inWords("Ω");
  const png = await pngOf(svg, { width: 25.4, dpi: 300 });
  const view = new DataView(png.buffer, png.byteOffset);
  expect([view.getUint32(16), view.getUint32(20)]).toEqual([300, 75]);
  expect(Buffer.from(png.subarray(37, 41)).toString()).toBe("pHYs");
  // 300 dots to the inch of 0.0254 m.
  expect([view.getUint32(41), view.getUint32(45), png[49]]).toEqual([11811, 11811, 1]);
  expect(Buffer.compare(Buffer.from(png), Buffer.from(await pngOf(svg, { width: 25.4, dpi: 300 })))).toBe(0);
});

test("signs that no font has are told", () => {
  expect(signsLacking(inWords("彩陶 and Ω and בית"))).toEqual(["彩", "陶", "ב", "י", "ת"]);
});

/** Worked through by the rules of UAX 9: what is seen from the left. */
const orders: readonly (readonly [string, boolean, string])[] = [
  ["abc 12", false, "abc 12"],
  ["كتب", false, "كتب"],
  ["abc كتب قلم def", false, "abc قلم كتب def"],
  ["كتب abc قلم", true, "قلم abc كتب"],
  ["كتب 12.5 قلم", true, "قلم 12.5 كتب"],
  ["كتب (قلم)", true, "(قلم) كتب"],
  ["كتب، قلم.", true, ".قلم ،كتب"],
  ["\u2068كتب\u2069, Vane", false, "كتب, Vane"],
  ["كتب, Vane", true, "Vane ,كتب"],
];

test.each(orders)("%s (from right to left: %s) is seen as %s", (line, rtl, seen) => {
  expect(
    seenOrder(line, rtl)
      .map(({ text }) => text)
      .join(""),
  ).toBe(seen);
});

test("a line is as wide as its runs, each beginning where the one before ends", () => {
  for (const [words] of texts) {
    const { runs, width: all } = setLine(words, false, fontsAfter(["Source Serif 4"], 400), 20);
    for (const [n, run] of runs.entries()) {
      const end = run.x + run.font.width(run.text, 20);
      expect(end).toBeLessThanOrEqual((runs[n + 1]?.x ?? all) + 1e-6);
      expect(run.font.has(run.text)).toBe(true);
    }
  }
});

test("a text is set from the place that its anchor says, by its own direction", () => {
  const left = (words: string, more: string): number => {
    const svg = inWords(words).replace('text-anchor="middle"', more);
    return Math.min(...[...settled(svg).svg.matchAll(/ x="([\d.-]+)"/g)].map(([, x]) => Number(x)));
  };
  for (const [words, rtl] of [
    ["Vane", false],
    ["القائم", true],
  ] as const) {
    const { width: wide } = setLine(words, rtl, fontsAfter(["Source Serif 4"], 400), 20);
    const way = rtl ? ' direction="rtl"' : "";
    expect(left(words, `text-anchor="middle"${way}`)).toBeCloseTo(160 - wide / 2, 2);
    expect(left(words, `text-anchor="start"${way}`)).toBeCloseTo(rtl ? 160 - wide : 160, 2);
    expect(left(words, `text-anchor="end"${way}`)).toBeCloseTo(rtl ? 160 : 160 - wide, 2);
  }
});

test("an SVG has the fonts of its words in it, with the shapes of its letters and no others", () => {
  const svg = svgWithFonts(inWords("Ω ± Ἀθῆναι, office, القائم"));
  const faces = [
    ...svg.matchAll(/font-family:"([^"]+)";font-weight:400;src:url\(data:font\/woff;base64,([^)]+)\)/g),
  ];
  expect(faces.map(([, family]) => family)).toEqual(["Noto Naskh Arabic", "Noto Serif", "Source Serif 4"]);
  const written: Readonly<Record<string, string>> = {
    "Noto Naskh Arabic": "القائم",
    "Noto Serif": "Ἀθῆναι",
    "Source Serif 4": "office",
  };
  for (const [, family = "", data = ""] of faces) {
    const part = create(Buffer.from(data, "base64"));
    const whole = create(printFont(familyNames.find((one) => one === family) ?? "Noto Serif", 400).bytes());
    const [is, was] = [part, whole].map((font) => font.layout(written[family] ?? ""));
    expect(is?.glyphs.map(({ id }) => id)).toEqual(was?.glyphs.map(({ id }) => id));
    expect(is?.advanceWidth).toBe(was?.advanceWidth);
    const shape = (font: typeof part, glyph: number): string => font.getGlyph(glyph).path.toSVG();
    for (const { id } of was?.glyphs ?? []) expect(shape(part, id)).toBe(shape(whole, id));
    const [other = 0] = whole.layout("Q").glyphs.map(({ id }) => id);
    expect(shape(part, other)).toBe("");
  }
  expect(svgWithFonts(inWords("Ω"))).toBe(svgWithFonts(inWords("Ω")));
});
