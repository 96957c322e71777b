import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { canvasPen } from "../../../src/write/pen/canvas-pen.ts";
import { familyList } from "../../../src/write/pen/faces.ts";
import { dark, light, print } from "../../../src/write/pen/palette.ts";
import type { Letters, Pen, Step, Stroke } from "../../../src/write/pen/pen.ts";
import { svgFile, svgPen } from "../../../src/write/pen/svg-pen.ts";
import { traceLine } from "../../../src/write/pen/trace.ts";
import { elementsOf, recorder, saidBy } from "./pen-said.ts";

const sheet = readFileSync(new URL("../../../src/app/look/sheet/sheet.css", import.meta.url), "utf8");

/** Relative luminance and contrast of WCAG 2.2. */
function contrast(a: string, b: string): number {
  const luminance = (colour: string): number => {
    const channel = (at: number): number => {
      const value = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
      return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
    };
    return 0.2126 * channel(1) + 0.7152 * channel(3) + 0.0722 * channel(5);
  };
  const [bright = 0, dim = 0] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (bright + 0.05) / (dim + 0.05);
}

describe("palettes", () => {
  const blocks = [...sheet.matchAll(/:root \{([^}]*)\}/g)].map((match) => match[1] ?? "");

  test.each([
    ["light", blocks[0] ?? "", light],
    ["dark", blocks[1] ?? "", dark],
  ] as const)("%s: the pens and the sheet of the app agree", (_, block, palette) => {
    const named = [...block.matchAll(/--([\w-]+): (#[0-9a-f]{6})/g)];
    expect(named.map((match) => match[1])).toEqual(
      expect.arrayContaining(["sheet", "paper", "ink", "soft", "hair", "line", "blue", "red"]),
    );
    for (const [, name = "", colour] of named) {
      if (name in palette) expect([name, palette[name as keyof typeof palette]]).toEqual([name, colour]);
    }
  });

  test("the faces are those of the sheet", () => {
    expect(sheet).toContain(`--serif: ${familyList("serif", '"')};`);
    expect(sheet).toContain(`--sans: ${familyList("sans", '"')};`);
  });

  test.each(Object.entries({ light, dark, print }))(
    "%s: text 4.5:1, lines that mean something 3:1",
    (_, palette) => {
      for (const ground of [palette.sheet, palette.paper]) {
        for (const text of ["ink", "soft", "blue", "red"] as const) {
          expect(contrast(palette[text], ground)).toBeGreaterThanOrEqual(4.5);
        }
        expect(contrast(palette.line, ground)).toBeGreaterThanOrEqual(3);
      }
    },
  );

  test.each(Object.entries({ light, dark, print }))("%s: the grid stays behind the ink", (_, palette) => {
    const [fine, strong] = [palette.grid, palette["grid-strong"]].map((one) => contrast(one, palette.sheet));
    expect(fine).toBeGreaterThan(1.02);
    expect(strong).toBeGreaterThan(fine ?? 0);
    expect(strong).toBeLessThan(1.6);
    expect(contrast(palette.ink, palette["grid-strong"])).toBeGreaterThanOrEqual(4.5);
  });
});

const ink: Stroke = { colour: "ink", width: 1.5 };
const letters: Letters = {
  face: "serif",
  size: 16,
  weight: 400,
  colour: "ink",
  anchor: "start",
  rtl: false,
  lang: null,
};

describe("the SVG pen", () => {
  const hostile = fc.string({ unit: "binary", maxLength: 30 });

  test("writes well-formed XML whatever the words, and the words read back", () => {
    fc.assert(
      fc.property(hostile, hostile, hostile, (words, title, lang) => {
        const pen = svgPen(light);
        pen.part(title, words, () => pen.text(words, { x: 1, y: 2 }, { ...letters, lang }));
        const xml = svgFile({ x: 0, y: 0, width: 9, height: 9 }, title, pen.drawn()).replace(
          /^<\?xml[^>]*\?>\n/,
          "",
        );
        const elements = elementsOf(xml);
        const text = elements.find(({ name }) => name === "text");
        const kept = words.replace(
          /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff\ud800-\udfff]/gu,
          "\ufffd",
        );
        expect(text?.text).toBe(kept);
        expect(elements[0]?.name).toBe("svg");
        expect(elements[0]?.attributes.get("xmlns")).toBe("http://www.w3.org/2000/svg");
        expect(elements.every(({ name, attributes }) => name !== "style" && !attributes.has("style"))).toBe(
          true,
        );
      }),
      { seed: 11 },
    );
  });

  test("gives records that differ names that differ, and a record drawn twice two", () => {
    fc.assert(
      fc.property(fc.uniqueArray(fc.string({ maxLength: 12 }), { minLength: 2, maxLength: 8 }), (ids) => {
        const pen = svgPen(light, "fig-");
        for (const id of [...ids, ids[0] ?? ""]) pen.part(id, id, () => undefined);
        const names = [...pen.drawn().matchAll(/<g id="([^"]*)"/g)].map((match) => match[1] ?? "");
        expect(new Set(names).size).toBe(ids.length + 1);
        for (const name of names) expect(name).toMatch(/^fig-r-[\p{L}\p{Nd}_.-]*$/u);
      }),
      { seed: 12 },
    );
  });

  test("rounds to a hundredth, tells dashes, ends, direction and language by presentation attributes", () => {
    const pen = svgPen(light);
    pen.line(
      [
        { x: 1 / 3, y: -0.001 },
        { x: 10, y: 0 },
      ],
      { ...ink, dash: [0.1, 5.4], round: true },
    );
    pen.text("حداد", { x: 5, y: 6 }, { ...letters, rtl: true, anchor: "end", lang: "ar", weight: 600 });
    expect(pen.drawn().split("\n")).toEqual([
      `<path d="M0.33 0L10 0" fill="none" stroke="#13181b" stroke-width="1.5" stroke-dasharray="0.1 5.4" stroke-linecap="round"/>`,
      `<text x="5" y="6" font-family="'Source Serif 4', 'Noto Serif', 'Noto Naskh Arabic', serif" font-size="16" font-weight="600" fill="#13181b" text-anchor="end" direction="rtl" xml:lang="ar">حداد</text>`,
    ]);
  });

  test("rounds a corner by a quadratic curve through it", () => {
    const pen = svgPen(light);
    pen.line(
      [
        { x: 0, y: 0 },
        { x: 0, y: 40 },
        { x: 60, y: 40 },
      ],
      ink,
      8,
    );
    expect(pen.drawn()).toContain('d="M0 0L0 32Q0 40 8 40L60 40"');
  });
});

test("a corner never takes more than half of a side", () => {
  const coordinate = fc.integer({ min: 0, max: 200 });
  fc.assert(
    fc.property(
      fc.array(fc.record({ x: coordinate, y: coordinate }), { minLength: 2, maxLength: 9 }),
      fc.integer({ min: 0, max: 20 }),
      (points, corner) => {
        const ends: { x: number; y: number }[] = [];
        const push = (x: number, y: number): void => void ends.push({ x, y });
        const curves: number[] = [];
        traceLine(points, corner, {
          moveTo: push,
          lineTo: push,
          quadraticCurveTo: (byX, byY, x, y) => {
            const before = ends.at(-1) ?? { x: 0, y: 0 };
            curves.push(Math.hypot(byX - before.x, byY - before.y), Math.hypot(byX - x, byY - y));
            push(x, y);
          },
          closePath: () => undefined,
        });
        expect(ends[0]).toEqual(points[0]);
        expect(ends.at(-1)).toEqual(points.at(-1));
        for (const reach of curves) expect(reach).toBeLessThanOrEqual(corner + 1e-9);
        for (const { x, y } of ends) expect(Number.isFinite(x) && Number.isFinite(y)).toBe(true);
      },
    ),
    { seed: 13 },
  );
});

test("both pens draw the same calls at the same places", () => {
  const point = fc.record({ x: fc.integer({ min: 0, max: 400 }), y: fc.integer({ min: 0, max: 400 }) });
  const colour = fc.constantFrom("ink", "soft", "hair", "blue", "red", "paper");
  const stroke = fc.record(
    {
      colour,
      width: fc.integer({ min: 1, max: 5 }),
      dash: fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 2, maxLength: 2 }),
      round: fc.boolean(),
    },
    { requiredKeys: ["colour", "width"] },
  );
  const step = fc.oneof(
    fc.record({ go: fc.constantFrom("move", "line"), to: point }),
    fc.record({ go: fc.constant("curve" as const), by: point, to: point }),
    fc.constant({ go: "close" as const }),
  );
  const set = fc.record({
    face: fc.constantFrom("serif", "sans"),
    size: fc.integer({ min: 11, max: 30 }),
    weight: fc.constantFrom(400, 600),
    colour,
    anchor: fc.constantFrom("start", "middle", "end"),
    rtl: fc.boolean(),
    lang: fc.constantFrom(null, "ar", "grc"),
  });
  const points = fc.array(point, { minLength: 2, maxLength: 6 });
  const call = fc.oneof(
    fc.tuple(points, stroke, fc.integer({ min: 0, max: 12 })).map(
      ([a, b, c]) =>
        (pen: Pen) =>
          pen.line(a, b as Stroke, c),
    ),
    fc.tuple(fc.array(points, { minLength: 1, maxLength: 4 }), stroke).map(
      ([a, b]) =>
        (pen: Pen) =>
          pen.lines(a, b as Stroke),
    ),
    fc.tuple(fc.array(step, { minLength: 1, maxLength: 6 }), fc.option(colour), fc.option(stroke)).map(
      ([a, b, c]) =>
        (pen: Pen) =>
          pen.outline(a as readonly Step[], b as Letters["colour"] | null, c as Stroke | null),
    ),
    fc.tuple(point, fc.integer({ min: 1, max: 9 }), fc.option(stroke)).map(
      ([a, b, c]) =>
        (pen: Pen) =>
          pen.disc(a, b, "paper", c as Stroke | null),
    ),
    fc.tuple(fc.constantFrom("−4 kN", "Ὁ κύκλος", "الحلقة", "a & b"), point, set).map(
      ([a, b, c]) =>
        (pen: Pen) =>
          pen.text(a, b, c as Letters),
    ),
  );
  fc.assert(
    fc.property(fc.array(call, { minLength: 1, maxLength: 12 }), (calls) => {
      const { canvas, said } = recorder();
      const [a, b] = [canvasPen(canvas, dark), svgPen(dark)];
      for (const draw of calls) {
        a.part("one", "One", () => draw(a));
        b.part("one", "One", () => draw(b));
      }
      // Neither fill nor stroke leaves nothing in the file that is seen.
      expect(saidBy(b.drawn())).toEqual(said);
    }),
    { seed: 14 },
  );
});
