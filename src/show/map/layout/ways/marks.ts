import { say } from "../../../../base/text/said/said.ts";
import type { Text } from "../../../../base/text/said/said.ts";
import { isRightToLeft, textWidth } from "../../letters/letters.ts";
import { pieceFor, type Piece } from "../places/plan.ts";
import { bundlesOf, inOrderOfPlace, spotOf } from "./bundles.ts";
import type { Foot, Knot } from "./wire.ts";

/** One end of what is cut: the box it stays at, and the mark it ends in. */
export interface Stub {
  readonly knot: Knot;
  /** Further lines that share the stub and its mark. */
  readonly also: readonly Knot[];
  readonly side: "from" | "to";
  readonly foot: Foot;
  /** The row over which the mark stands; -1 under the lowest. */
  readonly slot: number;
  readonly mark: Piece;
}

/** Height of a mark, in px. */
export const markHeight = 20;
const padding = 8;

/** The marks of all that is cut, the same letter at both ends; where several lines end, one mark for them. */
export function stubsOf(
  knots: readonly Knot[],
  heights: readonly number[],
  told: (text: Text) => string,
): readonly Stub[] {
  const bundles = inOrderOfPlace(bundlesOf(knots.filter(({ cut }) => cut)));
  return bundles.flatMap(({ knots: [first, ...rest], shared }, at): readonly Stub[] => {
    if (!first) return [];
    const letter = letterFor(at);
    const stub = (knot: Knot, side: Stub["side"], also: readonly Knot[] = []): Stub =>
      stubFor({ knot, side, also, letter, heights, told });
    if (!shared) return [stub(first, "from"), stub(first, "to")];
    const far = otherOf(shared);
    return [stub(first, shared, rest), ...[first, ...rest].map((knot) => stub(knot, far))];
  });
}

function otherOf(side: Stub["side"]): Stub["side"] {
  return side === "from" ? "to" : "from";
}

interface Cutting extends Pick<Stub, "knot" | "side" | "also"> {
  readonly letter: string;
  readonly heights: readonly number[];
  readonly told: (text: Text) => string;
}

function stubFor({ knot, side, also, letter, heights, told }: Cutting): Stub {
  // A stub for lines of several ports meets the edge between them.
  const isOnePort = also.every((one) => one[side].port === knot[side].port);
  const foot = isOnePort ? knot[side] : { ...knot[side], port: "" };
  const other = knot[otherOf(side)].piece.box;
  const { slot } = spotOf(foot);
  const words = `${told(markWords(knot, other.title))}${also.length > 0 ? ` +${also.length}` : ""}`;
  const mark = pieceFor(
    {
      id: `mark:${knot.name}:${side}`,
      records: [],
      title: words,
      band: foot.piece.box.band,
      row: between(heights, slot),
      width: Math.ceil(textWidth(`${letter}: ${words}`, "sans", 13)) + 2 * padding,
      height: markHeight,
      ports: [],
      folded: null,
      look: {
        as: "mark",
        letter,
        words: { lines: [words], rtl: isRightToLeft(words), lang: null },
        to: other.id,
        collision: knot.joins === "circle" ? null : knot.joins,
      },
    },
    slot,
  );
  return { knot, also, side, foot, slot, mark };
}

function markWords({ joins }: Knot, title: string): Text {
  switch (joins) {
    case null:
      return title;
    case "circle":
      return say`circle: ${title}`;
    case "rivals":
      return say`not both: ${title}`;
    case "conflict":
      return say`disagrees: ${title}`;
  }
}

function between(heights: readonly number[], slot: number): number {
  const [low, high] = [heights[slot], heights[slot + 1]];
  if (low === undefined) return (high ?? 0) - 0.5;
  return high === undefined ? low + 0.5 : (low + high) / 2;
}

/** A, B … Z, AA, AB …: the letter of the n-th mark, counted from 0. */
export function letterFor(at: number): string {
  const rest = Math.floor(at / 26);
  return (rest > 0 ? letterFor(rest - 1) : "") + String.fromCharCode(65 + (at % 26));
}
