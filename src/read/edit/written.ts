import type { Node } from "../yaml/tree.ts";

/** A value as it would be typed into a file: a text, a list, or a map of fields. */
export type Written = string | readonly Written[] | WrittenMap;

/** The fields of a record as they would be typed, in the order in which they are to stand. */
export interface WrittenMap {
  readonly [field: string]: Written;
}

/** What a node of a file says, as it would be typed; fields left empty say nothing. */
export function writtenOf(node: Node): Written {
  if (node.is === "text") return node.text;
  if (node.is === "list") return node.items.map(writtenOf);
  const map = Object.create(null) as Record<string, Written>;
  for (const { key, value } of node.entries) {
    if (value.is === "text" && value.text === "" && value.plain) continue;
    map[key] = writtenOf(value);
  }
  return map;
}

/** Whether two values would be read as the same; a single value counts as a list of one, unless that one is a list. */
export function saysSame(a: Written | null, b: Written | null): boolean {
  return JSON.stringify(ordered(a)) === JSON.stringify(ordered(b));
}

function ordered(value: Written | null): unknown {
  if (value === null || typeof value === "string") return value;
  if (isList(value)) {
    const [only] = value;
    return value.length === 1 && only !== undefined && !isList(only) ? ordered(only) : value.map(ordered);
  }
  return Object.entries(value)
    .toSorted(([a], [b]) => (a < b ? -1 : 1))
    .map(([key, one]) => [key, ordered(one)]);
}

/** Tells a list of values from a map of fields. */
export function isList(value: Written): value is readonly Written[] {
  return Array.isArray(value);
}
