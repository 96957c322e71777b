import type { Id } from "../../../../base/finding.ts";
import type { Scene } from "../../scene.ts";
import { middleOf, type Piece, type Side, type Strike } from "./plan.ts";

/** The gap between two boxes of a row, in px. */
export const gap = 40;
/** Least distance between two lines in a gutter, and between a line and a box it passes. */
export const lane = 8;
/** Distance from a box to where an attack on it or from it turns, so that its bar stands free. */
export const turn = 20;
/** How near to its corners lines meet an edge that has no ports, as a part of the edge. */
export const corner = 0.12;
/** Room left of the first box of a row. */
export const margin = 48;

/** The least gap between two neighbours of a row: more where attacks turn between them. */
export function gapBetween({ endsRight }: Piece, { endsLeft }: Piece): number {
  return Math.max(gap, roomFor(endsRight, endsLeft));
}

/** Moves boxes of a row to the right as far as they stand too close to what is left of them. */
export function standClear(row: readonly Piece[]): void {
  let before: Piece | null = null;
  for (const piece of row) {
    const least = before ? before.x + before.width + gapBetween(before, piece) : leftBound(piece);
    piece.x = Math.max(piece.x, Math.ceil(least));
    before = piece;
  }
}

/** What attacks that turn in a gutter need of it, beside one line that passes. */
export function roomFor(left: number, right: number): number {
  return inset(left) + lane * (left + right) + inset(right);
}

/** How near to a box the first line beside it may run. */
export function inset(ends: number): number {
  return ends > 0 ? turn : lane;
}

/** The least left edge of a row's first box. */
export function leftBound({ endsLeft }: Piece): number {
  return Math.max(margin, lane + roomFor(0, endsLeft));
}

/** Gives each attack its sides: those it had, else those that face each other; and counts the turns beside each box. */
export function chooseSides(strikes: readonly Strike[], before: Scene | null): void {
  const had = before ? sidesIn(before) : new Map<string, Side>();
  for (const strike of strikes) {
    const { attack, from, to } = strike;
    const facing = middleOf(to) < middleOf(from) ? "left" : "right";
    strike.fromSide = had.get(`${attack.id} from`) ?? facing;
    strike.toSide = had.get(`${attack.id} to`) ?? (facing === "left" || from === to ? "right" : "left");
    if (from === to) strike.fromSide = strike.toSide === "right" ? "left" : "right";
    if (isDirect(strike)) continue;
    turnBeside(from, strike.fromSide);
    turnBeside(to, strike.toSide);
  }
}

function turnBeside(piece: Piece, side: Side): void {
  if (side === "left") piece.endsLeft++;
  else piece.endsRight++;
}

/** Whether an attack runs level between neighbours of one row. */
export function isDirect({ from, to, fromSide, toSide }: Strike): boolean {
  if (from.row !== to.row || fromSide === toSide) return false;
  return to.place - from.place === (fromSide === "right" ? 1 : -1);
}

/** The sides that attacks leave and reach in an earlier scene, by the attack's id and its end. */
function sidesIn({ boxes, attacks }: Scene): ReadonlyMap<string, Side> {
  const byId = new Map<Id, { readonly x: number; readonly width: number }>(boxes.map((box) => [box.id, box]));
  const sides = new Map<string, Side>();
  for (const { line, from, to, points } of attacks) {
    const [first, last, source, target] = [points[0], points.at(-1), byId.get(from), byId.get(to)];
    if (!first || !last || !source || !target) continue;
    if (first.x === source.x) sides.set(`${line} from`, "left");
    else if (first.x === source.x + source.width) sides.set(`${line} from`, "right");
    if (last.x < target.x) sides.set(`${line} to`, "left");
    else if (last.x > target.x + target.width) sides.set(`${line} to`, "right");
  }
  return sides;
}
