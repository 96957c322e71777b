import * as fc from "fast-check";
import { expect, test } from "vitest";
import { layOut } from "../../../src/show/map/layout/layout.ts";
import type { PlacedBox, Scene, Section } from "../../../src/show/map/scene.ts";
import { randomShape, sectionOf, type Shape } from "../../oracle/random-section.ts";
import { faultsOf } from "../../oracle/scene-faults.ts";

const lawful = (shape: Shape): void => {
  const section = sectionOf(shape);
  expect(faultsOf(section, layOut(section))).toEqual([]);
};

test("no two boxes meet, no line meets a foreign box or runs over another, and every line is drawn from end to end", () => {
  fc.assert(fc.property(randomShape(10, 60), lawful), { numRuns: 200 });
});

test("so it is with some hundreds of boxes", () => {
  fc.assert(fc.property(randomShape(100, 400), lawful), { numRuns: 15 });
});

test("and with two thousand", () => {
  const shape = { seed: 1, boxes: 2000, attacks: 10, rivals: 5, circles: 2, long: 10 };
  lawful({ ...shape, ranks: 6, scatter: 0.01 });
});

test("a line in two steps keeps clear of one that goes straight up beside it", () => {
  const shape = { seed: 623470, boxes: 20, ranks: 5, attacks: 36, rivals: 1, circles: 13, long: 18 };
  lawful({ ...shape, scatter: 0.02 });
});

test("the same section gives the same scene, to the byte", () => {
  const same = (shape: Shape): void => {
    const [one, other] = [sectionOf(shape), sectionOf(shape)];
    expect(JSON.stringify(layOut(one))).toBe(JSON.stringify(layOut(other)));
  };
  fc.assert(fc.property(randomShape(10, 120), same), { numRuns: 40 });
});

test("read from the right, the scene is the same turned round", () => {
  const turned = (shape: Shape): void => {
    const section = sectionOf(shape);
    const scene = layOut(section);
    const other = layOut(section, { mirrored: true });
    const across = scene.boxes.map(({ x, width }) => scene.width - x - width);
    expect(other.boxes.map(({ x }) => x)).toEqual(across);
    expect(other.boxes.map(({ y }) => y)).toEqual(scene.boxes.map(({ y }) => y));
    expect(other.routes.map(({ points }) => points)).toEqual(
      scene.routes.map(({ points }) => points.map(({ x, y }) => ({ x: scene.width - x, y }))),
    );
    expect(faultsOf(section, other)).toEqual([]);
  };
  fc.assert(fc.property(randomShape(10, 60), turned), { numRuns: 40 });
});

/** A section with one box more, that leans on one of the others. */
function withLeaf(section: Section, on: number, row: number): Section {
  const base = section.boxes[on % section.boxes.length]!;
  const look = { as: "fold", words: { lines: ["more"], rtl: false, lang: null } } as const;
  const leaf = {
    ...base,
    id: "leaf",
    title: "the leaf",
    band: "claims",
    row,
    width: 280,
    look,
    ports: [],
  } as const;
  const line = {
    id: "to the leaf",
    circle: false,
    from: { box: base.id, port: "" },
    to: { box: "leaf", port: "" },
  };
  return { ...section, boxes: [...section.boxes, leaf], lines: [...section.lines, line] };
}

function placesIn(scene: Scene, section: Section): readonly PlacedBox[] {
  const known = new Set(section.boxes.map(({ id }) => id));
  return scene.boxes.filter(({ id }) => known.has(id));
}

test("a leaf more moves nothing but its row to one side, and is itself laid out by the laws", () => {
  const arbitrary = fc.tuple(randomShape(10, 80), fc.nat(1000), fc.boolean());
  const stable = ([shape, on, mirrored]: readonly [Shape, number, boolean]): void => {
    const section = sectionOf(shape);
    const before = layOut(section, { mirrored });
    const base = section.boxes[on % section.boxes.length]!;
    const grown = withLeaf(section, on, Math.floor(base.row) + 1);
    const after = layOut(grown, { before, mirrored });
    expect(faultsOf(grown, after)).toEqual([]);
    const start = mirrored
      ? (scene: Scene, box: PlacedBox) => scene.width - box.x - box.width
      : (_: Scene, box: PlacedBox) => box.x;
    const was = new Map(placesIn(before, section).map((box) => [box.id, start(before, box)]));
    const leaf = placesIn(after, grown).find(({ id }) => id === "leaf")!;
    for (const box of placesIn(after, section)) {
      const moved = start(after, box) - was.get(box.id)!;
      const mayMove = box.row === leaf.row && start(after, box) > start(after, leaf);
      expect(moved === 0 || (mayMove && moved > 0), `${box.id} moved by ${moved}`).toBe(true);
    }
  };
  fc.assert(fc.property(arbitrary, stable), { numRuns: 80 });
});

test("laid out again from its own scene, a section stays as it is", () => {
  const settled = (shape: Shape): void => {
    const section = sectionOf(shape);
    const scene = layOut(section);
    expect(JSON.stringify(layOut(section, { before: scene }))).toBe(JSON.stringify(scene));
  };
  fc.assert(fc.property(randomShape(10, 80), settled), { numRuns: 40 });
});

test("a box that goes leaves all others where they were", () => {
  const gone = (shape: Shape): void => {
    const section = sectionOf(shape);
    const scene = layOut(section);
    const lines = section.lines.slice(1);
    const after = layOut({ ...section, lines }, { before: scene });
    expect(placesIn(after, section).map(({ x }) => x)).toEqual(placesIn(scene, section).map(({ x }) => x));
  };
  fc.assert(fc.property(randomShape(10, 80), gone), { numRuns: 20 });
});
