import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Standing } from "../../../src/judge/judge.ts";
import type { BoxState } from "../../../src/show/map/scene.ts";
import { at, boxOf, drawn, scales, single } from "./map-drawn.ts";
import type { Mark } from "./map-drawn.ts";
import { scene, state, states } from "./map-scene.ts";

describe("standings", () => {
  const all: readonly Standing[] = ["stands", "open", "falls", "unsupported"];
  const linesOf = (id: string, standing: Standing): readonly Mark[] => {
    const only = at(1, { scene: single(boxOf(id)), states: { [id]: state({ standing }) } });
    return drawn(only).marks.filter(({ part, fill }) => part === id && fill === null);
  };

  test.each(["roofed", "greek", "by-function"])("%s: four lines that differ without their colours", (id) => {
    const shapes = all.map((standing) =>
      JSON.stringify(
        linesOf(id, standing).map(({ points, stroke }) => [
          points,
          stroke?.width,
          stroke?.dash,
          stroke?.round,
        ]),
      ),
    );
    expect(new Set(shapes).size).toBe(4);
    expect(linesOf(id, "stands")).toHaveLength(1);
    expect(linesOf(id, "open").map(({ stroke }) => stroke?.dash?.length)).toEqual([2, 2]);
    expect(linesOf(id, "falls").map(({ points }) => points.length)).toEqual([4]);
    expect(linesOf(id, "unsupported").map(({ stroke }) => stroke?.round)).toEqual([true]);
  });

  test("a claim's line runs down its inner edge, which is the right one in a mirrored map; an answer's lies under it", () => {
    for (const mirrored of [false, true]) {
      const only = {
        scene: single(boxOf("no-fire")),
        states: { "no-fire": state({ standing: "stands" }) },
        mirrored,
      };
      const line = drawn(at(1, only)).marks.find(({ stroke }) => stroke?.colour === "blue");
      const { x, width, y, height } = boxOf("no-fire");
      expect(line?.points).toEqual(
        [y, y + height].map((end) => ({ x: mirrored ? x + width - 3.5 : x + 3.5, y: end })),
      );
    }
    const { x, width, y, height } = boxOf("roofed");
    const [answer] = linesOf("roofed", "stands");
    expect(answer?.points).toEqual([x, x + width].map((end) => ({ x: end, y: y + height - 3.5 })));
  });

  test("blue and red are for standings and collisions alone", () => {
    fc.assert(
      fc.property(scales, (scale) => {
        const quiet = Object.fromEntries(
          scene.boxes.map(({ id }) => [id, state({ standing: "open", said: "open" })]),
        );
        const boxes = scene.boxes.map((box) =>
          box.look.as === "pile" ? { ...box, look: { ...box.look, conflict: false } } : box,
        );
        const { texts, marks } = drawn(at(scale, { scene: { ...scene, boxes, bows: [] }, states: quiet }));
        const colours = [
          ...texts.map(({ letters }) => letters.colour),
          ...marks.flatMap(({ fill, stroke }) => [fill, stroke?.colour]),
        ];
        expect(colours).not.toContain("blue");
        expect(colours).not.toContain("red");
      }),
      { seed: 24, numRuns: 30 },
    );
  });

  test("a change of standing moves nothing: texts and lines keep their places", () => {
    const flat = Object.fromEntries(scene.boxes.map(({ id }) => [id, state({ standing: "stands" })]));
    const places = (all: Readonly<Record<string, BoxState>>) =>
      drawn(at(1, { states: all }))
        .texts.filter(
          ({ letters, part }) => letters.face === "serif" && boxOf(part ?? "roofed").look.as !== "pile",
        )
        .map(({ words, at: place, letters }) => ({ words, place, size: letters.size }));
    const numbers = ["span"];
    const without = (list: ReturnType<typeof places>) => list.filter(({ words }) => !numbers.includes(words));
    expect(without(places(flat))).toEqual(without(places(states)));
  });
});

describe("states", () => {
  const all = (more: Partial<BoxState>) =>
    Object.fromEntries(
      scene.boxes.map(({ id }) => [id, state({ standing: "stands", said: "stands · Hale", ...more })]),
    );
  const ofParts = (list: readonly Mark[]) => list.filter(({ part }) => part !== null);

  test("what is not yet in print is hairlines without words", () => {
    for (const scale of [1, 0.5, 0.2]) {
      const { texts, marks } = drawn(at(scale, { states: all({ later: true }) }));
      expect(texts.filter(({ part }) => part !== null)).toEqual([]);
      for (const { stroke } of ofParts(marks)) expect(["hair", undefined]).toContain(stroke?.colour);
    }
  });

  test("what is not in focus has neither ink nor a standing's colour", () => {
    for (const scale of [1, 0.5, 0.2]) {
      const { texts, marks } = drawn(at(scale, { states: all({ lit: false }) }));
      for (const { stroke } of ofParts(marks)) expect(["line", "soft", undefined]).toContain(stroke?.colour);
      for (const { letters, part } of texts) if (part !== null) expect(letters.colour).toBe("soft");
    }
  });

  test("a change is a word line and a double notch in the margin, and goes with the step", () => {
    const with_ = drawn(at(1, { states: { "no-fire": state({ standing: "open", was: "stands" }) } }));
    const without = drawn(at(1, { states: { "no-fire": state({ standing: "open" }) } }));
    expect(with_.texts.map(({ words }) => words)).toContain("now open, was stands");
    const { x, y, height } = boxOf("no-fire");
    const beside = (list: readonly Mark[]) =>
      list.filter(({ part, points }) => part === "no-fire" && points.every((point) => point.x < x));
    expect(beside(with_.marks).map(({ points }) => points[0]?.y)).toEqual([
      y + height / 2 - 2.5,
      y + height / 2 + 2.5,
    ]);
    expect(beside(without.marks)).toEqual([]);
  });

  test("what a number says of a claim is a word behind the argument's own", () => {
    const beam = boxOf("by-function");
    for (const mirrored of [false, true]) {
      const states = { "by-function": state({ standing: null, said: "supports" }) };
      const { texts } = drawn(at(1, { scene: single(beam), states, mirrored }));
      const [own, said] = [
        texts.find((one) => one.part === beam.id),
        texts.find((one) => one.words === "supports"),
      ];
      expect(said?.letters.colour).toBe("ink");
      expect(said?.at.y).toBe(texts.filter((one) => one.part === beam.id).at(-1)?.at.y);
      if (mirrored) expect(said?.at.x ?? 0).toBeLessThan(own?.at.x ?? 0);
      else expect(said?.at.x ?? 0).toBeGreaterThan(own?.at.x ?? 0);
    }
  });

  test("an attack ends in an upright bar; a beaten one is soft, not shorter", () => {
    const attackOf = (beaten: readonly string[]) =>
      drawn(at(1, { beaten })).marks.filter(({ points }) => points.some((point) => point.x === 404));
    const [alive, dead] = [attackOf([]), attackOf(["a1"])];
    expect(alive.map(({ stroke }) => stroke?.colour)).toEqual(["ink", "ink"]);
    expect(dead.map(({ stroke }) => stroke?.colour)).toEqual(["soft", "soft"]);
    expect(dead.map(({ points }) => points)).toEqual(alive.map(({ points }) => points));
    expect(alive[0]?.stroke?.dash).toEqual([6, 4]);
    expect(alive[1]?.points.map(({ x }) => x)).toEqual([404, 404]);
  });
});
