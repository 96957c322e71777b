import type { Style } from "../site/site.ts";
import { isList } from "../written.ts";
import type { Written, WrittenMap } from "../written.ts";
import { blockScalar } from "./block-scalar.ts";
import type { Hand } from "./hand.ts";
import { inOrder, tableUnder } from "./order.ts";
import type { Table } from "./order.ts";
import { keyIn, scalarIn } from "./scalar.ts";

/** A value as it is typed: what stands behind its key or dash, and the lines below, indented, without line ends. */
export interface Typed {
  readonly head: string;
  readonly body: readonly string[];
}

/** Where and how a value is to be typed. */
export interface Place {
  readonly hand: Hand;
  readonly quotes: "single" | "double" | null;
  readonly explicit: boolean;
  /** Inside brackets, where all stands in one line. */
  readonly flow: boolean;
  /** The column of the key or dash. */
  readonly column: number;
  /** The columns that the key or dash and the space behind it take up. */
  readonly taken: number;
  /** How the text was written that this takes the place of. */
  readonly was: Style | null;
  /** The fields that maps here may have, which gives them their order; null where the grammar has none. */
  readonly table: Table | null;
}

/** Columns of a line that a small map or list may fill. */
const width = 100;

/** A value as a person would type it at a place. */
export function typed(value: Written, place: Place): Typed {
  if (typeof value === "string") return textTyped(value, place);
  const line = place.flow || staysInLine(value, place) ? inLine(value, place) : null;
  if (line !== null && (place.flow || place.column + place.taken + line.length <= width))
    return { head: line, body: [] };
  const { column, hand } = place;
  return { head: "", body: overLines(value, column + (isList(value) ? hand.dash : hand.step), place) };
}

/** The lines of a map or list whose keys or dashes stand at a column. */
export function overLines(
  value: WrittenMap | readonly Written[],
  column: number,
  place: Place,
): readonly string[] {
  const pad = " ".repeat(column);
  if (!isList(value)) {
    return inOrder(value, place.table).flatMap(([key, one]) => {
      const name = keyIn(key, false);
      const { head, body } = typed(one, under(place, key, column, name.length + 2));
      return [`${pad}${name}:${head === "" ? "" : ` ${head}`}`, ...body];
    });
  }
  // Maps of one list are alike: all in brackets, or all over lines.
  const isLong = value.some((one) => typeof one !== "string" && !isList(one) && !fits(one, column, place));
  return value.flatMap((one) => itemLines(one, column, place, isLong ? "lines" : null));
}

function fits(item: WrittenMap, column: number, place: Place): boolean {
  return typed(item, { ...place, column, taken: 1 + place.hand.gap, was: null }).head !== "";
}

/** The lines of one item of a list, its dash at a column; a map in brackets or over lines where that is asked for. */
export function itemLines(
  item: Written,
  column: number,
  place: Place,
  wanted: "lines" | "brackets" | null = null,
): readonly string[] {
  const { gap } = place.hand;
  const dash = `${" ".repeat(column)}-${" ".repeat(gap)}`;
  const own = { ...place, column, taken: 1 + gap, was: null };
  const isMap = typeof item !== "string" && !isList(item);
  if (isMap && wanted === "brackets") return [`${dash}${inLine(item, own)}`];
  const isLines = isMap && wanted === "lines" && Object.keys(item).length > 0;
  const { head, body } = isLines ? { head: "", body: [] } : typed(item, own);
  if (typeof item === "string" || head !== "") return [`${dash}${head}`, ...body];
  const inner = column + 1 + gap;
  const [first = "", ...rest] = overLines(item, inner, place);
  return [`${dash}${first.slice(inner)}`, ...rest];
}

/** The place of a value under a key whose own column is given. */
export function under(place: Place, key: string, column: number, taken: number): Place {
  return { ...place, column, taken, was: null, table: tableUnder(place.table, key) };
}

/** A value in one line, in brackets where it is a map or a list. */
export function inLine(value: Written, place: Place): string {
  const { hand } = place;
  if (typeof value === "string") return scalarIn(value, { ...place, flow: true, was: null });
  if (isList(value))
    return bracketed(
      "[",
      value.map((one) => inLine(one, place)),
      "]",
      hand.insideList,
    );
  const entries = inOrder(value, place.table).map(
    ([key, one]) => `${keyIn(key, true)}: ${inLine(one, under(place, key, 0, 0))}`,
  );
  return bracketed("{", entries, "}", hand.insideMap);
}

function textTyped(text: string, place: Place): Typed {
  const { was, hand, column, flow, explicit } = place;
  const wasBlock = was === "literal" || was === "folded";
  if (!flow && !explicit && (wasBlock || text.includes("\n"))) {
    const style = was === "folded" ? "folded" : "literal";
    const block = blockScalar(text, style, column + hand.step, hand.step);
    if (block) return block;
  }
  return { head: scalarIn(text, place), body: [] };
}

function staysInLine(value: WrittenMap | readonly Written[], { hand }: Place): boolean {
  if (hasBreak(value)) return false;
  if (isList(value)) {
    const [only] = value;
    const small =
      only !== undefined &&
      value.length === 1 &&
      !isList(only) &&
      isSmall(only, Math.min(2, hand.mostInLine));
    return value.every((one) => typeof one === "string" || (isList(one) && one.every(isText))) || small;
  }
  return isSmall(value, hand.mostInLine);
}

function isSmall(value: Written, most: number): boolean {
  if (typeof value === "string" || isList(value)) return typeof value !== "string";
  const values = Object.values(value);
  return (
    values.length === 0 ||
    (values.length <= most && values.every((one) => isText(one) || (isList(one) && one.every(isText))))
  );
}

function isText(value: Written): boolean {
  return typeof value === "string";
}

/** Whether a line end stands in any text of a value. */
export function hasBreak(value: Written): boolean {
  if (typeof value === "string") return value.includes("\n");
  return (isList(value) ? value : Object.values(value)).some(hasBreak);
}

function bracketed(open: string, parts: readonly string[], close: string, inside: string): string {
  return parts.length === 0 ? `${open}${close}` : `${open}${inside}${parts.join(", ")}${inside}${close}`;
}
