import { row, say } from "../../base/text/said/said.ts";
import type { Block as Piece, Field, FieldRow } from "../../show/desk/visit/blocks/block.ts";
import type { Block, Inlines, Manuscript } from "../../show/telling/blocks/block.ts";

/** A visit sheet as a text, to be printed or written into with a word processor; earlier values only where they are pieces of it. */
export function visitText(pieces: readonly Piece[]): Manuscript {
  const title = pieces.flatMap((one) => (one.is === "title" ? [one.text] : []))[0] ?? "";
  return { title, authors: [], language: "en", blocks: pieces.flatMap(blocksOf), computations: [] };
}

function blocksOf(piece: Piece): readonly Block[] {
  switch (piece.is) {
    case "title":
      return [{ is: "paragraph", of: [piece.lead] }];
    case "heading": {
      const apart = piece.apart ? { apart: true as const } : {};
      return [{ is: "heading", level: piece.level === 2 ? 1 : 2, of: [piece.text], ...apart }];
    }
    case "text":
      return [{ is: "paragraph", of: piece.strong ? [{ is: "strong", of: [piece.text] }] : [piece.text] }];
    case "terms":
      return [{ is: "terms", rows: piece.rows.map(([name, value]) => [[name], [value]] as const) }];
    case "list":
      return [{ is: "list", ordered: false, items: piece.items.map((one) => [one]) }];
    case "row":
      return rowBlocks(piece.row);
    case "room":
      return [piece];
  }
}

/** A row with a line to write on for each of its fields; readings share one. */
function rowBlocks({ name, says, fields }: FieldRow): readonly Block[] {
  const readings = fields.filter((one) => one.is === "figure");
  const others = fields.filter((one) => one.is !== "figure");
  const rows: readonly (readonly [Inlines, Inlines])[] = [
    ...(readings.length > 0 ? [[[say`readings`], [readings.map(() => blank(9)).join("   ")]] as const] : []),
    ...others.map((one) => [[one.label], written(one)] as const),
  ];
  return [
    { is: "heading", level: 2, of: [name] },
    ...(says.length > 0 ? [{ is: "paragraph", of: [say`${row(says, "comma")}`] } as const] : []),
    { is: "terms", rows },
  ];
}

/** A line to write on, what stands on it already, or the choices with a box to tick. */
function written({ is, choices, value }: Field): Inlines {
  if (is !== "choice") return [value === "" ? blank(48) : value];
  const offered = choices.filter((one) => one.value !== "");
  const chosen = offered.find((one) => one.value === value);
  return offered.flatMap((one, place): Inlines => [
    `${place === 0 ? "" : "   "}${one === chosen ? "☒" : "☐"} `,
    one.text,
  ]);
}

const blank = (letters: number): string => "_".repeat(letters);
