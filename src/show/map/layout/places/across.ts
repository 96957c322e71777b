import { corner, gap, gapBetween, leftBound, standClear } from "./gaps.ts";
import { conclusionOf, type Piece, type Tie } from "./plan.ts";
import { medianOf, spread, type Spreading } from "./spread.ts";

/** Passes up and down that draw the rows together, before one straightens the lines. */
const passes = 4;

/**
 * Places along the ground for rows in their order. Passes of least squares bring each box near what it hangs together
 * with; then, from the most crowded row outwards, each row follows the one before by medians, so that as many lines as
 * can be run straight. Linear in boxes and lines but for the sorting of medians.
 */
export function placeAcross(rows: readonly (readonly Piece[])[]): void {
  for (let pass = 0; pass < passes; pass++) {
    for (const row of rows) draw(row, "below");
    for (const row of rows.toReversed()) draw(row, "above");
  }
  for (const row of rows) drawBoth(row);
  const anchor = mostCrowded(rows);
  for (const row of rows.slice(0, anchor).toReversed()) straighten(row, "above");
  for (const row of rows.slice(anchor + 1)) straighten(row, "below");
  // What one side left free follows the other.
  for (const row of rows.slice(0, anchor)) follow(row, "below", "above");
  for (const row of rows.slice(anchor + 1).toReversed()) follow(row, "above", "below");
  for (const row of rows) if (row.some(conclusionOf)) keepUnder(row);
  onWholePixels(rows);
}

/** Moves beams under what they bear, as far as it takes for their posts to go straight up. */
function keepUnder(row: readonly Piece[]): void {
  const wanted = (piece: Piece): Wanted => {
    const [tie] = piece.above;
    const upper = conclusionOf(piece);
    if (!tie || !upper) return { at: piece.x, weight: 1 };
    const inset = upper.width * corner;
    const [from, to] = [upper.x + inset - tie.here, upper.x + upper.width - inset - tie.here];
    return { at: Math.max(from, Math.min(to, piece.x)), weight: 2 };
  };
  settle(row, wanted, { by: "median" });
}

/** Where a box would stand with one of its lines straight, in px, and how much that counts: posts more than others. */
function pullOf(piece: Piece, { other, here, there }: Tie): readonly [at: number, weight: number] {
  const [lower, upper] = piece.row < other.row ? [piece, other] : [other, piece];
  const posts = (lower.above.length === 1 ? 2 : 1) * (upper.below.length === 1 ? 2 : 1);
  const bears = conclusionOf(lower) === upper ? 2 : 1;
  return [other.x + there - here, (posts * bears) / (upper.row - lower.row)];
}

interface Wanted {
  readonly at: number;
  readonly weight: number;
}

function meanOf(piece: Piece, ties: readonly Tie[]): Wanted {
  let [sum, weight] = [0, 0];
  for (const tie of ties) {
    const [at, own] = pullOf(piece, tie);
    sum += at * own;
    weight += own;
  }
  return weight === 0 ? { at: piece.x, weight: 0.05 } : { at: sum / weight, weight };
}

function draw(row: readonly Piece[], side: "above" | "below"): void {
  settle(row, (piece) => meanOf(piece, piece[side]));
}

function drawBoth(row: readonly Piece[]): void {
  settle(row, (piece) => meanOf(piece, [...piece.below, ...piece.above]));
}

function straighten(row: readonly Piece[], side: "above" | "below"): void {
  const wanted = (piece: Piece): Wanted => {
    const at = medianOf(piece[side].map((tie) => pullOf(piece, tie)[0]));
    return at === null ? { at: piece.x, weight: 0.05 } : { at, weight: piece[side].length === 1 ? 2 : 1 };
  };
  settle(row, wanted, { by: "median" });
}

/** Moves what has lines on one side alone, as far as its neighbours leave room. */
function follow(row: readonly Piece[], side: "above" | "below", other: "above" | "below"): void {
  const wanted = (piece: Piece): Wanted => {
    const at = piece[other].length > 0 ? null : medianOf(piece[side].map((tie) => pullOf(piece, tie)[0]));
    return at === null ? { at: piece.x, weight: 1000 } : { at, weight: 1 };
  };
  settle(row, wanted, { by: "median" });
}

function settle(row: readonly Piece[], wanted: (piece: Piece) => Wanted, how: Spreading = {}): void {
  let before: Piece | null = null;
  const wishes = row.map((piece) => {
    const step = before ? before.width + gapBetween(before, piece) : 0;
    before = piece;
    return { ...wanted(piece), step };
  });
  const places = spread(wishes, how);
  for (const [at, piece] of row.entries()) piece.x = places[at] ?? piece.x;
}

/** The row whose boxes need the most room: it moves the others, and they follow it. */
function mostCrowded(rows: readonly (readonly Piece[])[]): number {
  const needs = rows.map((row) => row.reduce((sum, { width }) => sum + width + gap, 0));
  return Math.max(0, needs.indexOf(Math.max(...needs)));
}

function onWholePixels(rows: readonly (readonly Piece[])[]): void {
  const starts = rows.flatMap(([first]) => (first ? [first.x - leftBound(first)] : []));
  const start = Math.min(...starts);
  for (const row of rows) {
    for (const piece of row) piece.x = Math.round(piece.x - start);
    standClear(row);
  }
}
