import type { TextPlace } from "../../../../show/desk/papers/taken.ts";
import type { Piece } from "../reader/paper.ts";

/** A part of a page in percent of its width and height, from its upper left corner. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** The texts that lie over the pages now shown, by page. */
export type Layers = Map<number, readonly Piece[]>;

/** Where some words of a page stand on it: a box for each line. */
export function boxesOf(
  seat: HTMLElement,
  pieces: readonly Piece[],
  start: number,
  end: number,
): readonly Box[] {
  const page = seat.getBoundingClientRect();
  if (page.width === 0) return [];
  const boxes: Box[] = [];
  for (const piece of pieces) {
    const part = partOf(piece, start, end);
    if (!part) continue;
    const range = document.createRange();
    range.setStart(part.node, part.from);
    range.setEnd(part.node, part.to);
    const { left, top, width, height } = range.getBoundingClientRect();
    const box = {
      left: (100 * (left - page.left)) / page.width,
      top: (100 * (top - page.top)) / page.height,
      width: (100 * width) / page.width,
      height: (100 * height) / page.height,
    };
    const last = boxes.at(-1);
    if (last && areOneLine(last, box)) boxes[boxes.length - 1] = joined(last, box);
    else if (width > 0) boxes.push(box);
  }
  return boxes;
}

function partOf(
  { span, start: at }: Piece,
  start: number,
  end: number,
): { readonly node: Node; readonly from: number; readonly to: number } | null {
  const node = span.firstChild;
  const length = node?.textContent?.length ?? 0;
  const from = Math.max(0, start - at);
  const to = Math.min(length, end - at);
  return node && from < to ? { node, from, to } : null;
}

function areOneLine(a: Box, b: Box): boolean {
  const shared = Math.min(a.top + a.height, b.top + b.height) - Math.max(a.top, b.top);
  const apart = Math.max(a.left, b.left) - Math.min(a.left + a.width, b.left + b.width);
  return shared > 0.5 * Math.min(a.height, b.height) && apart < 3;
}

function joined(a: Box, b: Box): Box {
  const [left, top] = [Math.min(a.left, b.left), Math.min(a.top, b.top)];
  return {
    left,
    top,
    width: Math.max(a.left + a.width, b.left + b.width) - left,
    height: Math.max(a.top + a.height, b.top + b.height) - top,
  };
}

/** A place in the text of a page, for a place in the window's document; of what lies before all text, null. */
export function placeAt(layers: Layers, node: Node, offset: number): TextPlace | null {
  const at = document.createRange();
  at.setStart(node, offset);
  let last: TextPlace | null = null;
  for (const [page, pieces] of [...layers].toSorted(([a], [b]) => a - b)) {
    for (const { span, start } of pieces) {
      if (!span.isConnected) continue;
      if (span.contains(node) && node !== span) return { pageIndex: page, at: start + offset };
      // The first that begins behind the place: what is between them is no text.
      if (at.comparePoint(span, 0) > 0) return last ?? { pageIndex: page, at: start };
      last = { pageIndex: page, at: start + (span.textContent?.length ?? 0) };
    }
  }
  return last;
}

/** The words selected in the window, from one place of the paper's text to another; null where none are. */
export function selectedIn(layers: Layers, seat: HTMLElement): readonly [TextPlace, TextPlace] | null {
  const selection = window.getSelection();
  if (!selection || selection.isCollapsed || selection.rangeCount === 0) return null;
  const range = selection.getRangeAt(0);
  if (!range.intersectsNode(seat) || range.toString().trim() === "") return null;
  const from = placeAt(layers, range.startContainer, range.startOffset);
  const to = placeAt(layers, range.endContainer, range.endOffset);
  return from && to ? [from, to] : null;
}

/** Selects words of a page in the window, as a pointer would. */
export function selectWords(pieces: readonly Piece[], start: number, end: number): void {
  const parts = pieces.flatMap((piece) => partOf(piece, start, end) ?? []);
  const [first, last] = [parts[0], parts.at(-1)];
  if (first && last) window.getSelection()?.setBaseAndExtent(first.node, first.from, last.node, last.to);
}
