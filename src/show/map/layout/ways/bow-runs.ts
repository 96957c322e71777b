import type { Id } from "../../../../base/finding.ts";
import { textWidth } from "../../letters/letters.ts";
import type { Rivals } from "../../scene.ts";
import type { Piece, Plan, Slab } from "../places/plan.ts";
import { screen } from "./wire.ts";

/** Rivals, or measurements in conflict, that one bow joins, or two that none can. */
export interface BowRun {
  readonly id: Id;
  readonly kind: "rivals" | "conflict";
  readonly pieces: readonly Piece[];
}

/** A bow over its row, with the room of its word. */
export interface Span {
  readonly run: BowRun;
  readonly row: number;
  /** How many bows of the row lie under it. */
  readonly level: number;
  readonly word: Slab;
}

/** Height of a bow with its word, in px. */
export const bowHeight = 28;

/** What bows join, and what they cannot: the rest of each group is chained by marks, so that all are tied to all. */
export function bowRunsOf({ section, pieceOf }: Plan): {
  readonly joined: readonly BowRun[];
  readonly apart: readonly BowRun[];
} {
  const all = [
    ...section.rivals.map((group) => runsOf(group, "rivals", pieceOf)),
    ...section.conflicts.map((group) => runsOf(group, "conflict", pieceOf)),
  ];
  return { joined: all.flatMap(({ joined }) => joined), apart: all.flatMap(({ apart }) => apart) };
}

function runsOf(
  { id, boxes }: Rivals,
  kind: BowRun["kind"],
  pieceOf: (id: Id) => Piece,
): { readonly joined: readonly BowRun[]; readonly apart: readonly BowRun[] } {
  const pieces = [...new Set(boxes)].map(pieceOf).sort((a, b) => a.row - b.row || a.place - b.place);
  const runs: Piece[][] = [];
  const apart: BowRun[] = [];
  for (const piece of pieces) {
    const last = runs.at(-1)?.at(-1);
    if (last && isNear(last, piece, kind)) runs.at(-1)?.push(piece);
    else {
      if (last) apart.push({ id, kind, pieces: [last, piece] });
      runs.push([piece]);
    }
  }
  const joined = runs.filter((run) => run.length > 1).map((run) => ({ id, kind, pieces: run }));
  return { joined, apart };
}

function isNear(left: Piece, right: Piece, kind: BowRun["kind"]): boolean {
  if (left.row !== right.row) return false;
  return kind === "conflict" ? right.place === left.place + 1 : right.x - left.x - left.width <= screen;
}

/** The bows over rows, lower ones first where they would meet. */
export function spansOf(joined: readonly BowRun[]): readonly Span[] {
  const spans: Span[] = [];
  for (const run of joined) {
    const [first, last] = [run.pieces[0], run.pieces.at(-1)];
    if (run.kind !== "rivals" || !first || !last) continue;
    const over = spans.filter((span) => span.row === first.row && meets(span.run, first, last));
    const level = over.reduce((most, span) => Math.max(most, span.level + 1), 0);
    const width = Math.ceil(textWidth("not both", "sans", 13)) + 16;
    const x = (first.x + first.width + last.x - width) / 2;
    spans.push({ run, row: first.row, level, word: { x, width, height: bowHeight, tier: 0, place: 0 } });
  }
  return spans;
}

function meets({ pieces }: BowRun, first: Piece, last: Piece): boolean {
  const [left, right] = [pieces[0], pieces.at(-1)];
  return (
    left !== undefined &&
    right !== undefined &&
    left.x <= last.x + last.width &&
    first.x <= right.x + right.width
  );
}
