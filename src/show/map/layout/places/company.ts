import type { Piece, Plan } from "./plan.ts";

/** Tells boxes of one row that are rivals, or in conflict, whose company they keep: all that hang together keep one. */
export function joinCompany({ section, pieceOf }: Plan): void {
  for (const { boxes } of [...section.rivals, ...section.conflicts]) {
    const firstIn = new Map<number, Piece>();
    for (const piece of boxes.map(pieceOf)) {
      const first = firstIn.get(piece.row);
      if (first) join(first, piece);
      else firstIn.set(piece.row, piece);
    }
  }
  // Heads last: while groups are joined a head may itself come to follow another.
  for (const { boxes } of [...section.rivals, ...section.conflicts]) {
    for (const piece of boxes.map(pieceOf)) if (piece.company) piece.company = headOf(piece);
  }
}

function headOf(piece: Piece): Piece {
  let head = piece;
  while (head.company && head.company !== head) head = head.company;
  return head;
}

function join(a: Piece, b: Piece): void {
  const [one, other] = [headOf(a), headOf(b)];
  one.company = one;
  other.company = one;
}
