import { finding } from "../../base/finding.ts";
import type { Finding } from "../../base/finding.ts";
import { nearest } from "../../base/nearest.ts";
import { decoderFor } from "../decode.ts";
import { everywhere, kindOf } from "../grammar/kinds.ts";
import type { AnyRecord, FileRecords, Spoilt } from "../record.ts";
import { readRecord } from "../records.ts";
import type { Settings } from "../settings.ts";
import type { SourceFile } from "../source-file.ts";
import { readTable } from "./csv.ts";
import type { Cell } from "./csv.ts";
import type { Entry, MapNode } from "../yaml/tree.ts";

/** Columns that part a quantity; they join the value's text. */
const quantityColumns = ["unit", "uncertainty"];

/** Reads the rows of a table as records of one list; columns are field names. */
export function readTableRecords(
  file: SourceFile,
  list: "artefacts" | "measurements",
  settings: Settings,
): FileRecords {
  const table = readTable(file);
  const findings: Finding[] = [...table.findings];
  const names = [...Object.keys(kindOf(list).fields), ...Object.keys(everywhere)];
  const also = list === "measurements" ? quantityColumns : [];
  for (const cell of table.head) {
    if (names.includes(cell.text) || also.includes(cell.text) || cell.text.startsWith("x-")) continue;
    const near = nearest(cell.text, [...names, ...also]);
    const expected = near.length > 0 ? near.join(" or ") : `one of ${[...names, ...also].join(", ")}`;
    findings.push(
      finding("unknown-field", `Unknown column \`${cell.text}\`, expected ${expected}`, cell.span),
    );
  }
  const decoder = decoderFor(file.path, { ...settings.quantities, decimal: settings.decimal });
  const records: AnyRecord[] = [];
  const spoilt: Spoilt[] = [];
  for (const row of table.rows) {
    const entries: Entry[] = [];
    const parts = new Map<string, Cell>();
    row.cells.forEach((cell, column) => {
      const head = table.head[column];
      if (!head || cell.text.trim() === "") return;
      parts.set(head.text, cell);
      if (names.includes(head.text)) entries.push(entryOf(head.text, cell, cell.text.trim()));
    });
    const value = parts.get("value");
    if (list === "measurements" && value) {
      const text = quantityText(value, parts.get("uncertainty"), parts.get("unit"));
      entries[entries.findIndex((entry) => entry.key === "value")] = entryOf("value", value, text);
    }
    const node: MapNode = { is: "map", start: row.span.start, end: row.span.end, entries };
    const read = readRecord(list, node, null, file.path, decoder);
    if ("list" in read) records.push(read);
    else if (read.id !== "") spoilt.push(read);
  }
  return { records, spoilt, findings: [...findings, ...decoder.findings] };
}

function quantityText(value: Cell, uncertainty: Cell | undefined, unit: Cell | undefined): string {
  const error = uncertainty ? ` ± ${uncertainty.text.trim()}` : "";
  return `${value.text.trim()}${error}${unit ? ` ${unit.text.trim()}` : ""}`;
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
