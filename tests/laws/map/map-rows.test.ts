import fc from "fast-check";
import { expect, test } from "vitest";
import type { Box, Look } from "../../../src/show/map/scene.ts";
import { columnWidth, inOneColumn, levelled } from "../../../src/show/map/section/boxes/rows.ts";

const words = { lines: ["by function"], rtl: false, lang: null };
const looks: readonly Look[] = [
  { as: "beam", length: 24, words, tick: false },
  { as: "fold", words },
  { as: "claim", text: words, short: words, hangs: false },
  { as: "thing", name: words, parts: [] },
];

const byRow = (boxes: readonly Box[]): readonly (readonly Box[])[] =>
  [...new Set(boxes.map(({ row }) => row))].map((row) => boxes.filter((box) => box.row === row));

const boxes = fc
  .array(
    fc.record({
      look: fc.constantFrom(...looks),
      rank: fc.integer({ min: 0, max: 4 }),
      width: fc.integer({ min: 24, max: 300 }),
      height: fc.integer({ min: 16, max: 40 }),
    }),
    { maxLength: 30 },
  )
  .map((all) =>
    all.map(({ look, rank, width, height }, n): Box => {
      const thing = look.as === "thing";
      const [band, row] = thing ? (["things", -1] as const) : (["claims", rank] as const);
      const common = { records: [], title: "", ports: [], folded: null };
      return { id: `box-${n}`, ...common, band, row, width, height, look };
    }),
  );

test("one column keeps the ranks in their order, and puts side by side what is of one rank and not too wide", () => {
  fc.assert(
    fc.property(boxes, (before) => {
      const after = inOneColumn(before);
      expect(after.map(({ id }) => id)).toEqual(before.map(({ id }) => id));
      const rank = new Map(before.map((box) => [box.id, box.row]));
      const standing = after.filter(({ band }) => band !== "things");
      for (const row of byRow(standing)) {
        expect(new Set(row.map(({ id }) => rank.get(id))).size).toBe(1);
        const width = row.reduce((sum, box) => sum + box.width, 40 * (row.length - 1));
        if (row.length > 1) expect(width).toBeLessThanOrEqual(columnWidth);
      }
      const order = standing.toSorted((a, b) => a.row - b.row).map(({ id }) => rank.get(id) ?? 0);
      expect(order).toEqual(order.toSorted((a, b) => a - b));
      for (const { band, row } of after) if (band === "things") expect(row).toBe(-1);
    }),
    { seed: 29 },
  );
});

test("beams of one row are of one height, so that their lines are level", () => {
  fc.assert(
    fc.property(boxes, (before) => {
      const after = levelled(before);
      for (const row of byRow(after)) {
        const level = row.filter(({ look }) => look.as === "beam" || look.as === "fold");
        if (level.length < row.length) continue;
        expect(new Set(level.map(({ height }) => height)).size).toBeLessThanOrEqual(1);
      }
      after.forEach((box, n) => expect(box.height).toBeGreaterThanOrEqual(before[n]?.height ?? 0));
    }),
    { seed: 30 },
  );
});
