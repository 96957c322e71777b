import { apart } from "../../base/text/apart.ts";
import { bareFields } from "../decode/fielded.ts";

/** A YAML value as text with places: scalars keep what was written, whatever they look like. */
export type Node = TextNode | ListNode | MapNode;

interface Placed {
  /** Offsets in the file's text, UTF-16 units. */
  readonly start: number;
  readonly end: number;
}

/** A scalar, as text. */
export interface TextNode extends Placed {
  readonly is: "text";
  readonly text: string;
  /** Written without quotes on one line, so that YAML may have taken it apart. */
  readonly plain: boolean;
}

/** A sequence. */
export interface ListNode extends Placed {
  readonly is: "list";
  readonly items: readonly Node[];
}

/** A map, its entries in order. */
export interface MapNode extends Placed {
  readonly is: "map";
  readonly entries: readonly Entry[];
  /** What stands between two of its entries as it is written: a comma, or a line end and the indentation. */
  readonly parting?: string;
}

/** One entry of a map, with the place of its key. */
export interface Entry {
  readonly key: string;
  readonly keyStart: number;
  readonly keyEnd: number;
  readonly value: Node;
}

/** A step into a tree: the key of a map or the place in a list. */
export type Step = string | number;

/** The value under a key, or null. */
export function valueAt(map: MapNode, key: string): Node | null {
  for (const entry of map.entries) if (entry.key === key) return entry.value;
  return null;
}

/** The node a path leads to, or the last one on the way; a single value counts as a list of one. */
export function nodeAt(node: Node, path: readonly Step[]): Node {
  let here = node;
  for (const step of path) {
    const next = into(here, step);
    if (!next) return here;
    here = next;
  }
  return here;
}

function into(node: Node, step: Step): Node | null {
  if (typeof step === "number") return node.is === "list" ? (node.items[step] ?? null) : node;
  return node.is === "map" ? valueAt(node, step) : null;
}

/** The bare values of a tree, as texts, lists and maps; an empty text is no value. */
export function plainOf(node: Node): unknown {
  if (node.is === "text") return apart(node.text);
  if (node.is === "list") return node.items.map(plainOf);
  const said = node.entries.filter(({ value }) => !isEmpty(value));
  return bareFields(
    said.map(({ key }) => key),
    said.map(({ value }) => plainOf(value)),
  );
}

/** Tells a value that was left empty (`key:` and nothing after it). */
export function isEmpty(node: Node): boolean {
  return node.is === "text" && node.text === "" && node.plain;
}

/** The entry of a map in which a place of the text lies, its key among it. */
export function entryAt({ entries }: MapNode, at: number): Entry | undefined {
  return entries.find(({ keyStart, value }) => keyStart <= at && at <= value.end);
}
