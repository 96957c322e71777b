import type { Edit } from "../../base/finding.ts";
import { nearestAmong } from "../../base/nearest.ts";
import { parseQuantity } from "../../base/quantity/quantity-text.ts";
import type { QuantityContext } from "../../base/quantity/quantity-text.ts";
import { say } from "../../base/text/said/said.ts";
import { slipAmong } from "../../base/text/slip.ts";
import { collector } from "../decode/collector.ts";
import { decoderFor } from "../decode/decode.ts";
import { nearOrAny } from "../decode/named.ts";
import { everywhere, kindOf } from "../grammar/kinds.ts";
import type { AnyRecord, FileRecords, Spoilt } from "../record.ts";
import { readRecord } from "../records.ts";
import type { Settings } from "../settings/settings.ts";
import type { SourceFile } from "../source-file.ts";
import { readTable } from "./csv.ts";
import type { Cell } from "./csv.ts";
import type { Entry, MapNode } from "../yaml/tree.ts";

/** Columns that part a quantity; they join the value's text. */
const quantityColumns = ["unit", "uncertainty"];

/** A column of an artefact's numbers in one register: `numbers.inventory`. */
const numberColumn = /^numbers\.(.+)$/u;

/** Reads the rows of a table as records of one list; columns are field names, of numbers with their register behind a point. */
export function readTableRecords(
  file: SourceFile,
  list: "artefacts" | "measurements",
  settings: Settings,
): FileRecords {
  const table = readTable(file);
  const unknown = collector();
  const names = [...Object.keys(kindOf(list).fields), ...Object.keys(everywhere)];
  const columns = [...names, ...(list === "measurements" ? quantityColumns : [])];
  const nearTo = nearestAmong(columns);
  const meantBy = slipAmong(columns);
  const heads = new Set(table.head.map(({ text }) => text));
  for (const cell of table.head) {
    if (list === "artefacts" && numberColumn.test(cell.text)) continue;
    if (columns.includes(cell.text) || cell.text.startsWith("x-")) continue;
    const expected = nearOrAny(nearTo(cell.text), columns);
    const meant = meantBy(cell.text);
    const free = meant !== null && !heads.has(meant);
    const fix = free ? { label: say`Write ${meant}`, edits: [{ ...cell.span, text: meant }] } : null;
    const message = say`Unknown column \`${cell.text}\`, expected ${expected}`;
    unknown.bad(message, cell.span, { rule: "unknown-field", fix });
  }
  const context = { ...settings.quantities, decimal: settings.decimal };
  let quantity: readonly Cell[] = [];
  const decoder = decoderFor(file.path, context, (node, text) =>
    quantity[0]?.span.start === node.start
      ? cellsMended(quantity, context)
      : [{ file: file.path, start: node.start, end: node.end, text: cellText(text) }],
  );
  const records: AnyRecord[] = [];
  const spoilt: Spoilt[] = [];
  for (const row of table.rows) {
    const entries: Entry[] = [];
    const parts = new Map<string, Cell>();
    const numbers: Entry[] = [];
    row.cells.forEach((written, column) => {
      const head = table.head[column];
      const cell = withoutSpaces(written);
      if (!head || cell.text === "") return;
      parts.set(head.text, cell);
      if (names.includes(head.text)) entries.push(entryOf(head.text, cell, cell.text));
      const register = list === "artefacts" ? numberColumn.exec(head.text)?.[1] : undefined;
      if (register !== undefined) numbers.push(entryOf(register, cell, cell.text));
    });
    const value = parts.get("value");
    quantity = value ? [value, parts.get("uncertainty")].filter((cell) => cell !== undefined) : [];
    if (list === "measurements" && value) {
      const text = quantityText(value, parts.get("uncertainty"), parts.get("unit"));
      entries[entries.findIndex((entry) => entry.key === "value")] = entryOf("value", value, text);
    }
    const [first] = numbers;
    if (first) {
      const { keyStart, keyEnd } = first;
      const value: MapNode = { is: "map", start: keyStart, end: row.span.end, entries: numbers };
      entries.push({ key: "numbers", keyStart, keyEnd, value });
    }
    const node: MapNode = { is: "map", start: row.span.start, end: row.span.end, entries };
    const read = readRecord(list, node, null, file.path, decoder);
    if ("list" in read) records.push(read);
    else spoilt.push(read);
  }
  return { records, spoilt, findings: [...table.findings, ...unknown.all(), ...decoder.findings] };
}

function quantityText(value: Cell, uncertainty: Cell | undefined, unit: Cell | undefined): string {
  const error = uncertainty ? ` ± ${uncertainty.text}` : "";
  return `${value.text}${error}${unit ? ` ${unit.text}` : ""}`;
}

/** A cell without the spaces round its text; of one in quotes the place stays that of the quotes. */
function withoutSpaces({ text, span }: Cell): Cell {
  const bare = text.trim();
  if (span.end - span.start !== text.length) return { text: bare, span };
  const start = span.start + text.indexOf(bare);
  return { text: bare, span: { ...span, start, end: start + bare.length } };
}

/** The cells of a quantity with their decimal sign mended; null where one of them has two readings. */
function cellsMended(cells: readonly Cell[], context: QuantityContext): readonly Edit[] | null {
  const edits: Edit[] = [];
  for (const { text, span } of cells) {
    const read = parseQuantity(text, context);
    if ("ok" in read || read.problem.code === "missing-unit") continue;
    const { replacement, otherwise } = read.problem;
    if (replacement === undefined || otherwise !== undefined) return null;
    edits.push({ ...span, text: cellText(replacement) });
  }
  return edits.length === 0 ? null : edits;
}

/** A text as a cell; one that holds what may part cells stands in quotes. */
function cellText(text: string): string {
  return /[",;\t]/u.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

function entryOf(key: string, cell: Cell, text: string): Entry {
  const { start, end } = cell.span;
  return {
    key,
    keyStart: start,
    keyEnd: start,
    value: { is: "text", text, plain: end - start === text.length, start, end },
  };
}
