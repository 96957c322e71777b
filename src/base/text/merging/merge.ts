import { lineHunks } from "./hunks.ts";
import type { LineHunk } from "./hunks.ts";
import { mannerOf } from "./manner.ts";
import type { Manner } from "./manner.ts";

/** A stretch of a text that two people changed: what both have, what one changed, or what clashes. */
export type MergePiece =
  /** `by` says who changed it; null where nobody did. */
  | { readonly is: "agreed"; readonly text: string; readonly by: "mine" | "theirs" | "both" | null }
  | ({ readonly is: "clash" } & TextClash);

/** What stood at one place, and what each made of it; `line` is its first line in `base`, counted from 1. */
export interface TextClash {
  readonly line: number;
  readonly base: string;
  readonly mine: string;
  readonly theirs: string;
}

/** Two changed texts as one, or the places where they cannot be. */
export type MergedText = { readonly text: string } | { readonly conflicts: readonly TextClash[] };

/**
 * Two texts that were made from a third, as one; whole lines are compared, and changes of neighbouring lines go
 * together. Line ends and a byte-order mark that only one side changed are changed throughout.
 */
export function mergedText(base: string, mine: string, theirs: string): MergedText {
  if (mine === theirs || theirs === base) return { text: mine };
  if (mine === base) return { text: theirs };
  const pieces = mergePieces(base, mine, theirs);
  const conflicts = pieces.flatMap((piece): readonly TextClash[] => {
    if (piece.is === "agreed") return [];
    const { is: _, ...clash } = piece;
    return [clash];
  });
  if (conflicts.length > 0) return { conflicts };
  return { text: pieces.map((piece) => (piece.is === "agreed" ? piece.text : "")).join("") };
}

/**
 * The same, piece by piece in the order of the text. With `touching`, lines put in beside lines that went are
 * no clash: what they then belong to is to be looked at.
 */
export function mergePieces(
  base: string,
  mine: string,
  theirs: string,
  touching = false,
): readonly MergePiece[] {
  const manner = mannerOf(base, mine, theirs);
  const [old, own, other] = [manner.lines(base), manner.lines(mine), manner.lines(theirs)];
  const write = (lines: readonly string[]): string => lines.join("").replaceAll("\n", manner.end);
  const groups = grouped(hunks(old, own, "mine"), hunks(old, other, "theirs"), touching);
  const pieces: MergePiece[] = [];
  const agreed = (lines: readonly string[], by: "mine" | "theirs" | "both" | null): void => {
    if (lines.length > 0 || by !== null) pieces.push({ is: "agreed", text: write(lines), by });
  };
  let at = 0;
  for (const { start, end: stop, sides } of groups) {
    agreed(old.slice(at, start), null);
    at = stop;
    const made = (side: Side): readonly string[] | null =>
      sideIn(sides, side, start, stop, side === "mine" ? own : other);
    const [one, two] = [made("mine"), made("theirs")];
    if (one === null) agreed(two ?? [], "theirs");
    else if (two === null) agreed(one, "mine");
    else if (one.join("") === two.join("")) agreed(one, "both");
    else {
      const was = write(old.slice(start, stop));
      pieces.push({ is: "clash", line: start + 1, base: was, mine: write(one), theirs: write(two) });
    }
  }
  agreed(old.slice(at), null);
  return finished(pieces, manner);
}

/** The end of the last line as it is to be, and the byte-order mark in front. */
function finished(pieces: readonly MergePiece[], { mark, finish }: Manner): readonly MergePiece[] {
  const last = pieces.findLastIndex((piece) => piece.is === "clash" || piece.text !== "");
  const all = pieces.map((piece, place): MergePiece => {
    if (place !== last) return piece;
    if (piece.is === "agreed") return { ...piece, text: finish(piece.text) };
    const { base, mine, theirs } = piece;
    return { ...piece, base: finish(base), mine: finish(mine), theirs: finish(theirs) };
  });
  return mark === "" ? all : [{ is: "agreed", text: mark, by: null }, ...all];
}

type Side = "mine" | "theirs";

interface Hunk extends LineHunk {
  readonly side: Side;
}

interface Group {
  readonly start: number;
  readonly end: number;
  readonly sides: readonly Hunk[];
}

function hunks(base: readonly string[], made: readonly string[], side: Side): readonly Hunk[] {
  return lineHunks(base, made).map((hunk) => ({ ...hunk, side }));
}

/** Hunks of both sides in the order of the text, those that meet in one group. */
function grouped(mine: readonly Hunk[], theirs: readonly Hunk[], touching: boolean): readonly Group[] {
  const groups: { start: number; end: number; sides: Hunk[] }[] = [];
  for (const hunk of [...mine, ...theirs].toSorted((a, b) => a.start - b.start || a.end - b.end)) {
    const last = groups.at(-1);
    if (last?.sides.some((one) => one.side !== hunk.side && meet(one, hunk, touching))) {
      last.end = Math.max(last.end, hunk.end);
      last.sides.push(hunk);
    } else groups.push({ start: hunk.start, end: hunk.end, sides: [hunk] });
  }
  return groups;
}

/** Whether two changes are of one place; lines put in beside a change that is as long as before are not. */
function meet(a: Hunk, b: Hunk, touching: boolean): boolean {
  if (a.start < b.end && b.start < a.end) return true;
  const [putInA, putInB] = [a.start === a.end, b.start === b.end];
  if (putInA && putInB) return a.start === b.start;
  if (touching || (!putInA && !putInB)) return false;
  const [put, other] = putInA ? [a, b] : [b, a];
  return (
    (put.start === other.start || put.start === other.end) &&
    other.to - other.from !== other.end - other.start
  );
}

/** The lines that one side has for a group's lines of the base; null where it changed none of them. */
function sideIn(
  hunks: readonly Hunk[],
  side: Side,
  start: number,
  end: number,
  lines: readonly string[],
): readonly string[] | null {
  const own = hunks.filter((one) => one.side === side);
  const [first, last] = [own[0], own.at(-1)];
  if (!first || !last) return null;
  return lines.slice(first.from - (first.start - start), last.to + (end - last.end));
}
