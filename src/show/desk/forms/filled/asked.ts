import type { Id } from "../../../../base/finding.ts";
import type { Graph } from "../../../../link/graph.ts";
import type { Field, Fields, ListName } from "../../../../read/grammar/field.ts";
import { ownWritten } from "../../../../read/edit/head.ts";
import type { Written, WrittenMap } from "../../../../read/edit/written.ts";
import type { Step } from "../../../../read/yaml/tree.ts";
import { enteredAt, enteredOf, writtenFrom } from "./entered.ts";
import type { EnteredMap, Misread } from "./entered.ts";
import { keptFields, recordOf } from "./found.ts";
import type { Found } from "./found.ts";
import { fieldsIn } from "../layout.ts";
import { masked, unmasked } from "./masked.ts";

/** A form as it is filled in at some moment. */
export interface FormAsked {
  readonly list: ListName;
  /** The record that it changes; null for a new one. */
  readonly id: Id | null;
  /** What the record said when the form was opened, without what is withheld; null for a new one. */
  readonly seen: WrittenMap | null;
  readonly entered: EnteredMap;
}

/** What a form says, in the terms of files, and what could not be read of it. */
export interface Said {
  readonly values: WrittenMap;
  readonly seen: WrittenMap | null;
  readonly misread: readonly Misread[];
}

/** What a form may show of a record: ids that are withheld are signs, and what is kept out of every output is left out. */
export function seenOf(graph: Graph, record: Found): WrittenMap {
  const kept = keptFields(graph, record);
  return masked(
    graph,
    only(ownWritten(record), (name) => !kept.includes(name)),
  );
}

/** A record's fields as they stand in a form when it is opened. */
export function enteredFrom(list: ListName, seen: WrittenMap): EnteredMap {
  const fields = formFields(list, seen);
  const pairs = Object.entries(seen).flatMap(([name, value]) => {
    const field = Object.hasOwn(fields, name) ? fields[name] : undefined;
    const entered = field ? enteredOf(field, value) : null;
    return entered === null ? [] : [[name, entered] as const];
  });
  return Object.fromEntries(pairs);
}

/** The fields of a form: one whose value has not the shape it should have is shown as the file has it. */
export function formFields(list: ListName, seen: WrittenMap | null): Fields {
  const amiss = misshapen(list, seen);
  return Object.fromEntries(
    Object.entries(fieldsIn(list)).map(([name, field]): readonly [string, Field] => [
      name,
      amiss.includes(name)
        ? { type: "json", doc: field.doc, ...(field.required ? { required: true } : {}) }
        : field,
    ]),
  );
}

/** Fields of a record whose values have not the shape that the grammar asks for. */
export function misshapen(list: ListName, seen: WrittenMap | null): readonly string[] {
  const fields = fieldsIn(list);
  return Object.entries(seen ?? {}).flatMap(([name, value]) => {
    const field = Object.hasOwn(fields, name) ? fields[name] : undefined;
    return field && enteredOf(field, value) === null ? [name] : [];
  });
}

/** What a form says: fields that nobody touched say what they said, letter for letter. */
export function saidBy(graph: Graph, asked: FormAsked): Said {
  const { list, seen, entered } = asked;
  const record = recordOf(graph, asked);
  const before = seen ? enteredFrom(list, seen) : {};
  const misread: Misread[] = [];
  const values = Object.create(null) as Record<string, Written>;
  for (const [name, field] of Object.entries(formFields(list, seen))) {
    const [now, then] = [enteredAt(entered, name), enteredAt(before, name)];
    const same = seen !== null && JSON.stringify(now) === JSON.stringify(then);
    const path: readonly Step[] = [name];
    const written = same
      ? (seen[name] ?? null)
      : now === null
        ? null
        : writtenFrom(field, now, path, misread);
    if (written !== null) values[name] = written;
  }
  for (const [name, value] of Object.entries(seen ?? {}))
    if (!Object.hasOwn(fieldsIn(list), name)) values[name] = value;
  const hidden = record ? only(ownWritten(record), (name) => keptFields(graph, record).includes(name)) : {};
  return {
    values: { ...hidden, ...unmasked(graph, values) },
    seen: seen && { ...unmasked(graph, seen), ...hidden },
    misread,
  };
}

/** What a record says or is to say, as its form may show it. */
export function shownOf(graph: Graph, asked: FormAsked, values: WrittenMap): WrittenMap {
  const record = recordOf(graph, asked);
  const kept = record ? keptFields(graph, record) : [];
  return masked(
    graph,
    only(values, (name) => !kept.includes(name) || enteredAt(asked.entered, name) !== null),
  );
}

function only(map: WrittenMap, keep: (name: string) => boolean): WrittenMap {
  return Object.fromEntries(Object.entries(map).filter(([name]) => keep(name)));
}
