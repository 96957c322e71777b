import type { Box } from "../../scene.ts";

/** The widest that boxes side by side in the one column of a narrow screen are together, and the gap between them, in px. */
export const columnWidth = 336;
const gap = 40;

/** In one column, things apart: boxes of one rank side by side as far as the column is wide, else in rows of their own. */
export function inOneColumn(boxes: readonly Box[]): readonly Box[] {
  const order = boxes.filter((box) => box.band !== "things").toSorted((a, b) => a.row - b.row);
  const rows = new Map<string, number>();
  let [row, width, rank] = [-1, Infinity, Number.NaN];
  for (const box of order) {
    const together = width + gap + box.width;
    const beside = box.row === rank && together <= columnWidth;
    if (!beside) row++;
    width = beside ? together : box.width;
    rank = box.row;
    rows.set(box.id, row);
  }
  return boxes.map((box) => ({ ...box, row: rows.get(box.id) ?? box.row }));
}

/** The beams of one row, and the folds between them, made equally high, so that their lines lie on one level. */
export function levelled(boxes: readonly Box[]): readonly Box[] {
  const isLevel = ({ look }: Box): boolean => look.as === "beam" || look.as === "fold";
  const heights = new Map<number, number>();
  const mixed = new Set<number>();
  for (const box of boxes) {
    if (!isLevel(box)) mixed.add(box.row);
    else heights.set(box.row, Math.max(heights.get(box.row) ?? 0, box.height));
  }
  return boxes.map((box) =>
    isLevel(box) && !mixed.has(box.row) ? { ...box, height: heights.get(box.row) ?? box.height } : box,
  );
}
