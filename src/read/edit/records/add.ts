import { setAt } from "../change/set.ts";
import { newItem, placeIn } from "../change/desk.ts";
import type { Desk } from "../change/desk.ts";
import type { ListName } from "../../grammar/field.ts";
import { columnOf, lineEnd, lineEndAt } from "../hand/lines.ts";
import type { Table } from "../hand/order.ts";
import { hasBreak, itemLines } from "../hand/typed.ts";
import { isFlow, partAt, saidAt } from "../site/site.ts";
import type { Part, Site } from "../site/site.ts";
import type { Sites } from "../site/sites.ts";
import { isList } from "../written.ts";
import type { WrittenMap } from "../written.ts";
import { isParted, ownLines } from "./own-lines.ts";
import { addList } from "./lists.ts";
import { tableOf } from "./table.ts";

/** Puts records into their list, behind one of them or at its end; a list that is not there yet is made. */
export function addRecords(
  desk: Desk,
  sites: Sites,
  list: ListName,
  records: readonly WrittenMap[],
  after: Part | null,
): void {
  const part = sites.root && partAt(sites.root, list);
  const column = desk.hand.dashOfRecords;
  const table = tableOf(list, part?.value ?? null);
  if (!sites.root || (!part && !isFlow(sites.root))) {
    const lines = linesOf(desk, null, records, column, table, false);
    return addList(desk, sites, `${list}:`, list, lines);
  }
  const { value } = part ?? { value: null };
  if (value?.style === "block list" && value.parts.length > 0)
    return intoList(desk, value, table, records, after);
  if (part && !isFlow(sites.root) && (value?.style === "empty" || value?.parts.length === 0)) {
    const lines = linesOf(desk, null, records, columnOf(desk.text, part.from) + column, table, false);
    const mark = lineEndAt(desk.text, part.at);
    if (value.style !== "empty") desk.put(part.at, value.end, "");
    const at = lineEnd(desk.text, Math.max(part.at, value.end));
    return desk.put(at, at, lines.map((line) => mark + line).join(""));
  }
  const said = value ? saidAt(value) : [];
  const items = isList(said) ? said : [];
  const place = after && value ? value.parts.indexOf(after) + 1 : items.length;
  const whole = Object.assign(Object.create(null), saidAt(sites.root)) as Record<string, WrittenMap[]>;
  whole[list] = [...items.slice(0, place), ...records, ...items.slice(place)] as WrittenMap[];
  const lists: Table = { fields: { [list]: { type: "items", doc: "", fields: table.fields } } };
  setAt(desk, sites.root, whole, { flow: false, item: false, column: 0, taken: 0, at: 0, table: lists });
}

function intoList(
  desk: Desk,
  site: Site,
  table: Table,
  records: readonly WrittenMap[],
  after: Part | null,
): void {
  const { text } = desk;
  const last = after ?? site.parts.at(-1);
  if (!last) return;
  // A text that keeps its blank lines would take in the one that parts it from the next record.
  const parted = desk.manner.piecewise && isParted(text, site.parts, false);
  const lines = linesOf(desk, site, records, columnOf(text, last.from), table, parted);
  const at = ownLines(text, last).end;
  const mark = lineEndAt(text, at);
  desk.put(at, at, (parted ? mark : "") + lines.map((line) => mark + line).join(""));
}

function linesOf(
  desk: Desk,
  site: Site | null,
  records: readonly WrittenMap[],
  column: number,
  table: Table,
  parted: boolean,
): readonly string[] {
  return records.flatMap((record, place) => [
    ...(parted && place > 0 ? [""] : []),
    ...recordLines(desk, site, record, column, table),
  ]);
}

/** A record as the others of its list are written; the first of a list over lines, or in one line where it has no id and fits. */
function recordLines(
  desk: Desk,
  site: Site | null,
  record: WrittenMap,
  column: number,
  table: Table,
): readonly string[] {
  const place = placeIn(desk, { flow: false, item: true, column, taken: 0, at: 0, table });
  if (hasBreak(record)) return itemLines(record, column, place, "lines");
  if (site) return newItem(desk, site, record, column, table);
  if ("id" in record) return itemLines(record, column, place, "lines");
  const [line = "", ...more] = itemLines(record, column, place, "brackets");
  return more.length === 0 && line.length <= 100 ? [line] : itemLines(record, column, place, "lines");
}
