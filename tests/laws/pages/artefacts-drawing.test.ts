import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { plugins } from "../../../plugins/index.ts";
import type { Worded } from "../../../src/base/text/said/worded.ts";
import { build } from "../../../src/build.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";
import { barUnits, metricBar, unitBar } from "../../../src/show/artefacts/drawing/bar.ts";
import { drawingOf } from "../../../src/show/artefacts/drawing/drawing.ts";
import type { Drawing } from "../../../src/show/artefacts/drawing/drawing.ts";
import { sheetOf, usualScales } from "../../../src/show/artefacts/drawing/sheet.ts";
import type { Point } from "../../../src/show/map/scene.ts";
import { drawSheet, drawingFile } from "../../../src/write/drawing/drawing.ts";
import { print } from "../../../src/write/pen/palette.ts";
import type { Pen, Stroke } from "../../../src/write/pen/pen.ts";
import { wholeInEnglish } from "../base/in-english.ts";

const words = {
  meanOf: (n: number) => `mean of ${n}`,
  form: { circle: "circle", rectangle: "rectangle", profile: "profile" },
};
/** Px of a metre on paper at 1:1, by the inch of 25.4 mm and 96 px. */
const metre = (1000 / 25.4) * 96;

type Form = "circle" | "rectangle" | "profile";
interface Shape {
  readonly form: Form;
  readonly metres: readonly number[];
  readonly states: readonly ("complete" | "preserved" | "reconstructed")[];
}

const shape: fc.Arbitrary<Shape> = fc
  .tuple(
    fc.constantFrom<Form>("circle", "rectangle", "profile"),
    fc.integer({ min: 2, max: 4 }),
    fc.integer({ min: 0, max: 4 }),
    fc.array(fc.integer({ min: 100, max: 999 }), { minLength: 4, maxLength: 4 }),
    fc.array(fc.constantFrom("complete", "preserved", "reconstructed"), { minLength: 4, maxLength: 4 }),
  )
  .map(([form, sides, power, figures, states]) => {
    const n = form === "circle" ? 1 : form === "rectangle" ? 2 : sides;
    const metres = figures.slice(0, n).map((one) => Number((one * 10 ** (power - 4)).toPrecision(3)));
    return { form, metres, states: states.slice(0, n) };
  });

function drawing(shapes: readonly Shape[], settings: object = {}): Worded<Drawing> {
  const records = {
    artefacts: shapes.map(({ form, metres }, n) => ({
      id: `t${n}`,
      name: `Thing ${n}`,
      shape: { [form]: metres.map((_, side) => `side ${side}`) },
    })),
    measurements: shapes.flatMap(({ metres, states }, n) =>
      metres.map((value, side) => ({
        of: `t${n}`,
        dimension: `side ${side}`,
        value: `${value} m`,
        state: states[side],
      })),
    ),
  };
  const { model } = build(
    [
      { path: "corpus.yaml", text: JSON.stringify({ title: "Things", ...settings }) },
      { path: "records.yaml", text: JSON.stringify(records) },
    ],
    plugins,
    emptyMemo(),
  );
  const found =
    model &&
    drawingOf(
      model,
      shapes.map((_, n) => `t${n}`),
    );
  if (!found) throw new Error("nothing drawn");
  return wholeInEnglish(found);
}

/** How far the heavy lines of each thing reach, in px, as a pen is told to draw them. */
function extents(found: Worded<Drawing>, width: number) {
  const sheet = sheetOf(found.groups, { width, unit: null, words });
  const all = new Map<string, { width: number; height: number }>();
  let points: Point[] = [];
  const heavy = (stroke: Stroke | null): boolean =>
    stroke !== null && stroke.width >= 1.4 && stroke.width !== 1.5;
  const pen: Pen = {
    line: (line, stroke) => void (heavy(stroke) && points.push(...line)),
    lines: () => undefined,
    outline: () => undefined,
    disc: ({ x, y }, r, _, stroke) =>
      void (heavy(stroke) && points.push({ x: x - r, y: y - r }, { x: x + r, y: y + r })),
    text: () => undefined,
    part: (id, _, draw) => {
      points = [];
      draw();
      const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
      all.set(id, {
        width: Math.max(...xs) - Math.min(...xs),
        height: Math.max(...ys) - Math.min(...ys),
      });
    },
  };
  drawSheet(pen, sheet);
  return { sheet, all };
}

/** What a shape measures by its dimensions, in metres. */
function sizeOf({ form, metres }: Shape): { readonly width: number; readonly height: number } {
  const [first = 0] = metres;
  const last = metres.at(-1) ?? 0;
  if (form === "circle") return { width: first, height: first };
  return { width: form === "rectangle" ? first : Math.max(...metres.slice(0, -1)), height: last };
}

test("a drawing's extent is its dimensions in metres times the scale, broken edges and all", () => {
  fc.assert(
    fc.property(shape, fc.constantFrom(340, 680), (one, width) => {
      const { sheet, all } = extents(drawing([one]), width);
      const drawn = all.get("t0");
      const size = sizeOf(one);
      expect(usualScales).toContain(sheet.scale);
      // A circle broken or supplied is a path of many short stretches: it misses its own extremes by a hair.
      const slack = 0.003 * Math.max(size.width, size.height) * (metre / sheet.scale) + 0.01;
      expect(Math.abs((drawn?.width ?? 0) - (size.width * metre) / sheet.scale)).toBeLessThanOrEqual(
        slackOf(one, slack),
      );
      expect(Math.abs((drawn?.height ?? 0) - (size.height * metre) / sheet.scale)).toBeLessThanOrEqual(
        slackOf(one, slack),
      );
      expect((size.width * metre) / sheet.scale).toBeLessThanOrEqual(width);
    }),
    { numRuns: 150 },
  );
});

/** Only a circle that is not whole is drawn by stretches; a tooth of a break may miss the circle's outermost point. */
function slackOf({ form, states }: Shape, hair: number): number {
  if (form === "circle" && states[0] === "preserved") return hair + 5;
  return form === "circle" && states[0] !== "complete" ? hair : 0.01;
}

test("things drawn side by side keep their ratio", () => {
  const whole = shape.map((one) => ({ ...one, states: one.states.map(() => "complete" as const) }));
  fc.assert(
    fc.property(whole, whole, fc.constantFrom(340, 680), (one, other, width) => {
      const { all } = extents(drawing([one, other]), width);
      const [a, b] = [all.get("t0"), all.get("t1")];
      const ratio = sizeOf(one).height / sizeOf(other).height;
      expect((a?.height ?? 0) / (b?.height ?? 1)).toBeCloseTo(ratio, 6 - Math.ceil(Math.log10(ratio + 1)));
    }),
    { numRuns: 100 },
  );
});

test("nothing on a sheet lies over its edge or over another thing", () => {
  fc.assert(
    fc.property(fc.array(shape, { minLength: 1, maxLength: 8 }), fc.constantFrom(340, 680), (all, width) => {
      const sheet = sheetOf(drawing(all).groups, { width, unit: null, words });
      const boxes = sheet.things.map((one) => ({
        left: one.at.x - one.left,
        right: one.at.x + one.right,
        top: one.at.y - one.above,
        bottom: one.at.y + one.height + one.below,
      }));
      for (const [n, box] of boxes.entries()) {
        expect(box.left).toBeGreaterThanOrEqual(0);
        expect(box.right).toBeLessThanOrEqual(width);
        expect(box.bottom).toBeLessThanOrEqual(sheet.height);
        for (const other of boxes.slice(n + 1)) {
          const apart =
            box.right <= other.left ||
            other.right <= box.left ||
            box.bottom <= other.top ||
            other.bottom <= box.top;
          expect(apart).toBe(true);
        }
      }
    }),
    { numRuns: 100 },
  );
});

describe("scale bars", () => {
  const sizes: Readonly<Record<string, number>> = { mm: 0.001, cm: 0.01, m: 1 };

  test.each(usualScales.slice(0, 16))("the metric one at 1:%d is as long as it says", (scale) => {
    for (const room of [200, 283]) {
      const perMetre = metre / scale;
      const bar = metricBar(perMetre, room);
      const [figure = "", sign = ""] = (bar.ticks.at(-1)?.label ?? "").split(" ");
      expect(bar.length).toBeCloseTo(Number(figure) * (sizes[sign] ?? Number.NaN) * perMetre, 6);
      expect(bar.length).toBeLessThanOrEqual(room);
      expect(bar.length).toBeGreaterThan(room / 2.6);
      const drawn = bar.divisions.reduce((sum, { from, to }) => sum + to - from, 0);
      expect(drawn).toBeCloseTo(bar.length, 9);
    }
  });

  test.each([20, 50, 200])(
    "one in a unit of the corpus's own at 1:%d is as long as the unit has it",
    (scale) => {
      const unit = { name: "long-pace", size: 0.743, u: 0.006, uAssumed: false, source: "" };
      const bar = unitBar(unit, metre / scale, 283);
      const [figure = ""] = (bar?.ticks.at(-1)?.label ?? "").split(" ");
      expect(bar?.length).toBeCloseTo((Number(figure) * 0.743 * metre) / scale, 6);
      expect(bar?.u).toBeCloseTo((Number(figure) * 0.006 * metre) / scale, 6);
      expect(unitBar(unit, metre / 1, 283)).toBeNull();
    },
  );

  test("units are those of the corpus and the historical ones it uses", () => {
    const { model } = build(
      [
        {
          path: "corpus.yaml",
          text: JSON.stringify({
            title: "Paces",
            units: { "long-pace": { is: "0.743 ± 0.006 m" }, "big-stone": { is: "6 kg" } },
          }),
        },
        {
          path: "records.yaml",
          text: JSON.stringify({
            artefacts: [{ id: "wall", name: "A wall" }],
            measurements: [
              { of: "wall", dimension: "length", value: "12 Roman feet" },
              { of: "wall", dimension: "height", value: "8 ft" },
            ],
          }),
        },
      ],
      plugins,
      emptyMemo(),
    );
    const units = model ? barUnits(model) : [];
    expect(units.map((one) => one.name)).toEqual(["long-pace", "Roman foot"]);
    expect(units[0]?.u).toBeCloseTo(0.006, 12);
  });
});

test("what cannot be drawn is told with the dimension that is lacking", () => {
  const { groups, undrawn } = drawing([
    { form: "profile", metres: [1, 2], states: ["complete", "complete"] },
    { form: "circle", metres: [], states: [] },
  ]);
  expect(groups.flat().map((one) => one.id)).toEqual(["t0"]);
  expect(undrawn.map((one) => one.id)).toEqual(["t1"]);
});

test("a file of a drawing is whole, without a style, and says its scale, hostile names and all", () => {
  const found = drawing([{ form: "rectangle", metres: [0.4, 0.3], states: ["complete", "preserved"] }]);
  const [first] = found.groups[0] ?? [];
  const hostile = first ? [{ ...first, name: `<script>"&` }] : [];
  const sheet = sheetOf([hostile], { width: 680, unit: null, words });
  const file = drawingFile(sheet, "A thing, 1:5", print);
  expect(file).toContain('xmlns="http://www.w3.org/2000/svg"');
  expect(file).not.toMatch(/style=|<style|<script/);
  expect(file).toContain(`1:${sheet.scale}`);
});
