import type { Finding, Id, Span } from "../base/finding.ts";
import type { ListName, ValuesOf } from "./grammar/field.ts";
import type { everywhere, kinds } from "./grammar/kinds.ts";
import { nodeAt } from "./yaml/tree.ts";
import type { MapNode, Step } from "./yaml/tree.ts";

/** The fields of one kind after reading, those that every record may have among them. */
export type Values<L extends ListName> = ValuesOf<(typeof kinds)[L]["fields"]> & ValuesOf<typeof everywhere>;

interface RecordIn<L extends ListName> {
  readonly list: L;
  /** The id as written; null for a record that goes without (it is named when the graph is made). */
  readonly id: Id | null;
  /** Whether it is written with an id. */
  readonly named: boolean;
  readonly values: Values<L>;
  readonly file: string;
  /** The record as written, with the place of each value. */
  readonly node: MapNode;
}

/** A record of one list, or of any of several. */
export type RecordOf<L extends ListName> = { readonly [K in L]: RecordIn<K> }[L];

/** A record of any kind. */
export type AnyRecord = RecordOf<ListName>;

/** A record whose required fields are missing or bad: not loaded, but its id is known. */
export interface Spoilt {
  readonly id: Id;
  /** Where it stands, as it is written; left out where the file could not be read at all. */
  readonly written?: { readonly list: ListName; readonly file: string; readonly node: MapNode };
}

/** What one file of records gives. */
export interface FileRecords {
  readonly records: readonly AnyRecord[];
  readonly spoilt: readonly Spoilt[];
  readonly findings: readonly Finding[];
}

/** What a record says, without the tree that says where. */
export type Saying = Pick<AnyRecord, "list" | "id" | "named" | "values" | "file">;

/** A record without its tree, and how that is found. */
interface Placed {
  readonly by: (from: unknown) => MapNode;
  readonly from: unknown;
}

/** One getter for all records: one of its own for each takes several times the room of the record. */
const node: PropertyDescriptor & ThisType<Placed> = {
  enumerable: true,
  configurable: true,
  get() {
    return this.by(this.from);
  },
};

/** Makes an object with room for what a record has and no more, which no literal that is added to afterwards has. */
function made(this: Record<string, unknown>, { list, id, named, values, file }: Saying): void {
  this["list"] = list;
  this["id"] = id;
  this["named"] = named;
  this["values"] = values;
  this["file"] = file;
}
made.prototype = Object.prototype;
const Made = made as unknown as new (saying: Saying) => Saying;

/** Gives a record its tree, which is made when it is asked for: `by` makes the same one each time `from` is given. */
export function placed<F>(saying: Saying, by: (from: F) => MapNode, from: F): AnyRecord {
  const record = new Made(saying);
  Object.defineProperty(record, "by", { value: by });
  Object.defineProperty(record, "from", { value: from });
  return Object.defineProperty(record, "node", node) as AnyRecord;
}

/** The place of a record's value, or of the whole record where it has none. */
export function spanOf(record: Pick<AnyRecord, "file" | "node">, ...path: readonly Step[]): Span {
  const node = nodeAt(record.node, path);
  return { file: record.file, start: node.start, end: node.end };
}
