import type { Id } from "../../../../base/finding.ts";
import type { Attack, Box, Line, Section } from "../../scene.ts";

/** What takes up room in a row or between rows; `x` is its left edge in px. */
export interface Slab {
  readonly width: number;
  readonly height: number;
  x: number;
  /** The tier it stands in and its place there, counted from the left. */
  tier: number;
  place: number;
}

/** A box while it is given its place. */
export interface Piece extends Slab {
  readonly box: Box;
  /** Its row, counted from the lowest. */
  readonly row: number;
  /** What it rests on, and what rests on it. */
  readonly below: Tie[];
  readonly above: Tie[];
  /** How many attacks turn beside it, left and right. */
  endsLeft: number;
  endsRight: number;
  /** The first of the rivals, or of the measurements in conflict, it is to stand beside. */
  company: Piece | null;
}

/** A line as one of its boxes sees it: the other box, and where it meets either, in px from its left edge. */
export interface Tie {
  readonly other: Piece;
  readonly here: number;
  readonly there: number;
}

/** A line with its boxes. */
export interface Pull {
  readonly line: Line;
  readonly from: Piece;
  readonly to: Piece;
}

/** An attack with its boxes, and the sides it leaves and reaches. */
export interface Strike {
  readonly attack: Attack;
  readonly from: Piece;
  readonly to: Piece;
  fromSide: Side;
  toSide: Side;
}

/** A side of a box. */
export type Side = "left" | "right";

/** A section with its boxes in rows from the lowest up, each in the order given. */
export interface Plan {
  readonly section: Section;
  readonly rows: readonly (readonly Piece[])[];
  readonly pieceOf: (id: Id) => Piece;
  readonly pulls: readonly Pull[];
  readonly strikes: readonly Strike[];
}

/** Lays out who stands in which row and on whom; nothing has a place yet. */
export function planOf(section: Section): Plan {
  const heights = [...new Set(section.boxes.map(({ row }) => row))].sort((a, b) => a - b);
  const rowOf = new Map(heights.map((height, row) => [height, row]));
  const pieces = section.boxes.map((box) => pieceFor(box, rowOf.get(box.row) ?? 0));
  const byId = new Map(pieces.map((piece) => [piece.box.id, piece]));
  const pieceOf = (id: Id): Piece => {
    const piece = byId.get(id);
    if (!piece) throw new Error(`A line of the section meets no box: ${id}`);
    return piece;
  };
  const pulls = section.lines.map((line) => ({
    line,
    from: pieceOf(line.from.box),
    to: pieceOf(line.to.box),
  }));
  for (const pull of pulls) if (goesUp(pull)) tie(pull);
  const rows: Piece[][] = heights.map(() => []);
  for (const piece of pieces) rows[piece.row]?.push(piece);
  const strikes = section.attacks.map((attack): Strike => {
    const [from, to] = [pieceOf(attack.from), pieceOf(attack.to)];
    return { attack, from, to, fromSide: "right", toSide: "left" };
  });
  return { section, rows, pieceOf, pulls, strikes };
}

/** A box without a place. */
export function pieceFor(box: Box, row: number): Piece {
  const { width, height } = box;
  return {
    box,
    row,
    width,
    height,
    x: 0,
    tier: 0,
    place: 0,
    below: [],
    above: [],
    endsLeft: 0,
    endsRight: 0,
    company: null,
  };
}

/** Whether a line can be drawn upwards: it closes no circle, and its upper box is in a higher row. */
export function goesUp({ line, from, to }: Pull): boolean {
  return !line.circle && from.row < to.row;
}

function tie({ line, from, to }: Pull): void {
  const low = portMiddle(from.box, "top", line.from.port);
  const high = portMiddle(to.box, "bottom", line.to.port);
  from.above.push({ other: to, here: low, there: high });
  to.below.push({ other: from, here: high, there: low });
}

/** The middle of a port, or of the edge where there is no such port, in px from the box's left edge. */
export function portMiddle(box: Box, edge: "top" | "bottom", name: Id): number {
  const port = box.ports.find((one) => one.edge === edge && one.name === name);
  return port ? (port.from + port.to) / 2 : box.width / 2;
}

/** The middle of a slab, in px. */
export function middleOf({ x, width }: Slab): number {
  return x + width / 2;
}

/** What a beam bears, if it is one and bears one thing. */
export function conclusionOf({ box, above }: Piece): Piece | null {
  return box.look.as === "beam" && above.length === 1 ? (above[0]?.other ?? null) : null;
}
