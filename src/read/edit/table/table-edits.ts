import type { Edit } from "../../../base/finding.ts";
import { edited, inPlace } from "../../../base/text/edit.ts";
import { coded, row as inRow, say } from "../../../base/text/said/said.ts";
import type { SourceFile } from "../../source-file.ts";
import { readTable } from "../../table/csv.ts";
import type { Cell, Row, Table } from "../../table/csv.ts";
import type { CannotChange, TextChange } from "../text-change.ts";
import type { Written, WrittenMap } from "../written.ts";
import { cellIn, headOf, lineMarkAt } from "./cells.ts";
import type { Head } from "./cells.ts";
import { parted } from "./parted.ts";

/** What a row is to say: a text for each column by its name; an empty one says nothing. */
type RowTexts = ReadonlyMap<string, string>;

/** The edits that make one change in a table: a field is a cell, a record a line. */
export function tableEdits(file: SourceFile, change: TextChange): readonly Edit[] | CannotChange {
  const table = readTable(file);
  const head = headOf(file.text, table);
  switch (change.is) {
    case "setting":
      throw new Error(`unexpected setting in ${file.path}, expected one in corpus.yaml`);
    case "field": {
      const row = rowAt(file, table, change.record);
      const [field, ...rest] = change.path;
      const texts =
        rest.length > 0 && !(rest.length === 1 && rest[0] === 0)
          ? beyondCell(String(field), file.path)
          : textsFor(file, table, { [String(field)]: change.value });
      return "problem" in texts
        ? texts
        : checked(file, table, [...cellEdits(file, table, head, row, texts)], row, texts);
    }
    case "add": {
      const after = change.after === undefined ? null : rowAt(file, table, change.after);
      return added(file, table, head, change.records, after);
    }
    case "take":
      return [withoutRow(file, rowAt(file, table, change.record))];
  }
}

function rowAt({ path }: SourceFile, table: Table, start: number): Row {
  const row = table.rows.find(({ span }) => span.start === start);
  if (!row) throw new Error(`unexpected place ${start}, expected a row of ${path}`);
  return row;
}

/** What some fields are in the columns of a table; null takes a field out. */
function textsFor(
  { path }: SourceFile,
  { head }: Table,
  fields: Readonly<Record<string, Written | null>>,
): RowTexts | CannotChange {
  const names = head.map(({ text }) => text);
  const has = (name: string): boolean => names.includes(name);
  const missing = Object.keys(fields).filter((name) => !has(name) && fields[name] !== null);
  if (missing.length > 0) {
    const what = inRow(missing.map(coded), "comma");
    const problem =
      missing.length === 1
        ? say`Missing column ${what} in \`${path}\`, expected it in the head line`
        : say`Missing columns ${what} in \`${path}\`, expected them in the head line`;
    return { problem };
  }
  const texts = new Map<string, string>();
  for (const [name, value] of Object.entries(fields)) {
    const single = Array.isArray(value) && value.length === 1 ? (value[0] as Written) : value;
    if (single !== null && typeof single !== "string") return beyondCell(name, path);
    const text = (single ?? "").trim();
    if (!has(name)) continue;
    if (name !== "value" || !(has("unit") || has("uncertainty"))) texts.set(name, text);
    else {
      const parts = parted(text, { uncertainty: has("uncertainty"), unit: has("unit") });
      texts.set("value", parts.value);
      if (has("uncertainty")) texts.set("uncertainty", parts.uncertainty ?? "");
      if (has("unit")) texts.set("unit", parts.unit ?? "");
    }
  }
  return texts;
}

function beyondCell(field: string, path: string): CannotChange {
  return {
    problem: say`Unexpected list or map of \`${field}\` for \`${path}\`, expected a single value: a table has one in a cell`,
  };
}

function cellEdits(file: SourceFile, table: Table, head: Head, row: Row, texts: RowTexts): readonly Edit[] {
  return row.cells.flatMap((cell, column) => {
    const wanted = texts.get(table.head[column]?.text ?? "");
    if (wanted === undefined || wanted === cell.text.trim()) return [];
    return [cellEdit(file, cell, wanted, head)];
  });
}

/** Spaces round a bare cell stay; one in quotes keeps them. */
function cellEdit({ path, text }: SourceFile, { span }: Cell, wanted: string, head: Head): Edit {
  const raw = text.slice(span.start, span.end);
  const inQuotes = raw.startsWith('"');
  const put = cellIn(wanted, head.separator, inQuotes);
  const bare = inQuotes || put.startsWith('"') || raw.trim() === "" ? raw : raw.trim();
  const start = span.start + raw.indexOf(bare);
  return { file: path, start, end: start + bare.length, text: put };
}

/** The edits, where the row is then read as it was meant: one left without any text would be no row. */
function checked(
  file: SourceFile,
  table: Table,
  edits: readonly Edit[],
  row: Row,
  texts: RowTexts,
): readonly Edit[] | CannotChange {
  const after = readTable({ ...file, text: edited(file.text, edits) });
  if (after.rows.length < table.rows.length)
    return { problem: say`Unexpected row without any text, expected it taken out of \`${file.path}\`` };
  const place = table.rows.indexOf(row);
  const same = after.rows.every(({ cells }, at) =>
    cells.every(({ text }, column) => {
      const wanted = at === place ? texts.get(table.head[column]?.text ?? "") : undefined;
      return text.trim() === (wanted ?? table.rows[at]?.cells[column]?.text.trim());
    }),
  );
  if (!same) throw new Error(`unexpected reading of ${file.path} after a change, expected what was meant`);
  return edits.toSorted(inPlace);
}

function added(
  file: SourceFile,
  table: Table,
  head: Head,
  records: readonly WrittenMap[],
  after: Row | null,
): readonly Edit[] | CannotChange {
  const { path, text } = file;
  if (table.head.length === 0)
    return { problem: say`Missing head line in \`${path}\`, expected the names of the columns` };
  const lines: string[] = [];
  for (const record of records) {
    const texts = textsFor(file, table, record);
    if ("problem" in texts) return texts;
    const cells = head.columns.map((name) =>
      cellIn((name !== null && texts.get(name)) || "", head.separator, false),
    );
    lines.push(cells.join(head.separator));
  }
  const at = after ? after.span.end : text.replace(/[\r\n]+$/u, "").length;
  const mark = lineMarkAt(text, at);
  const put = lines.map((line) => mark + line).join("");
  const edits = [{ file: path, start: at, end: at, text: put }];
  const read = readTable({ ...file, text: edited(text, edits) });
  if (read.rows.length !== table.rows.length + records.length)
    return { problem: say`Unexpected row without any text, expected a value for a column of \`${path}\`` };
  return edits;
}

function withoutRow({ path, text }: SourceFile, { span }: Row): Edit {
  const mark = /^(?:\r\n|\r|\n)/u.exec(text.slice(span.end, span.end + 2));
  if (mark) return { file: path, start: span.start, end: span.end + mark[0].length, text: "" };
  const before =
    /(?:\r\n|\r|\n)$/u.exec(text.slice(Math.max(0, span.start - 2), span.start))?.[0].length ?? 0;
  return { file: path, start: span.start - before, end: span.end, text: "" };
}
