import { say } from "../../../../base/text/said/said.ts";
import type { Graph } from "../../../../link/graph.ts";
import { labelOf } from "../../../../link/names/label.ts";
import { isList } from "../../../../read/edit/written.ts";
import type { Written } from "../../../../read/edit/written.ts";
import type { Fields } from "../../../../read/grammar/field.ts";
import { everywhere, kindOf } from "../../../../read/grammar/kinds.ts";
import type { RecordRead } from "../../../../read/edit/merge/reading.ts";
import type { FieldRow } from "../../../pages/pieces.ts";
import { plainRows } from "../fields.ts";
import type { Hidden } from "../hidden.ts";
import { textsIn } from "../written.ts";
import type { Named } from "./told.ts";

/** What a file's two versions are put into words with: the rest of the corpus, where it can be read, and what is withheld. */
export interface Wording {
  readonly graph: Graph | null;
  readonly hidden: Hidden;
  /** What a record of the file itself is called, by its id; null of any other. */
  readonly called: (id: string) => string | null;
}

const withheld = say`something withheld`;

/** How a record is headed: by what it says, never by its id alone where it says more. */
export function headingOf(wording: Wording, records: readonly (RecordRead | null)[]): Named {
  const one = records.find((record) => record !== null);
  if (!one) return { kind: "record", text: "" };
  const kind = one.list === null ? "settings" : kindOf(one.list).singular;
  if (records.some((record) => record && isHidden(wording.hidden, record))) return { kind, text: withheld };
  if (one.list === null) return { kind, text: "" };
  const said = (name: string): string | null => {
    const value = one.fields[name];
    const first = value !== undefined && isList(value) ? value[0] : value;
    return typeof first === "string" && first !== "" ? called(wording, first) : null;
  };
  const [own] = ["short", "text", "name", "title", "method", "quote"].flatMap((name) => said(name) ?? []);
  const [about] = [["who", "claim", "of", "dimension"], ["plugin"], ["where"], ["from"]]
    .map((names) => names.flatMap((name) => said(name) ?? []))
    .filter((parts) => parts.length > 0);
  return { kind, text: own ?? about?.join(", ") ?? one.id ?? "" };
}

function called({ graph, called: own }: Wording, text: string): string {
  const key = text.split(/\s/u)[0] ?? "";
  const known = graph !== null && (graph.records.has(key) || graph.sources.has(key));
  const name = known ? labelOf(graph, key) : own(key);
  return name === null ? text : `${name}${text.slice(key.length)}`;
}

/** What records of a file are called that is not read with the rest of the corpus: their own words, else nothing. */
export function calledIn(records: Iterable<RecordRead>, hidden: Hidden): Wording["called"] {
  const names = new Map<string, string>();
  for (const record of records) {
    const [own] = ["short", "text", "name", "title", "method"].flatMap((field) => record.fields[field] ?? []);
    if (record.id !== null && typeof own === "string" && !isHidden(hidden, record)) names.set(record.id, own);
  }
  return (id) => names.get(id) ?? null;
}

/** Whether a record stays out of every output: it is withheld, or names what is. */
export function isHidden(hidden: Hidden, record: RecordRead): boolean {
  return (record.id !== null && hidden.names(record.id)) || textsIn(record.fields).some(hidden.names);
}

/** What is withheld, with the records of a file that are so because they name it, in turn. */
export function hiddenAmong(records: readonly RecordRead[], hidden: Hidden): Hidden {
  const ids = new Set<string>();
  const names = (text: string): boolean => hidden.names(text) || ids.has(text.split(/\s/u)[0] ?? "");
  const among: Hidden = { ...hidden, names };
  for (let size = -1; size !== ids.size;) {
    size = ids.size;
    for (const record of records) if (record.id !== null && isHidden(among, record)) ids.add(record.id);
  }
  return among;
}

/** A field's value in words: names for what it refers to, everything else as it is typed. */
export function valueRows(
  wording: Wording,
  record: RecordRead,
  field: string,
  value: Written | null,
): readonly FieldRow[] {
  const { hidden } = wording;
  if (value === null) return [];
  if (keptOut(hidden, record, field)) return plainRows("", () => true);
  const fields: Fields = record.list === null ? {} : { ...kindOf(record.list).fields, ...everywhere };
  const type = fields[field]?.type ?? "";
  const refers = ["ref", "refs", "citation", "citations"].includes(type);
  return plainRows(refers ? renamed(value, (text) => called(wording, text)) : value, hidden.names);
}

/** Exact places always stay out; where a thing was found, when it, what it is part of, or any version of it says so. */
export function keptOut(hidden: Hidden, { id, fields }: RecordRead, field: string): boolean {
  if (field === "coordinates") return true;
  if (field !== "found-at") return false;
  const whole = fields["part-of"];
  const above = [id, typeof whole === "string" ? whole : null, id?.replace(/\/[^/]*$/u, "") ?? null];
  return fields["withhold-location"] === "true" || above.some((one) => one !== null && hidden.place(one));
}

function renamed(value: Written, anew: (text: string) => string): Written {
  if (typeof value === "string") return anew(value);
  return isList(value) ? value.map((one) => renamed(one, anew)) : value;
}
