import { differing } from "../../base/text/edit.ts";
import type { Piece } from "./pieces.ts";

/** A text with its items. */
export interface Cut {
  readonly text: string;
  readonly pieces: readonly Piece[];
}

/**
 * For each item of a text the place, among the items of an earlier one, of an item that reads the same; -1 where there is
 * none. What stands before the first and behind the last difference is not looked at sign by sign.
 */
export function placesBefore(was: Cut, is: Cut): readonly number[] {
  const { start, end } = differing(was.text, is.text);
  const by = is.text.length - was.text.length;
  const most = Math.min(was.pieces.length, is.pieces.length);
  const [ends, begins] = [was.pieces.length, is.pieces.length];
  const found = is.pieces.map(() => -1);
  const isAlike = (one: Piece | undefined, other: Piece | undefined, further: number): boolean =>
    one?.list === other?.list &&
    one?.start === (other?.start ?? 0) + further &&
    one.end === (other?.end ?? 0) + further;
  let before = 0;
  for (; before < most && (was.pieces[before]?.end ?? 0) <= start; before++) {
    if (!isAlike(is.pieces[before], was.pieces[before], 0)) break;
    found[before] = before;
  }
  let behind = 0;
  for (; behind < most - before && (was.pieces[ends - 1 - behind]?.start ?? 0) >= end; behind++) {
    if (!isAlike(is.pieces[begins - 1 - behind], was.pieces[ends - 1 - behind], by)) break;
    found[begins - 1 - behind] = ends - 1 - behind;
  }
  const between = new Map<string, number>();
  for (let at = before; at < ends - behind; at++) between.set(wordsOf(was, at), at);
  for (let at = before; at < begins - behind; at++) found[at] = between.get(wordsOf(is, at)) ?? -1;
  return found;
}

function wordsOf({ text, pieces }: Cut, place: number): string {
  const piece = pieces[place];
  return piece ? `${piece.list}\n${text.slice(piece.start, piece.end)}` : "";
}
