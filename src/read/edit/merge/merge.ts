import { isList, saysSame } from "../written.ts";
import type { Written } from "../written.ts";
import type { Field, Fields } from "../../grammar/field.ts";
import { everywhere, kindOf } from "../../grammar/kinds.ts";
import type { RecordRead } from "./reading.ts";

/** What became of something that two sides had: nothing, one changed it, both did alike, or they clash. */
export type Became = "same" | "mine" | "theirs" | "both" | "clash";

/** Which reading a clash is settled for, or what is written in place of both. */
export type Answer = "mine" | "theirs" | "both" | { readonly own: string };

/** A field of a record in three readings; null where it is not there. */
export interface FieldMerge {
  readonly field: string;
  readonly became: Became;
  readonly base: Written | null;
  readonly mine: Written | null;
  readonly theirs: Written | null;
  /** Whether both values can stand together, as one list. */
  readonly canBeBoth: boolean;
}

/** A record in three readings. Where one side took it out and the other changed it, it clashes as a whole. */
export interface RecordMerge {
  readonly key: string;
  readonly became: Became;
  readonly base: RecordRead | null;
  readonly mine: RecordRead | null;
  readonly theirs: RecordRead | null;
  /** The fields in which the readings differ; none where the record is there on one side only. */
  readonly fields: readonly FieldMerge[];
}

type Records = ReadonlyMap<string, RecordRead>;

/**
 * Compares two readings of a file, and what both were made from where that is known, record by record and field by
 * field. Without it, what only one side has was put in by that side, and nothing was taken out.
 */
export function mergedRecords(base: Records | null, mine: Records, theirs: Records): readonly RecordMerge[] {
  const keys = new Set([...mine.keys(), ...theirs.keys(), ...(base?.keys() ?? [])]);
  return [...keys].map((key) => {
    const [old, own, other] = [base?.get(key) ?? null, mine.get(key) ?? null, theirs.get(key) ?? null];
    const fields = own && other ? fieldMerges(old, own, other) : [];
    return { key, base: old, mine: own, theirs: other, fields, became: becameOf(old, own, other, fields) };
  });
}

function becameOf(
  base: RecordRead | null,
  mine: RecordRead | null,
  theirs: RecordRead | null,
  fields: readonly FieldMerge[],
): Became {
  if (mine && theirs) {
    if (fields.some((one) => one.became === "clash")) return "clash";
    const who = new Set(fields.map((one) => one.became));
    return who.size === 0
      ? "same"
      : who.size > 1 || who.has("both")
        ? "both"
        : who.has("mine")
          ? "mine"
          : "theirs";
  }
  const left = mine ?? theirs;
  if (!left) return "both";
  const taker = mine ? "theirs" : "mine";
  if (!base) return mine ? "mine" : "theirs";
  return saysSame(base.fields, left.fields) ? taker : "clash";
}

function fieldMerges(base: RecordRead | null, mine: RecordRead, theirs: RecordRead): readonly FieldMerge[] {
  const names = new Set([mine, theirs, base].flatMap((one) => Object.keys(one?.fields ?? {})));
  const merges = [...names].flatMap((field): readonly FieldMerge[] => {
    const [was, one, two] = [base, mine, theirs].map((record) => record?.fields[field] ?? null);
    const [old, own, other] = [was ?? null, one ?? null, two ?? null];
    if (saysSame(own, other)) {
      if (base === null || saysSame(own, old)) return [];
      return [{ field, became: "both" as const, base: old, mine: own, theirs: other, canBeBoth: false }];
    }
    const became = base
      ? threeWay(old, own, other)
      : own === null
        ? "theirs"
        : other === null
          ? "mine"
          : "clash";
    const canBeBoth =
      became === "clash" && own !== null && other !== null && isListed(mine, field, own, other);
    return [{ field, became, base: old, mine: own, theirs: other, canBeBoth }];
  });
  return isTornApart(mine, merges) ? merges.map(asClash) : merges;
}

/** Columns of a table that are one quantity: half of it from each side would be nobody's. */
const quantity: ReadonlySet<string> = new Set(["value", "unit", "uncertainty"]);

function isTornApart({ list }: RecordRead, merges: readonly FieldMerge[]): boolean {
  const own = merges.filter(({ field, became }) => quantity.has(field) && became !== "both");
  return list === "measurements" && new Set(own.map((one) => one.became)).size > 1;
}

function asClash(one: FieldMerge): FieldMerge {
  return quantity.has(one.field) && one.became !== "both" ? { ...one, became: "clash" } : one;
}

function threeWay(base: Written | null, mine: Written | null, theirs: Written | null): Became {
  return saysSame(base, mine) ? "theirs" : saysSame(base, theirs) ? "mine" : "clash";
}

const lists: readonly Field["type"][] = ["refs", "texts", "citations", "quantities", "items"];

/** Whether a field takes several values. */
function isListed({ list }: RecordRead, field: string, ...values: readonly Written[]): boolean {
  const fields: Fields = list === null ? {} : { ...kindOf(list).fields, ...everywhere };
  const type = fields[field]?.type;
  return type === undefined ? values.every(isList) : lists.includes(type);
}

/** Both values as one list: mine, then what theirs has beside them. */
export function together(mine: Written, theirs: Written): Written {
  const all = (value: Written): readonly Written[] => (isList(value) ? value : [value]);
  const own = all(mine);
  return [...own, ...all(theirs).filter((one) => !own.some((it) => saysSame(it, one)))];
}

/** The value that a field has after its clash, if it is one, was settled. */
export function settledValue(merge: FieldMerge, answer: Answer | undefined): Written | null {
  const side = merge.became === "clash" ? (answer ?? "mine") : merge.became === "theirs" ? "theirs" : "mine";
  if (typeof side === "object") return side.own.trim() === "" ? null : side.own;
  if (side !== "both") return merge[side];
  return merge.mine === null || merge.theirs === null
    ? (merge.mine ?? merge.theirs)
    : together(merge.mine, merge.theirs);
}

/** What a clash is answered by: the record's key, and the field where it is one field's. */
export function clashName(record: RecordMerge, field?: FieldMerge): string {
  return field ? `${record.key}\n${field.field}` : record.key;
}

/** The names of all clashes that are to be answered, in their order. */
export function clashesIn(merges: readonly RecordMerge[]): readonly string[] {
  return merges.flatMap((record) => {
    if (record.became !== "clash") return [];
    if (record.fields.length === 0) return [clashName(record)];
    return record.fields.flatMap((one) => (one.became === "clash" ? [clashName(record, one)] : []));
  });
}

/**
 * Whether records that are told apart by their order alone came or went: which of them is which is then not known, and
 * only their lines can say.
 */
export function isShifted(merges: readonly RecordMerge[]): boolean {
  return merges.some(({ key, base, mine, theirs }) => /#\d+$/u.test(key) && !(base && mine && theirs));
}
