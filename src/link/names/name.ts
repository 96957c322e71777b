import { finding } from "../../base/finding.ts";
import type { Finding, Id } from "../../base/finding.ts";
import { remembered } from "../../base/text/remembered.ts";
import { say } from "../../base/text/said/said.ts";
import type { Source } from "../../read/bibliography/read.ts";
import { placed, spanOf } from "../../read/record.ts";
import type { AnyRecord, Saying, Spoilt } from "../../read/record.ts";
import type { MapNode } from "../../read/yaml/tree.ts";
import type { AnyLinked } from "../graph.ts";

/** Every name of the corpus and what bears it; names of records that were lost are known, too. */
export interface Names {
  readonly records: ReadonlyMap<Id, AnyLinked>;
  readonly lost: Pick<ReadonlySet<Id>, "has">;
  readonly findings: readonly Finding[];
}

/** Names every record, keeping the first where two have the same name. */
export function nameRecords(
  records: readonly AnyRecord[],
  sources: ReadonlyMap<Id, Source>,
  spoilt: readonly Spoilt[],
): Names {
  const passages = new Map<Id, Id>();
  for (const record of records) {
    const key = record.list === "passages" ? record.values.from?.[0]?.key : undefined;
    if (record.id !== null && key !== undefined) passages.set(record.id, key);
  }
  const given = new Map<Id, AnyRecord>();
  const findings: Finding[] = [];
  for (const record of records) {
    if (record.id === null) continue;
    if (given.has(record.id) || sources.has(record.id)) findings.push(duplicate(record, record.id));
    else given.set(record.id, record);
  }
  const named = new Map<Id, AnyLinked>();
  const made = new Map<Id, number>();
  for (const record of records) {
    if (record.id !== null) {
      if (given.get(record.id) === record) named.set(record.id, linkedAs(record, record.id));
      continue;
    }
    const base = madeNameOf(record, (key) => passages.get(key) ?? key);
    const count = (made.get(base) ?? 0) + 1;
    made.set(base, count);
    let id = count === 1 ? base : `${base}#${count}`;
    while (given.has(id) || named.has(id)) id = `${id}#`;
    named.set(id, linkedAs(record, id));
  }
  const lost = new Set(spoilt.map((one) => one.id).filter((id) => id !== "" && !named.has(id)));
  return { records: named, lost, findings };
}

/** A record without an id that goes by the name it had is the same object again, so that what was kept for it is found. */
const linkedBefore = new WeakMap<AnyRecord, AnyLinked>();

/** A record by its name; one that is written with it is itself. */
export function linkedAs(record: AnyRecord, id: Id): AnyLinked {
  if (record.id === id) return record as AnyLinked;
  const before = linkedBefore.get(record);
  if (before?.id === id) return before;
  const { list, named, values, file } = record;
  const linked = placed({ list, id, named, values, file } as Saying, nodeOf, record) as AnyLinked;
  linkedBefore.set(record, linked);
  return linked;
}

// Of a record that only moved with its text the places are found when they are asked for.
const nodeOf = (record: AnyRecord): MapNode => record.node;

/** A record by the name that it was last given; undefined where it was given none. */
export function linkedLast(record: AnyRecord): AnyLinked | undefined {
  return record.named ? (record as AnyLinked) : linkedBefore.get(record);
}

/**
 * `OF:DIMENSION@KEY` of a measurement, `WHO:CLAIM@KEY` of a position, a plain number for a reading; `sourceOf` tells the
 * source of a passage, `called` what the records it names go by.
 */
export function madeNameOf(
  record: AnyRecord,
  sourceOf: (key: Id) => Id,
  called: (id: Id) => Id = (id) => id,
): Id {
  const first = "from" in record.values ? record.values.from?.[0]?.key : undefined;
  const key = first === undefined ? "" : `@${called(sourceOf(first))}`;
  const { list, values } = record;
  // Joined and not added up, a name is one string and not a chain of them.
  if (list === "measurements") return [called(values.of), ":", inName(values.dimension), key].join("");
  if (list === "positions")
    return [values.who.map(called).join("-"), ":", called(values.claim), key].join("");
  return [list, key].join("");
}

const inName = remembered((words) =>
  words
    .normalize("NFC")
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, "-"),
);

function duplicate(record: AnyRecord, id: Id): Finding {
  const message = say`Duplicate id \`${id}\`, expected another name; the first is kept`;
  return finding("duplicate-id", message, spanOf(record, "id"), { about: [id] });
}
