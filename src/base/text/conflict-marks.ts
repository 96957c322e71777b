/** A text in which version control left the readings of two sides, marked: what both have, and where they differ. */
export interface Marked {
  readonly pieces: readonly MarkedPiece[];
  /** What the sides are called where they are marked; empty where nothing is said. */
  readonly names: { readonly mine: string; readonly theirs: string };
  /** Whether every difference also tells what stood there before. */
  readonly hasBase: boolean;
}

/** Lines that both sides have, or lines that differ; `start` and `end` take the marks in, in UTF-16 units. */
export type MarkedPiece =
  | { readonly is: "same"; readonly text: string }
  | {
      readonly is: "differs";
      readonly start: number;
      readonly end: number;
      readonly mine: string;
      readonly base: string | null;
      readonly theirs: string;
    };

/** A line that is a mark: which sign, how many of it, and what it is followed by. */
interface Mark {
  readonly sign: string;
  readonly size: number;
  readonly name: string;
  /** Where the line begins and ends, in UTF-16 units; a byte-order mark before it is no part of it. */
  readonly start: number;
  readonly end: number;
}

/** The marks of one difference; version control leaves out `base` unless it is asked for. */
interface Block {
  readonly mine: Mark;
  readonly base: Mark | null;
  readonly theirs: Mark;
  readonly close: Mark;
}

/**
 * A mark has seven signs, and more where version control is told so, merges what both sides were made from, or a version
 * has marks itself; so many are looked for.
 */
const markLine = /^(\ufeff?)((?:<{7,100}|\|{7,100}|={7,100}|>{7,100}))(?:[ \t]([^\r\n]*))?\r?$/gmu;

/** The two sides of a text with conflict marks; null where none are whole. Marks of other lengths inside a difference are text. */
export function markedIn(text: string): Marked | null {
  if (!/^\ufeff?<{7}/mu.test(text)) return null;
  const blocks = blocksIn(marksIn(text));
  const [first] = blocks;
  if (!first) return null;
  const pieces: MarkedPiece[] = [];
  let at = 0;
  for (const { mine, base, theirs, close } of blocks) {
    pieces.push({ is: "same", text: text.slice(at, mine.start) });
    pieces.push({
      is: "differs",
      start: mine.start,
      end: close.end,
      mine: text.slice(mine.end, (base ?? theirs).start),
      base: base && text.slice(base.end, theirs.start),
      theirs: text.slice(theirs.end, close.start),
    });
    at = close.end;
  }
  pieces.push({ is: "same", text: text.slice(at) });
  const called = (of: "mine" | "close"): string => blocks.find((one) => one[of].name !== "")?.[of].name ?? "";
  return {
    pieces: pieces.filter((one) => one.is === "differs" || one.text !== ""),
    names: { mine: called("mine"), theirs: called("close") },
    hasBase: blocks.every(({ base }) => base !== null),
  };
}

function marksIn(text: string): readonly Mark[] {
  return [...text.matchAll(markLine)].map((found) => {
    const [line, before = "", signs = "", name = ""] = found;
    const end = found.index + line.length;
    return {
      sign: signs.charAt(0),
      size: signs.length,
      name: name.trim(),
      start: found.index + before.length,
      end: text[end] === "\n" ? end + 1 : end,
    };
  });
}

/** Differences of every length of marks. A mark inside a difference with longer ones is text of a version. */
function blocksIn(marks: readonly Mark[]): readonly Block[] {
  const bySize = new Map<number, Mark[]>();
  for (const mark of marks) {
    const own = bySize.get(mark.size) ?? [];
    own.push(mark);
    bySize.set(mark.size, own);
  }
  let all: readonly Block[] = [];
  for (const [, own] of [...bySize].toSorted(([a], [b]) => b - a))
    all = outermost([...all, ...blocksOf(outside(own, all))]);
  return all;
}

/** Marks of one length that follow one another as those of a difference do. */
function blocksOf(marks: readonly Mark[]): readonly Block[] {
  let open: { mine: Mark; base: Mark | null; theirs: Mark | null } | null = null;
  const blocks: Block[] = [];
  for (const mark of marks) {
    if (mark.sign === "<") open = { mine: mark, base: null, theirs: null };
    else if (open && mark.sign === "|" && !open.base && !open.theirs) open.base = mark;
    else if (open && mark.sign === "=" && !open.theirs) open.theirs = mark;
    else if (open?.theirs && mark.sign === ">") {
      blocks.push({ mine: open.mine, base: open.base, theirs: open.theirs, close: mark });
      open = null;
    }
  }
  return blocks;
}

/** The marks that lie in none of some differences, both in the order of the text. */
function outside(marks: readonly Mark[], blocks: readonly Block[]): readonly Mark[] {
  let place = 0;
  return marks.filter(({ start }) => {
    while ((blocks[place]?.close.end ?? Infinity) <= start) place++;
    return start < (blocks[place]?.mine.start ?? Infinity);
  });
}

/** Of differences that lie in others, the outer ones, in the order of the text. */
function outermost(blocks: readonly Block[]): readonly Block[] {
  const kept: Block[] = [];
  for (const one of blocks.toSorted((a, b) => a.mine.start - b.mine.start))
    if (one.mine.start >= (kept.at(-1)?.close.end ?? 0)) kept.push(one);
  return kept;
}

/** One side's whole text, as it was before the two met; of `base` null where it is not told everywhere. */
export function sideOf(marked: Marked, side: "mine" | "theirs"): string;
export function sideOf(marked: Marked, side: "mine" | "base" | "theirs"): string | null;
export function sideOf(marked: Marked, side: "mine" | "base" | "theirs"): string | null {
  if (side === "base" && !marked.hasBase) return null;
  return marked.pieces.map((one) => (one.is === "same" ? one.text : (one[side] ?? ""))).join("");
}
