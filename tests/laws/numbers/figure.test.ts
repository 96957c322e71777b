import { fileURLToPath } from "node:url";
import * as fc from "fast-check";
import { beforeAll, describe, expect, test } from "vitest";
import { plugins } from "../../../plugins/index.ts";
import { criticalPhi } from "../../../plugins/unit-fit/given/given-unit.ts";
import { cosineSumAbove } from "../../../src/base/numeric/index.ts";
import type { Model } from "../../../src/build.ts";
import { readCorpusFolder } from "../../../src/host/corpus-folder.ts";
import { computingHere, evaluate } from "../../../src/host/evaluate.ts";
import { svgDocument } from "../../../src/host/print/svg-document.ts";
import { figureOf } from "../../../src/show/numbers/figure.ts";
import { tablesOf } from "../../../src/show/numbers/panel-table.ts";
import { draw } from "../../../src/write/figure/draw.ts";
import type { Figure, Mark, Pair, Panel } from "../../../src/write/figure/figure.ts";
import { extentOf, roundPlaces } from "../../../src/write/figure/extent.ts";
import { groundOf } from "../../../src/write/figure/ground.ts";
import { ofThePage } from "../../../src/write/pen/screen.ts";
import { svgText } from "../../../src/write/figure/svg-text.ts";
import { light } from "../../../src/write/pen/palette.ts";
import { demoMemo } from "../../demo-memo.ts";
import { wholeInEnglish } from "../base/in-english.ts";

const files = readCorpusFolder(fileURLToPath(new URL("../../../demo-corpus", import.meta.url)));
let model: Model;
let figures: ReadonlyMap<string, Figure>;

beforeAll(async () => {
  const checked = await evaluate(files, plugins, await demoMemo(), computingHere(plugins));
  if (!checked.model) throw new Error("the demo has no model");
  model = checked.model;
  figures = new Map(
    [...model.derivations.byId].flatMap(([id, derived]) => {
      const plugin = plugins.find((one) => one.id === derived.run?.plugin);
      const shown = figureOf(model.graph, derived, plugin);
      return shown === null ? [] : [[id, wholeInEnglish(shown.figure)] as const];
    }),
  );
});

const numbersIn = (value: unknown): readonly number[] => {
  if (typeof value === "number") return [value];
  return value !== null && typeof value === "object" ? Object.values(value).flatMap(numbersIn) : [];
};
const panels = (): readonly Panel[] => [...figures.values()].flatMap((figure) => figure.panels);

describe("figure data of the demo", () => {
  test("every plug-in has one", () => {
    const drawn = new Set([...figures.keys()].map((id) => model.derivations.byId.get(id)?.run?.plugin));
    expect([...drawn].sort()).toEqual(plugins.map((one) => one.id).sort());
    for (const panel of panels()) expect(panel.caption).toMatch(/^[A-Z].*\.$/);
  });

  test("is finite, and lies within the axes", () => {
    for (const panel of panels()) {
      expect(numbersIn(panel.marks).every(Number.isFinite), panel.title).toBe(true);
      const ground = groundOf(panel, 720, light);
      for (const [x, y] of panel.marks.flatMap(placesOf)) {
        expect(ground.px(x), panel.title).toBeGreaterThanOrEqual(ground.left - 0.5);
        expect(ground.px(x), panel.title).toBeLessThanOrEqual(ground.width - ground.right + 0.5);
        expect(ground.py(y), panel.title).toBeGreaterThanOrEqual(ground.top - 0.5);
        expect(ground.py(y), panel.title).toBeLessThanOrEqual(ground.height - ground.bottom + 0.5);
      }
    }
  });

  test("a search's curve is highest at the unit the plug-in gives, as far as it was looked for", () => {
    let looked = 0;
    for (const [id, figure] of figures) {
      const derived = model.derivations.byId.get(id);
      if (derived?.run?.plugin !== "unit-fit" || derived.run.settings["unit"]) continue;
      const marks = figure.panels[0]?.marks ?? [];
      const curve = marks.flatMap((mark) => (mark.mark === "line" ? mark.points : []));
      const limit = marks.find((mark) => mark.mark === "rule" && mark.axis === "x");
      const searched = limit?.mark === "rule" ? curve.filter(([q]) => q <= limit.at + 1e-12) : curve;
      const top = searched.reduce((best, point) => (point[1] > best[1] ? point : best), [
        0,
        -Infinity,
      ] as Pair);
      const size = sizeOf(derived.run.inputs["values"]?.[0]?.quantity.unitSize);
      expect(top[0] * size, id).toBeCloseTo(derived.numbers["q"]?.value ?? 0, 9);
      expect(top[1], id).toBeCloseTo(derived.numbers["phi"]?.value ?? 0, 9);
      looked += 1;
    }
    expect(looked).toBeGreaterThanOrEqual(2);
  });

  test("a given unit stands on the curve at the height the plug-in gives, and its null line at p = 5 %", () => {
    const derived = model.derivations.byId.get("ring-unit");
    const marks = figures.get("ring-unit")?.panels[0]?.marks ?? [];
    const strong = marks
      .flatMap((mark) => (mark.mark === "peaks" ? mark.peaks : []))
      .find((peak) => peak.strong);
    expect(strong?.at[1]).toBeCloseTo(derived?.numbers["phi"]?.value ?? 0, 9);
    const limit = marks.find((mark) => mark.mark === "rule" && mark.role === "null");
    // The sum of cosines of many even phases is nearly normal with variance n / 2: phi then exceeds 1.645 in 5 %.
    expect(limit?.mark === "rule" && limit.at).toBeCloseTo(1.645, 1);
    expect(derived?.numbers["n"]?.value).toBe(22);
  });

  test("is all in its tables, but for points between points", () => {
    for (const panel of panels()) {
      const tables = wholeInEnglish(tablesOf(panel));
      const dots = panel.marks.flatMap((mark) => (mark.mark === "dots" ? mark.dots : []));
      const rows = tables.flatMap((table) => table.rows.map((row) => row.join(" ")));
      for (const { label } of dots) expect(rows.some((row) => row.startsWith(label))).toBe(true);
      for (const table of tables) for (const row of table.rows) expect(row).toHaveLength(table.head.length);
    }
  });
});

function sizeOf(size: number | undefined): number {
  return size ?? 1;
}

function placesOf(mark: Mark): readonly Pair[] {
  switch (mark.mark) {
    case "line":
    case "strokes":
      return mark.points;
    case "band":
      return mark.points.flatMap(([x, low, high]): readonly Pair[] => [
        [x, low],
        [x, high],
      ]);
    case "dots":
      return mark.dots.flatMap(({ at, xEnds, yEnds }): readonly Pair[] => [
        at,
        ...(xEnds ?? []).map((x): Pair => [x, at[1]]),
        ...(yEnds ?? []).map((y): Pair => [at[0], y]),
      ]);
    case "peaks":
      return mark.peaks.map((peak) => peak.at);
    case "edge":
      return mark.stretches.flatMap(({ row, from, to }): readonly Pair[] => [
        [from, row],
        [to, row],
      ]);
    default:
      return [];
  }
}

describe("drawn without a browser", () => {
  const drawn = (figure: Figure, palette = light, width = 720): SVGSVGElement =>
    draw(figure, { document: svgDocument(), width, palette, id: "f" });

  test("is a whole SVG file with a title and a description, in stated colours, with no style of any kind", () => {
    for (const [id, figure] of figures) {
      const text = svgText(drawn(figure));
      expect(text, id).toMatch(
        /^<\?xml version="1\.0" encoding="UTF-8"\?>\n<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg" /,
      );
      expect(text).toContain('role="img"');
      expect(text).toContain("<title ");
      expect(text).toContain("<desc ");
      expect(text).not.toMatch(/<style|style=|class=|currentColor|NaN|undefined|Infinity|var\(/i);
      for (const [, colour] of text.matchAll(/(?:fill|stroke)="([^"]*)"/g)) {
        expect([...Object.values(light), "none"], id).toContain(colour);
      }
    }
  });

  test("has real minus signs and no text below 11 px", () => {
    const text = svgText(drawn(figures.get("ring-unit") ?? { title: "", panels: [] }));
    expect(text).toMatch(/>−0\.\d<\/text>/);
    expect(text).not.toMatch(/>-\d/);
    for (const figure of figures.values()) {
      const sizes = [...svgText(drawn(figure)).matchAll(/font-size="([\d.]+)"/g)].map((match) =>
        Number(match[1]),
      );
      expect(sizes.length).toBeGreaterThan(3);
      for (const size of sizes) expect(size).toBeGreaterThanOrEqual(11);
    }
  });

  test("has the same marks in the colours of the page and of paper, and at any width one dot for each datum", () => {
    for (const figure of figures.values()) {
      const count = (svg: SVGSVGElement, tag: string): number => svg.querySelectorAll(tag).length;
      const dots = figure.panels.flatMap((panel) =>
        panel.marks.flatMap((mark) => (mark.mark === "dots" ? mark.dots : [])),
      );
      for (const width of [320, 720]) {
        const [page, paper] = [drawn(figure, ofThePage, width), drawn(figure, light, width)];
        for (const tag of ["path", "line", "circle", "rect", "text"])
          expect(count(page, tag)).toBe(count(paper, tag));
        expect(count(page, "circle")).toBe(dots.length);
      }
    }
  });

  test("the same figure gives the same bytes", () => {
    for (const figure of figures.values()) expect(svgText(drawn(figure))).toBe(svgText(drawn(figure)));
  });

  test("shows hostile and foreign words as words", () => {
    const bad = `<img src=x onerror="run"><script>run</script>&nbsp;\u0000\u200f سور`;
    const figure: Figure = {
      title: bad,
      panels: [
        {
          title: bad,
          caption: bad,
          shows: "each",
          x: { label: bad, unit: bad },
          y: { label: bad, unit: "1", names: [bad, bad] },
          marks: [
            {
              mark: "dots",
              label: bad,
              dots: [
                { at: [1, 0], label: bad },
                { at: [-2, 1], label: bad, open: true },
              ],
            },
            { mark: "reach", axis: "x", from: 0, to: 1, label: bad },
            { mark: "rule", axis: "x", at: 0, role: "null", label: bad },
          ],
        },
      ],
    };
    const svg = drawn(figure);
    expect(svg.querySelectorAll("img, script").length).toBe(0);
    const text = svgText(svg);
    expect(text).toContain("&lt;img src=x");
    expect(text).not.toMatch(/<img|<script|\u0000/);
    expect(text).toContain("سور");
  });
});

test.each([3, 4, 7, 12, 30])(
  "%i lengths without a unit exceed the null line of a given unit in one case of twenty",
  (n) => {
    expect(cosineSumAbove(n, criticalPhi(n) * Math.sqrt(n / 2))).toBeCloseTo(0.05, 4);
  },
);

test("axes hold what any marks hold, and have two round places at least", () => {
  const finite = fc.integer({ min: -1e9, max: 1e9 }).map((parts) => parts / 1e4);
  fc.assert(
    fc.property(
      fc.array(fc.tuple(finite, finite), { minLength: 1, maxLength: 20 }),
      fc.boolean(),
      (points, log) => {
        const made = points.map(([x, y]): Pair => (log ? [Math.abs(x) + 0.01, y] : [x, y]));
        const panel: Panel = {
          title: "t",
          caption: "C.",
          shows: "together",
          x: {
            label: "x",
            unit: "1",
            ...(log ? { scale: "log" as const } : {}),
          },
          y: {
            label: "y",
            unit: "1",
          },
          marks: [
            {
              mark: "line",
              points: made,
              role: "main",
              label: "l",
            },
          ],
        };
        const { x, y } = extentOf(panel);
        for (const [a, b] of made) {
          expect(a).toBeGreaterThanOrEqual(x[0]);
          expect(a).toBeLessThanOrEqual(x[1]);
          expect(b).toBeGreaterThanOrEqual(y[0]);
          expect(b).toBeLessThanOrEqual(y[1]);
        }
        for (const [ends, scale] of [
          [x, panel.x.scale],
          [y, undefined],
        ] as const) {
          const places = roundPlaces(ends, 4, scale);
          expect(places.length).toBeGreaterThanOrEqual(2);
          for (const place of places) {
            expect(place).toBeGreaterThanOrEqual(
              ends[0] - 1e-9 * Math.abs(ends[0]) - 1e-9 * (ends[1] - ends[0]),
            );
            expect(place).toBeLessThanOrEqual(
              ends[1] + 1e-9 * Math.abs(ends[1]) + 1e-9 * (ends[1] - ends[0]),
            );
          }
        }
      },
    ),
    { numRuns: 300 },
  );
});
