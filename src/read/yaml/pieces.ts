import { listNames } from "../grammar/kinds.ts";
import type { ListName } from "../grammar/field.ts";
import { readYaml } from "./text.ts";
import { isEmpty } from "./tree.ts";
import type { Entry, MapNode, Node } from "./tree.ts";

/** An item of one of a file's lists, as whole lines of its text. */
export interface Piece {
  readonly list: ListName;
  readonly start: number;
  readonly end: number;
}

/** A file that is nothing but a source and lists of records, one under another: its items can be read by themselves. */
export interface Pieces {
  readonly source: Entry | null;
  readonly pieces: readonly Piece[];
}

/** A text of this many signs or more is worth reading, and changing, item by item. */
export const large = 16_000;

const blank = /^ *(?:#.*)?$/u;
const head = /^([a-z]+):(?: +#.*| *)$/u;
const sourceLine = /^(source: +)([A-Za-z0-9][\w./-]*) *$/u;
const dash = /^( *)-(?: |$)/u;
/** What stands before and after a sign by which something is named in one item and meant in another. */
const [beforeShared, afterShared] = [/^[\s[{,:-]?$/u, /^\S$/u];

/** A key that has a line of its own: where it has no value, its item ends further on in the whole than by itself. */
const keyAlone = /^ *(?:- +)*\?(?=\s)/mu;

function isShared(text: string): boolean {
  for (const sign of ["&", "*"])
    for (let at = text.indexOf(sign); at >= 0; at = text.indexOf(sign, at + 1))
      if (beforeShared.test(text.charAt(at - 1)) && afterShared.test(text.charAt(at + 1))) return true;
  return false;
}

/**
 * The items of the lists of a text; null where their reading could depend on what stands around them. A line that begins
 * with the dash of its list ends whatever was begun before it; what is left open there is unreadable by itself, too.
 */
export function piecesOf(text: string): Pieces | null {
  if (text.length < large) return cut(text);
  // A text is read before it is changed.
  const pieces = last?.text === text ? last.pieces : cut(text);
  last = { text, pieces };
  return pieces;
}

/** The large text that was cut last. */
let last: { readonly text: string; readonly pieces: Pieces | null } | null = null;

function cut(text: string): Pieces | null {
  const isOdd = text.startsWith("\ufeff") || (text.includes("\r") && /\r(?!\n)/u.test(text));
  if (isOdd || isShared(text)) return null;
  const met = new Set<string>();
  const pieces: Piece[] = [];
  let source: Entry | null = null;
  let list: ListName | null = null;
  let column: number | null = null;
  let begun: number | null = null;
  const close = (end: number): void => {
    if (list !== null && begun !== null) pieces.push({ list, start: begun, end });
    begun = null;
  };
  for (let start = 0, next = 0; start < text.length; start = next) {
    const mark = text.indexOf("\n", start);
    next = mark < 0 ? text.length : mark + 1;
    const first = text.charCodeAt(start);
    // Most lines are those of an item, and further in than its dash.
    const inside = begun !== null && column !== null && isFurtherIn(text, start, column);
    if (inside) continue;
    const line = text.slice(start, mark < 0 ? next : mark).replace(/\r$/u, "");
    if (blank.test(line)) continue;
    const isDash = dash.exec(line);
    if (list !== null && isDash && (column === null || isDash[1]?.length === column)) {
      close(start);
      column = isDash[1]?.length ?? 0;
      begun = start;
      continue;
    }
    if (first === 32 || first === 9 || isDash) return null;
    close(start);
    column = null;
    const named = head.exec(line)?.[1];
    const known = listNames.find((one) => one === named);
    const said = sourceLine.exec(line);
    if (known && !met.has(known)) {
      met.add(known);
      list = known;
    } else if (said?.[1] !== undefined && said[2] !== undefined && source === null) {
      const at = start + said[1].length;
      const value: Node = { is: "text", text: said[2], plain: true, start: at, end: at + said[2].length };
      source = { key: "source", keyStart: start, keyEnd: start + "source".length, value };
      list = null;
    } else return null;
  }
  close(text.length);
  return { source, pieces };
}

/** Whether a line stands further in than a column; what is indented by tabs does not. */
function isFurtherIn(text: string, start: number, column: number): boolean {
  for (let at = start; at <= start + column; at++) if (text.charCodeAt(at) !== 32) return false;
  return true;
}

const carriageReturn = 13;

/** A list of one item, as a file of its own: what stands before the item, with the line end that it has there, and the whole. */
export function alone(
  text: string,
  { list, start, end }: Piece,
): { readonly lead: number; readonly text: string } {
  const lead = `${list}:${text.charCodeAt(start - 2) === carriageReturn ? "\r" : ""}\n`;
  return { lead: lead.length, text: lead + text.slice(start, end) };
}

/** The map of an item, with its places counted from where the item begins; null where it is none, or has anything to be told. */
export function readPiece(file: string, text: string, piece: Piece): MapNode | null {
  const one = alone(text, piece);
  if (keyAlone.test(one.text)) return null;
  const { root, findings, split } = readYaml(file, one.text);
  const [entry, another] = root?.entries ?? [];
  if (!entry || another || findings.length > 0 || split.length > 0 || entry.value.is !== "list") return null;
  const [item, more] = entry.value.items;
  if (item?.is !== "map" || more || endsInComment(one.text, item)) return null;
  return moved(item, -one.lead);
}

/** Whether nothing but a comment follows the last key of an item: how far it goes, the line below the item decides. */
function endsInComment(text: string, item: MapNode): boolean {
  let last: Node = item;
  while (last.is !== "text") {
    const next: Node | undefined = last.is === "map" ? last.entries.at(-1)?.value : last.items.at(-1);
    if (!next) return false;
    last = next;
  }
  return isEmpty(last) && text.includes("#", last.end);
}

/** A tree that stands further on in its text. */
export function moved<N extends Node>(node: N, by: number): N {
  return (by === 0 ? node : movedBy(node, by)) as N;
}

function movedBy(node: Node, by: number): Node {
  const [start, end] = [node.start + by, node.end + by];
  if (node.is === "text") return { ...node, start, end };
  if (node.is === "list") return { ...node, items: node.items.map((one) => movedBy(one, by)), start, end };
  const entries = node.entries.map(({ key, keyStart, keyEnd, value }) => ({
    key,
    keyStart: keyStart + by,
    keyEnd: keyEnd + by,
    value: movedBy(value, by),
  }));
  return { ...node, entries, start, end };
}
