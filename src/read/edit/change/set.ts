import type { Hand } from "../hand/hand.ts";
import { alone, rankIn, tableUnder } from "../hand/order.ts";
import type { Table } from "../hand/order.ts";
import { columnOf, hasBlankBetween } from "../hand/lines.ts";
import { inLine, overLines, under } from "../hand/typed.ts";
import { keyIn } from "../hand/scalar.ts";
import { endOf, isBlock, isFlow, partAt, saidAt } from "../site/site.ts";
import type { Part, Site } from "../site/site.ts";
import { isList, saysSame } from "../written.ts";
import type { Written, WrittenMap } from "../written.ts";
import { addInBrackets, takeInBrackets } from "./brackets.ts";
import { newItem, placeIn, refuseShared } from "./desk.ts";
import type { Desk, Slot } from "./desk.ts";
import { addLines, takeLines } from "./parts.ts";
import { spliced } from "./spliced.ts";
import { writeWhole } from "./whole.ts";

/** Makes a value say another: what already says it is left as it stands. */
export function setAt(desk: Desk, site: Site, value: Written, slot: Slot): void {
  const nothing = site.style === "empty" && !slot.item;
  if (!nothing && saysSame(saidAt(site), value)) return;
  const { explicit, piecewise } = desk.manner;
  if (piecewise || slot.top) {
    if (typeof value !== "string" && !isList(value) && isMapAt(site) && keepsOne(site, value)) {
      refuseShared(desk, site, false);
      return setMap(desk, site, value, slot);
    }
    const items = isList(value) ? value : [value];
    if (isListAt(site) && site.parts.length > 0 && items.length > 0) {
      refuseShared(desk, site, false);
      return setList(desk, site, items, slot);
    }
  }
  refuseShared(desk, site, true);
  const words = piecewise && !explicit && typeof value === "string" ? spliced(desk.text, site, value) : null;
  if (words) desk.put(words.start, words.end, words.text);
  else {
    const stoodAlone = !isMapAt(site) && !isListAt(site) && site.style !== "empty";
    writeWhole(desk, site, stoodAlone ? alone(value) : value, slot);
  }
}

function isMapAt({ style }: Site): boolean {
  return style === "flow map" || style === "block map";
}

function isListAt({ style }: Site): boolean {
  return style === "flow list" || style === "block list";
}

function keepsOne(site: Site, value: WrittenMap): boolean {
  return site.parts.some((part) => stays(part, value));
}

/** An entry that was left empty says nothing, and is left alone. */
function stays({ key, value: { style } }: Part, value: WrittenMap): boolean {
  return key === null || style === "empty" || Object.hasOwn(value, key);
}

function slotOf(desk: Desk, site: Site, part: Part, slot: Slot, table: Table | null): Slot {
  const flow = slot.flow || isFlow(site);
  const column = columnOf(desk.text, part.from);
  return { flow, item: part.key === null, column, taken: part.at + 1 - part.from, at: part.at, table };
}

function setMap(desk: Desk, site: Site, value: WrittenMap, slot: Slot): void {
  const kept = site.parts.filter((part) => stays(part, value));
  takeRuns(desk, site, (part) => !stays(part, value));
  const missing: string[] = [];
  for (const [key, one] of Object.entries(value)) {
    const part = partAt(site, key);
    if (part) setAt(desk, part.value, one, slotOf(desk, site, part, slot, tableUnder(slot.table, key)));
    else missing.push(key);
  }
  for (const [after, keys] of behind(kept, missing, value, slot.table)) {
    const entries = keys.map((key) => [key, value[key] ?? ""] as const);
    const place = placeIn(desk, { ...slot, flow: slot.flow || isFlow(site) });
    if (isFlow(site)) {
      const texts = entries.map(
        ([key, one]) => `${keyIn(key, true)}: ${inLine(one, under(place, key, 0, 0))}`,
      );
      addInBrackets(desk, site, after, texts);
    } else {
      const column = columnOf(desk.text, site.parts[0]?.from ?? site.start);
      const alike = slot.table?.anyName ? { ...place, hand: asOthers(place.hand, site) } : place;
      const lines = entries.flatMap(([key, one]) => overLines(mapOf(key, one), column, alike));
      // The parts of a file stand apart where that is its habit; a line or two of settings need not.
      const isFile = slot.top === true && !slot.item && desk.manner.piecewise;
      const isLong = lines.length > 1 || (after !== null && isBlock(after.value));
      addLines(desk, site, after, isFile && isLong && isRoomy(desk.text, site) ? ["", ...lines] : lines);
    }
  }
}

/** The hand of a writer for whom one more of some maps is written as those are: in brackets or over lines. */
function asOthers(hand: Hand, { parts }: Site): Hand {
  const maps = parts.filter(({ value }) => isMapAt(value));
  if (maps.length === 0) return hand;
  return { ...hand, mostInLine: maps.some(({ value }) => isBlock(value)) ? 0 : Infinity };
}

function isRoomy(text: string, { parts }: Site): boolean {
  return parts.some((part, place) => {
    const before = parts[place - 1];
    return before !== undefined && hasBlankBetween(text, endOf(before), part.from);
  });
}

function mapOf(key: string, value: Written): WrittenMap {
  const map = Object.create(null) as Record<string, Written>;
  map[key] = value;
  return map;
}

/** New entries by the one that they are to stand behind: the nearest earlier one in the order of the table; null at the head. */
function behind(
  kept: readonly Part[],
  missing: readonly string[],
  value: WrittenMap,
  table: Table | null,
): ReadonlyMap<Part | null, readonly string[]> {
  const ordered = table && !table.anyName;
  const names = ordered ? Object.keys(table.fields) : Object.keys(value);
  const rank = rankIn(names);
  const groups = new Map<Part | null, string[]>();
  for (const key of missing.toSorted((a, b) => rank(a) - rank(b))) {
    let after: Part | null = null;
    for (const part of kept) {
      const own = part.key === null ? names.length : rank(part.key);
      const unnamed = rank(key) === names.length;
      if (own > rank(key) || (own === names.length && !unnamed)) continue;
      if (after === null || unnamed || own >= rank(after.key ?? "")) after = part;
    }
    const group = groups.get(after);
    if (group) group.push(key);
    else groups.set(after, [key]);
  }
  return groups;
}

function setList(desk: Desk, site: Site, values: readonly Written[], slot: Slot): void {
  const { parts } = site;
  const said = parts.map(({ value }) => saidAt(value));
  const most = Math.min(said.length, values.length);
  let first = 0;
  while (first < most && saysSame(said[first] ?? "", values[first] ?? "")) first++;
  let last = 0;
  while (
    last < most - first &&
    saysSame(said[said.length - 1 - last] ?? "", values[values.length - 1 - last] ?? "")
  )
    last++;
  const old = parts.slice(first, parts.length - last);
  const fresh = values.slice(first, values.length - last);
  const both = Math.min(old.length, fresh.length);
  const gone = new Set(old.slice(both));
  old.slice(0, both).forEach((part, place) => {
    setAt(desk, part.value, fresh[place] ?? "", slotOf(desk, site, part, slot, slot.table));
  });
  takeRuns(desk, site, (part) => gone.has(part));
  const more = fresh.slice(both);
  if (more.length === 0) return;
  const after = parts[first + both - 1] ?? null;
  if (isFlow(site)) {
    const place = placeIn(desk, { ...slot, flow: true });
    addInBrackets(
      desk,
      site,
      after,
      more.map((one) => inLine(one, place)),
    );
  } else {
    const column = columnOf(desk.text, parts[0]?.from ?? site.start);
    addLines(
      desk,
      site,
      after,
      more.flatMap((one) => newItem(desk, site, one, column, slot.table)),
    );
  }
}

/** Takes out the parts that go, those that stand side by side together. */
function takeRuns(desk: Desk, site: Site, goes: (part: Part) => boolean): void {
  let run: Part[] = [];
  for (const part of [...site.parts, null]) {
    if (part && goes(part)) {
      refuseShared(desk, part.value, true);
      run.push(part);
    } else if (run.length > 0) {
      if (isFlow(site)) takeInBrackets(desk, site, run);
      else takeLines(desk, run);
      run = [];
    }
  }
}
