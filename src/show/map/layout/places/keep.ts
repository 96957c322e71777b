import type { Id } from "../../../../base/finding.ts";
import type { PlacedBox, Scene } from "../../scene.ts";
import { gapBetween, leftBound, standClear } from "./gaps.ts";
import { conclusionOf, middleOf, type Piece, type Plan } from "./plan.ts";
import { medianOf } from "./spread.ts";

/**
 * The order of each row when an earlier scene is to be kept: boxes known from it in their order and place, new ones
 * beside what they hang on, or after the box they follow in the corpus.
 */
export function keptOrder({ rows }: Plan, before: Scene): readonly (readonly Piece[])[] {
  const known = new Map<Id, PlacedBox>(before.boxes.map((box) => [box.id, box]));
  const placed = new Set<Piece>();
  for (const piece of rows.flat()) {
    const was = known.get(piece.box.id);
    if (was?.row !== piece.box.row) continue;
    piece.x = was.x;
    placed.add(piece);
  }
  const kept = rows.map((row) => row.filter((piece) => placed.has(piece)).sort((a, b) => a.x - b.x));
  for (const [at, row] of rows.entries()) enter(row, kept[at] ?? [], placed);
  return kept;
}

/** Lets the new boxes of a row in among those that are there. */
function enter(row: readonly Piece[], kept: Piece[], placed: Set<Piece>): void {
  let last: Piece | null = null;
  for (const piece of row) {
    if (!placed.has(piece)) {
      const wish = piece.box.band === "things" ? null : wishOf(piece, placed);
      const next = wish === null ? -1 : kept.findIndex((other) => middleOf(other) > wish);
      const at =
        wish !== null ? (next < 0 ? kept.length : next) : last ? kept.indexOf(last) + 1 : kept.length;
      const [left, right] = [kept[at - 1], kept[at]];
      const least = left ? left.x + left.width + gapBetween(left, piece) : leftBound(piece);
      const most = right ? right.x - gapBetween(piece, right) - piece.width : Infinity;
      piece.x = Math.max(least, Math.min(most, Math.round((wish ?? 0) - piece.width / 2)));
      kept.splice(at, 0, piece);
      standClear(kept);
      placed.add(piece);
    }
    last = piece;
  }
}

/** The middle over or under what a box hangs on, of that which has its place. */
function wishOf(piece: Piece, placed: ReadonlySet<Piece>): number | null {
  // A beam stands under what it bears, beside the others there.
  const ties = conclusionOf(piece) ? piece.above : [...piece.below, ...piece.above];
  const near = ties.filter(({ other }) => placed.has(other));
  return medianOf(near.map(({ other, here, there }) => other.x + there - here + piece.width / 2));
}
