import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { textWidth } from "../../../src/show/map/letters/letters.ts";
import type { Point } from "../../../src/show/map/scene.ts";
import { nameColumn } from "../../../src/write/map/film/band-names.ts";
import { turfLine, unevenness } from "../../../src/write/map/film/turf.ts";
import { mapSvg } from "../../../src/write/map/map-svg.ts";
import { figureIn } from "../../../src/write/map/measure.ts";
import { light } from "../../../src/write/pen/palette.ts";
import { at, drawn, scales, windowed, windows } from "./map-drawn.ts";
import { scene, states } from "./map-scene.ts";
import { elementsOf } from "../telling/pen-said.ts";

test("no letter is smaller than 11 px on the screen, at any zoom", () => {
  fc.assert(
    fc.property(scales, windows, (scale, window) => {
      for (const { letters, words } of drawn(windowed(scale, window)).texts) {
        expect(letters.size * scale).toBeGreaterThanOrEqual(11 - 1e-9);
        expect(words).not.toBe("");
      }
    }),
    { seed: 21 },
  );
});

test("sizes on the screen go by steps, not by the zoom", () => {
  const sizes = new Set<number>();
  for (let scale = 0.05; scale < 2; scale += 0.01) {
    for (const { letters } of drawn(at(scale)).texts)
      sizes.add(Math.round(letters.size * scale * 1000) / 1000);
  }
  expect([...sizes].every(Number.isInteger)).toBe(true);
  expect(sizes.size).toBeLessThan(25);
});

test("what lies outside the window is not drawn, what lies inside is", () => {
  fc.assert(
    fc.property(scales, windows, (scale, frame) => {
      const drawing = windowed(scale, frame);
      const { x, y, width, height } = drawing.window ?? { x: 0, y: 0, width: 0, height: 0 };
      const { parts } = drawn(drawing);
      for (const box of scene.boxes) {
        const outside = (by: number): boolean =>
          box.x > x + width + by ||
          box.x + box.width < x - by ||
          box.y > y + height + by ||
          box.y + box.height < y - by;
        if (outside(60)) expect(parts).not.toContain(box.id);
        if (!outside(0)) expect(parts).toContain(box.id);
      }
    }),
    { seed: 22 },
  );
});

/** The stretches of a line as rectangles with no width or no height. */
const legs = (points: readonly Point[]) =>
  points.slice(1).map((to, n) => {
    const from = points[n] ?? to;
    const [x, y] = [Math.min(from.x, to.x), Math.min(from.y, to.y)];
    return { x, y, width: Math.abs(from.x - to.x), height: Math.abs(from.y - to.y) };
  });

describe("what is pinned", () => {
  test("names of bands stay in the window's inner column, in the band and over each other never", () => {
    fc.assert(
      fc.property(scales, windows, fc.boolean(), (scale, frame, mirrored) => {
        const drawing = { ...windowed(scale, { ...frame, wide: 700 + frame.wide }), mirrored };
        const { x = 0, width = 0 } = drawing.window ?? {};
        const names = ["things", "seen and", "measured", "computed", "claims", "answers"];
        const found = drawn(drawing).texts.filter(
          ({ words, part }) => part === null && names.includes(words),
        );
        for (const { at: place, words, letters } of found) {
          const long = textWidth(words, "sans", letters.size);
          const [left, right] = mirrored ? [place.x - long, place.x] : [place.x, place.x + long];
          const edge = mirrored ? x + width - nameColumn / scale : x;
          expect(left).toBeGreaterThanOrEqual(edge - 1e-6);
          expect(right).toBeLessThanOrEqual(edge + nameColumn / scale + 1e-6);
        }
        const heights = found.map((one) => one.at.y * scale).toSorted((a, b) => a - b);
        heights.slice(1).forEach((one, n) => expect(one - (heights[n] ?? 0)).toBeGreaterThanOrEqual(15));
      }),
      { seed: 23 },
    );
  });

  test("where the window is narrow they lie on no box and on no line", () => {
    let told = 0;
    fc.assert(
      fc.property(scales, windows, (scale, frame) => {
        const drawing = windowed(scale, { ...frame, wide: 300 + (frame.wide % 300) });
        const names = [
          "things",
          "seen",
          "and",
          "measured",
          "seen and measured",
          "computed",
          "claims",
          "answers",
        ];
        const found = drawn(drawing).texts.filter(
          ({ words, part }) => part === null && names.includes(words),
        );
        const taken = [
          ...scene.boxes,
          ...[...scene.routes, ...scene.attacks].flatMap(({ points }) => legs(points)),
        ];
        for (const { at: place, words, letters } of found) {
          const [left, right] = [place.x, place.x + textWidth(words, "sans", letters.size)];
          const [top, bottom] = [place.y - letters.size * 0.75, place.y + letters.size * 0.2];
          const over = taken.filter(
            (box) => box.x < right && left < box.x + box.width && box.y < bottom && top < box.y + box.height,
          );
          expect(over).toEqual([]);
          told++;
        }
      }),
      { seed: 28 },
    );
    expect(told).toBeGreaterThan(50);
  });

  test("the ground is a strip of 40 px at the foot, with the names of the cuts, when it is out of sight", () => {
    const above = drawn(at(1, { window: { x: 0, y: 0, width: 1300, height: 400 } }));
    const strip = above.texts.filter(({ words }) => ["posts 1–6", "posts 7–11", "centre"].includes(words));
    expect(strip.map(({ words }) => words)).toEqual(["posts 1–6", "posts 7–11", "centre"]);
    for (const { at: place } of strip) {
      expect(place.y).toBeGreaterThan(360);
      expect(place.y).toBeLessThan(400);
    }
    const seen = drawn(at(1, { window: { x: 0, y: 300, width: 1300, height: 400 } }));
    expect(seen.texts.filter(({ words }) => words === "centre").map((one) => one.at.y)).toEqual([646]);
  });
});

describe("the turf", () => {
  const things = scene.boxes.filter(({ look }) => look.as === "thing");

  test("is exact at the edges of the cuts and over their mouths, and uneven between", () => {
    const line = turfLine(things, scene.ground, { from: -160, to: 2000 }, 16);
    for (const { x, width } of things) {
      for (const edge of [x, x + width]) {
        expect(line.filter((point) => point.x === edge).map(({ y }) => y)).toEqual([scene.ground]);
      }
      expect(line.filter((point) => point.x > x && point.x < x + width)).toEqual([]);
    }
    const rises = line.map(({ y }) => Math.abs(y - scene.ground));
    expect(Math.max(...rises)).toBeLessThanOrEqual(4);
    expect(Math.max(...rises)).toBeGreaterThan(1);
    expect(line.every((point, n) => n === 0 || point.x > (line[n - 1]?.x ?? 0))).toBe(true);
  });

  test("is the same from every window", () => {
    fc.assert(
      fc.property(fc.integer({ min: -2000, max: 3000 }), (x) => {
        expect(unevenness(x, 200)).toBe(unevenness(x, 500));
        expect(Math.abs(unevenness(x, 0))).toBe(0);
      }),
    );
  });
});

describe("the file", () => {
  const file = mapSvg({ scene, states, beaten: [], palette: light, title: "Roof & ring" });

  test("is the same every time, well-formed, with the names of its records and the whole scene in its frame", () => {
    expect(
      mapSvg({ scene: structuredClone(scene), states, beaten: [], palette: light, title: "Roof & ring" }),
    ).toBe(file);
    const elements = elementsOf(file.replace(/^<\?xml[^>]*\?>\n/, ""));
    const records = elements.flatMap(({ attributes }) => attributes.get("data-record") ?? []);
    expect(new Set(records)).toEqual(
      new Set(
        scene.boxes.flatMap(({ id, look }) => [
          id,
          ...(look.as === "thing" ? look.parts.map((part) => part.id) : []),
        ]),
      ),
    );
    const ids = elements.flatMap(({ attributes }) => attributes.get("id") ?? []);
    expect(new Set(ids).size).toBe(ids.length);
    const [x = 0, y = 0, width = 0, height = 0] = (elements[0]?.attributes.get("viewBox") ?? "")
      .split(" ")
      .map(Number);
    expect(x).toBeLessThanOrEqual(-nameColumn);
    expect(y).toBeLessThan(0);
    expect(x + width).toBeGreaterThan(scene.width);
    expect(y + height).toBeGreaterThan(scene.height);
  });

  test("keeps every sentence with its language and its script's direction", () => {
    const texts = elementsOf(file.replace(/^<\?xml[^>]*\?>\n/, "")).filter(({ name }) => name === "text");
    for (const box of scene.boxes) {
      if (box.look.as !== "claim" && box.look.as !== "answer") continue;
      for (const line of box.look.text.lines) {
        const found = texts.find(({ text }) => text === line);
        expect(found?.attributes.get("xml:lang")).toBe(box.look.text.lang);
        expect(found?.attributes.get("direction")).toBe(box.look.text.rtl ? "rtl" : undefined);
      }
    }
    expect(texts.map(({ text }) => text)).toContain("0.58 m, to bear −4 kN from");
  });
});

test("a figure is never cut within a number", () => {
  const part = fc.constantFrom(
    "0.97",
    "±",
    "0.04",
    "m",
    "24",
    "diameters",
    "1998,",
    "on",
    "site",
    "−4.5",
    "kN",
  );
  fc.assert(
    fc.property(
      fc.array(part, { minLength: 1, maxLength: 6 }),
      fc.integer({ min: 5, max: 200 }),
      (parts, width) => {
        const figure = figureIn(parts.join(" "), { face: "sans", weight: 400 }, 16, width);
        if (figure === null) return;
        expect(figure.size).toBeGreaterThanOrEqual(11);
        expect(textWidth(figure.words, "sans", figure.size)).toBeLessThanOrEqual(width + 0.01);
        const shown = figure.words.replace(/…$/, "").trimEnd().split(" ");
        expect(shown).toEqual(parts.slice(0, shown.length));
      },
    ),
    { seed: 25, numRuns: 500 },
  );
});
