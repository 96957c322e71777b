import { gapBetween } from "./gaps.ts";
import { joinCompany } from "./company.ts";
import { crossingsOf, crossingsSaved } from "./crossings.ts";
import { conclusionOf, middleOf, type Piece, type Plan, type Tie } from "./plan.ts";
import { medianOf, spread } from "./spread.ts";

/** Sweeps of medians, each down and up. */
const sweeps = 4;
/** Passes of swaps over a row at most. */
const passes = 12;

/**
 * The order of each row along the ground: things as they are given, the others by the medians of what they rest on, then
 * sweeps of medians down and up with swaps where they remove crossings (Sugiyama, Tagawa and Toda 1981, from memory; Gansner
 * and others 1993, from memory). Of all sweeps the one with the fewest crossings; leaves rough places in `x`.
 */
export function orderOf(plan: Plan): readonly (readonly Piece[])[] {
  let rows = plan.rows.map((row) => [...row]);
  joinCompany(plan);
  for (const [at, row] of rows.entries()) {
    sortRow(row, "below", true);
    gather(rows[at - 1] ?? []);
  }
  let best = kept(rows);
  for (let sweep = 0; sweep < sweeps && best.crossings > 0; sweep++) {
    for (const side of ["above", "below"] as const) {
      for (const [at, row] of side === "above" ? [...rows.entries()].reverse() : rows.entries()) {
        sortRow(row, side, false);
        swap(row);
        // What bears it follows, beside each other.
        if (side === "below") gather(rows[at - 1] ?? []);
      }
    }
    const now = kept(rows);
    if (now.crossings < best.crossings) best = now;
  }
  rows = best.rows.map((row) => row.map(({ piece, x }) => Object.assign(piece, { x })));
  return rows;
}

interface Kept {
  readonly crossings: number;
  readonly rows: readonly (readonly { readonly piece: Piece; readonly x: number }[])[];
}

function kept(rows: readonly (readonly Piece[])[]): Kept {
  return {
    crossings: crossingsOf(rows),
    rows: rows.map((row) => row.map((piece) => ({ piece, x: piece.x }))),
  };
}

/** Whether a row's order is that of the corpus and stays. */
function isGround(row: readonly Piece[]): boolean {
  return row.some(({ box }) => box.band === "things");
}

/** Sorts a row by the medians of its lines one way; a box with none that way stays where it was, or beside its neighbour. */
function sortRow(row: Piece[], side: "above" | "below", start: boolean): void {
  let last = 0;
  const keys = new Map<Piece, number>();
  for (const piece of row) {
    const own = medianOf(piece[side].map(({ other, there }: Tie) => other.x + there));
    last = own ?? (start ? last : middleOf(piece));
    keys.set(piece, last);
  }
  const key = (piece: Piece): number => keys.get(piece) ?? 0;
  if (!isGround(row)) row.sort((a, b) => key(a) - key(b));
  settle(row, key);
  if (side === "above") gather(row);
  gatherCompany(row);
}

/** Brings rivals of one row, and measurements in conflict, side by side. */
function gatherCompany(row: Piece[]): void {
  if (isGround(row) || !row.some(({ company }) => company)) return;
  const members = new Map<Piece, number[]>();
  for (const piece of row) {
    const own = members.get(piece.company ?? piece) ?? [];
    own.push(middleOf(piece));
    members.set(piece.company ?? piece, own);
  }
  const keys = new Map([...members].map(([head, middles]) => [head, medianOf(middles) ?? 0]));
  const place = new Map(row.map((piece, at) => [piece.company ?? piece, at]));
  const key = (piece: Piece): number => keys.get(piece.company ?? piece) ?? 0;
  const last = (piece: Piece): number => place.get(piece.company ?? piece) ?? 0;
  row.sort((a, b) => key(a) - key(b) || last(a) - last(b) || middleOf(a) - middleOf(b));
  settle(row, key);
}

/** Brings the beams of one conclusion side by side under it, in the order of what they rest on. */
function gather(row: Piece[]): void {
  if (!row.some((piece) => conclusionOf(piece))) return;
  const own = new Map(row.map((piece) => [piece, middleOf(piece)]));
  const rests = new Map(
    row.map((piece) => [piece, medianOf(piece.below.map(({ other, there }) => other.x + there))]),
  );
  const over = (piece: Piece): number => middleOf(conclusionOf(piece) ?? piece);
  const under = (piece: Piece): number => rests.get(piece) ?? own.get(piece) ?? 0;
  row.sort((a, b) => over(a) - over(b) || under(a) - under(b));
  settle(row, over);
}

function settle(row: readonly Piece[], middle: (piece: Piece) => number): void {
  let before: Piece | null = null;
  const wishes = row.map((piece) => {
    const step = before ? before.width + gapBetween(before, piece) : 0;
    before = piece;
    return { at: middle(piece) - piece.width / 2, weight: 1, step };
  });
  spread(wishes).forEach((x, at) => Object.assign(row[at] ?? {}, { x }));
}

/** Whether two neighbours may change places: what stands side by side stays so. */
function mayChange(left: Piece, right: Piece): boolean {
  return left.company === right.company && conclusionOf(left) === conclusionOf(right);
}

function swap(row: Piece[]): void {
  if (isGround(row)) return;
  for (let pass = 0, swapped = true; swapped && pass < passes; pass++) {
    swapped = false;
    for (let at = 1; at < row.length; at++) {
      const [left, right] = [row[at - 1], row[at]];
      if (!left || !right || !mayChange(left, right)) continue;
      if (crossingsSaved(left, right) <= 0) continue;
      row.splice(at - 1, 2, right, left);
      // The pair keeps the room it had together.
      const end = right.x + right.width;
      right.x = left.x;
      left.x = end - left.width;
      swapped = true;
    }
  }
}
