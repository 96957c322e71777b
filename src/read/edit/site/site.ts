import type { Written, WrittenMap } from "../written.ts";

/** How a value is written in a YAML file; `other` is what the format does not know and nothing here changes. */
export type Style =
  | "plain"
  | "single"
  | "double"
  | "literal"
  | "folded"
  | "empty"
  | "alias"
  | "flow map"
  | "flow list"
  | "block map"
  | "block list"
  | "other";

/** A value where it stands in a file, with all that is needed to write in its place. Offsets are UTF-16 units. */
export interface Site {
  readonly style: Style;
  /** Where the value begins behind its anchor, and where it ends; the line end after a block scalar is not its own. */
  readonly start: number;
  readonly end: number;
  /** Where the anchor begins, or the value where it has none. */
  readonly from: number;
  readonly anchor: string | null;
  /** What a scalar says; empty for what is none. */
  readonly text: string;
  /** Of a block scalar, where its head (`|-`) ends; else the same as `start`. */
  readonly headEnd: number;
  /** The entries of a map or the items of a list. */
  readonly parts: readonly Part[];
  /** What an alias stands for. */
  readonly target: Site | null;
  /** Aliases that stand for this value. */
  readonly aliases: readonly Site[];
}

/** An entry of a map or an item of a list. */
export interface Part {
  /** Null for an item, and for a key that the format does not know. */
  readonly key: string | null;
  /** Where it begins: its key, its dash, or in brackets its value. */
  readonly from: number;
  /** Behind its colon or dash; in brackets an item's own beginning. */
  readonly at: number;
  readonly value: Site;
  /** In brackets, where the comma before it and the comma after it stand. */
  readonly commaBefore: number | null;
  readonly commaAfter: number | null;
}

/** Whether a value is written inside brackets or is a pair of them. */
export function isFlow({ style }: Site): boolean {
  return style === "flow map" || style === "flow list";
}

/** Whether a value is a map or a list written over lines. */
export function isBlock({ style }: Site): boolean {
  return style === "block map" || style === "block list";
}

/** Where a part ends: with its value, or behind its colon where that is left empty. */
export function endOf(part: Part): number {
  return Math.max(part.value.end, part.at);
}

/** The part under a key: the first, as it is read. */
export function partAt(site: Site, key: string): Part | null {
  return site.parts.find((part) => part.key === key) ?? null;
}

/** What a value says, as it would be typed; entries left empty say nothing, and of a key that stands twice the first counts. */
export function saidAt(site: Site): Written {
  if (site.style === "alias") return site.target ? saidAt(site.target) : "";
  if (site.style === "flow list" || site.style === "block list")
    return site.parts.map(({ value }) => saidAt(value));
  if (site.style !== "flow map" && site.style !== "block map") return site.text;
  const map = Object.create(null) as Record<string, Written>;
  const met = new Set<string>();
  for (const { key, value } of site.parts) {
    if (key === null || met.has(key)) continue;
    met.add(key);
    if (value.style !== "empty") map[key] = saidAt(value);
  }
  return map as WrittenMap;
}
