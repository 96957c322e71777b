import { isList, writtenOf } from "../written.ts";
import type { Written, WrittenMap } from "../written.ts";
import { listNames } from "../../grammar/kinds.ts";
import type { ListName } from "../../grammar/field.ts";
import { readTable } from "../../table/csv.ts";
import type { MapNode } from "../../yaml/tree.ts";
import { readYaml } from "../../yaml/text.ts";

/** A record of one reading of a file, as it is typed. */
export interface RecordRead {
  /** What it is found by in another reading of the file: its list, and its id or what an id would be made from. */
  readonly key: string;
  /** Null for what a file says beside its lists, and for the settings. */
  readonly list: ListName | null;
  /** The id as written; null where there is none. */
  readonly id: string | null;
  readonly fields: WrittenMap;
  /** Where its node begins and ends, in UTF-16 units. */
  readonly start: number;
  readonly end: number;
}

/** A file in the readings of two sides, and of what both were made from where that is known. */
export interface ThreeTexts {
  readonly path: string;
  readonly base: string | null;
  readonly mine: string;
  readonly theirs: string;
}

/** The key of what a file says beside its lists. */
export const besideLists = "";

/**
 * The records of a file by their keys, in its order; null where it has no records that could be told apart: it cannot
 * be read whole, a value of it was taken apart, or it is no file of records.
 */
export function recordsIn(path: string, text: string): ReadonlyMap<string, RecordRead> | null {
  if (path.endsWith(".csv")) return rowsIn(path, text);
  if (!/\.ya?ml$/u.test(path)) return null;
  const { root, findings } = readYaml(path, text);
  if (!root || findings.length > 0) return null;
  return path === "corpus.yaml" ? byKey([besideOf(root)]) : listsIn(root);
}

function besideOf(root: MapNode): Unnumbered {
  return { list: null, id: null, fields: mapOf(root), start: root.start, end: root.end };
}

type Unnumbered = Omit<RecordRead, "key">;

function listsIn(root: MapNode): ReadonlyMap<string, RecordRead> | null {
  const records: Unnumbered[] = [];
  const beside: MapNode = {
    ...root,
    entries: root.entries.filter(({ key }) => !listNames.some((name) => name === key)),
  };
  if (beside.entries.length > 0) records.push(besideOf(beside));
  for (const { key, value } of root.entries) {
    const list = listNames.find((name) => name === key);
    if (!list) continue;
    if (value.is !== "list") {
      if (value.is === "text" && value.text === "") continue;
      return null;
    }
    for (const node of value.items) {
      if (node.is !== "map") return null;
      const fields = mapOf(node);
      records.push({ list, id: textIn(fields["id"]), fields, start: node.start, end: node.end });
    }
  }
  return byKey(records);
}

function rowsIn(path: string, text: string): ReadonlyMap<string, RecordRead> | null {
  const { head, rows, findings } = readTable({ path, text });
  if (findings.length > 0) return null;
  const list = head.some((one) => one.text === "value") ? "measurements" : "artefacts";
  const records = rows.map(({ cells, span }): Unnumbered => {
    const fields = Object.create(null) as Record<string, Written>;
    cells.forEach((cell, column) => {
      const name = head[column]?.text ?? "";
      if (name !== "" && cell.text.trim() !== "") fields[name] = cell.text.trim();
    });
    return { list, id: textIn(fields["id"]), fields, start: span.start, end: span.end };
  });
  return byKey(records);
}

/** Records of one name are told apart by their order. */
function byKey(records: readonly Unnumbered[]): ReadonlyMap<string, RecordRead> {
  const keyed = new Map<string, RecordRead>();
  for (const record of records) {
    const base = record.list === null ? besideLists : `${record.list} ${record.id ?? madeOf(record.fields)}`;
    let key = base;
    for (let n = 2; keyed.has(key); n++) key = `${base}#${n}`;
    keyed.set(key, { ...record, key });
  }
  return keyed;
}

/** What a record without an id is about, and where it is said. */
function madeOf(fields: WrittenMap): string {
  const parts = ["of", "dimension", "who", "claim", "between"].map((name) =>
    JSON.stringify(fields[name] ?? ""),
  );
  const from = fields["from"] ?? "";
  const first = typeof from === "string" ? from : isList(from) ? from[0] : "";
  return `${parts.join(" ")}@${typeof first === "string" ? (first.split(/\s/u)[0] ?? "") : ""}`;
}

function mapOf(node: MapNode): WrittenMap {
  const written = writtenOf(node);
  return typeof written === "string" || isList(written) ? {} : written;
}

function textIn(value: Written | undefined): string | null {
  return typeof value === "string" && value !== "" ? value : null;
}
