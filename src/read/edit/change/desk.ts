import { count, say } from "../../../base/text/said/said.ts";
import type { Text } from "../../../base/text/said/said.ts";
import type { Hand } from "../hand/hand.ts";
import type { Table } from "../hand/order.ts";
import { itemLines } from "../hand/typed.ts";
import type { Place } from "../hand/typed.ts";
import { isBlock } from "../site/site.ts";
import type { Site } from "../site/site.ts";

/** How carefully a change is written: tried from the least intrusive on, until it reads as it was meant. */
export interface Manner {
  /** Texts that do not need quotes have them too. */
  readonly explicit: boolean;
  /** Lists and maps are changed part by part, texts over several lines word by word; else they are written anew. */
  readonly piecewise: boolean;
}

/** Where a change to one file is worked out: its text, its writer's hand, and the replacements so far. */
export interface Desk {
  readonly text: string;
  readonly hand: Hand;
  readonly quotes: "single" | "double" | null;
  readonly manner: Manner;
  readonly put: (start: number, end: number, text: string) => void;
  /** Says why the change cannot be made. */
  readonly refuse: (problem: Text) => void;
}

/** What a value stands in: behind a key or a dash, in brackets or over lines. */
export interface Slot {
  /** Inside brackets. */
  readonly flow: boolean;
  readonly item: boolean;
  /** The column of the key or dash, and the columns it takes up with the space behind it. */
  readonly column: number;
  readonly taken: number;
  /** Behind the colon or dash. */
  readonly at: number;
  readonly table: Table | null;
  /** The record or the file as a whole, whose other fields are left alone in any manner. */
  readonly top?: true;
}

/** A slot as a place to type in. */
export function placeIn({ hand, quotes, manner }: Desk, slot: Slot): Place {
  const { explicit } = manner;
  return { hand, quotes, explicit, was: null, ...slot };
}

/** Refuses to change a value that stands in other places too, through an anchor and its aliases. */
export function refuseShared(desk: Desk, site: Site, whole: boolean): void {
  const shared = sharedIn(site, site, whole);
  if (shared === null) return;
  const { anchor, aliases } = shared;
  const [named, by] = [`\`&${anchor ?? ""}\``, `\`*${anchor ?? ""}\``];
  desk.refuse(
    aliases.length === 1
      ? say`Unexpected anchor ${named} on a value that stands in 1 other place as ${by}, expected it written out there first`
      : say`Unexpected anchor ${named} on a value that stands in ${count(aliases.length)} other places as ${by}, expected it written out there first`,
  );
}

function sharedIn(site: Site, within: Site, whole: boolean): Site | null {
  if (site.aliases.some(({ start }) => start < within.start || start >= within.end)) return site;
  if (!whole) return null;
  for (const { value } of site.parts) {
    const found = sharedIn(value, within, true);
    if (found) return found;
  }
  return null;
}

/** Lines for a new item of a list over lines, in brackets or not as the others are. */
export function newItem(
  desk: Desk,
  list: Site,
  item: Parameters<typeof itemLines>[0],
  column: number,
  table: Table | null,
): readonly string[] {
  const maps = list.parts.filter(({ value }) => value.style === "flow map" || value.style === "block map");
  const place = placeIn(desk, { flow: false, item: true, column, taken: 0, at: 0, table });
  const wanted = maps.length === 0 ? null : maps.some(({ value }) => isBlock(value)) ? "lines" : "brackets";
  return itemLines(item, column, place, wanted);
}
