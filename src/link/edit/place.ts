import { byText } from "../../base/order.ts";
import type { ListName } from "../../read/grammar/field.ts";
import { kindOf, listNames } from "../../read/grammar/kinds.ts";
import { headOf } from "../../read/edit/head.ts";
import { isList } from "../../read/edit/written.ts";
import type { Written, WrittenMap } from "../../read/edit/written.ts";
import { ownerOfFile } from "../../read/settings/companions/files.ts";
import type { AnyLinked, Graph } from "../graph.ts";

/** Where a new record is written, and the record as it stands there: what the file's head says is not said again. */
export interface Placed {
  readonly file: string;
  readonly record: WrittenMap;
  /** What a file that is not there yet begins with. */
  readonly head: string;
}

/**
 * The file where a person would put a new record: that of its source where there is one for each, else the one in which
 * most records like it stand, else a file of its kind.
 */
export function placeOf(
  graph: Graph,
  files: ReadonlyMap<string, string>,
  list: ListName,
  record: WrittenMap,
): Placed {
  const cited = firstCited(graph, record);
  const heads = headsOf(files);
  const bySource = new Map([...heads].map(([path, key]) => [key, path] as const).toReversed());
  const own = cited === null || !("from" in kindOf(list).fields) ? undefined : bySource.get(cited);
  if (own !== undefined) return { file: own, record: withoutHead(record, cited), head: "" };
  // A file that is from one source is not the place of what is from another, or from none.
  const headed = new Set("from" in kindOf(list).fields ? heads.keys() : []);
  const like = mostLike(graph, list, record, headed);
  const folder = folderOfSources(bySource);
  const fresh =
    cited === null || folder === null || !isFileName.test(cited) ? null : `${folder}${cited}.yaml`;
  if (fresh !== null && read.has(list) && graph.sources.has(cited ?? "") && fresh !== "corpus.yaml") {
    // One that is there already, and says at its head nothing or another source, is a file like any other.
    if (files.has(fresh)) return { file: fresh, record, head: "" };
    return { file: fresh, record: withoutHead(record, cited), head: `source: ${cited}\n\n` };
  }
  return { file: like ?? onlyFile(files, headed) ?? free(list, headed), record, head: "" };
}

/** Keys after which a file can be called on every system; others have signs that mean something to a disk. */
const isFileName = /^[\p{L}\p{N}][\p{L}\p{N}_+-]*(?:\.[\p{L}\p{N}_+-]+)*$/u;

/** A file called after its kind, that is from no source. */
function free(list: ListName, headed: ReadonlySet<string>): string {
  return headed.has(`${list}.yaml`) ? `${list}-without-source.yaml` : `${list}.yaml`;
}

/** Kinds that are taken from what is read, so that they stand in the file of their source. */
const read: ReadonlySet<ListName> = new Set(["passages", "positions", "observations", "measurements"]);

/** The source that a record names first, that of a passage for a passage. */
function firstCited(graph: Graph, record: WrittenMap): string | null {
  const from = record["from"];
  const first = from === undefined ? undefined : isListOf(from) ? from[0] : from;
  if (typeof first !== "string") return null;
  const key = first.split(/\s/u)[0] ?? "";
  const passage = graph.records.get(key);
  return passage?.list === "passages" ? (passage.values.from?.[0]?.key ?? null) : key;
}

function isListOf(value: Written): value is readonly Written[] {
  return typeof value !== "string" && isList(value);
}

const known = new WeakMap<ReadonlyMap<string, string>, ReadonlyMap<string, string>>();

/** The source that the head of each file names, where one does; looked up once for all records of a step. */
function headsOf(files: ReadonlyMap<string, string>): ReadonlyMap<string, string> {
  const before = known.get(files);
  if (before) return before;
  const found = new Map<string, string>();
  known.set(files, found);
  for (const [file, text] of files) {
    const head = headOf(file, text);
    if (head) found.set(file, head.key);
  }
  return found;
}

/** The folder in which each source has a file called after it; null where that is no habit of this corpus. */
function folderOfSources(bySource: ReadonlyMap<string, string>): string | null {
  const folders = [...bySource].flatMap(([key, file]) =>
    file.endsWith(`${key}.yaml`) ? [file.slice(0, -`${key}.yaml`.length)] : [],
  );
  const [first] = folders;
  const habit = folders.length >= 2 && folders.length * 2 > bySource.size;
  return habit && first !== undefined && folders.every((one) => one === first) ? first : null;
}

function withoutHead(record: WrittenMap, key: string | null): WrittenMap {
  return Object.fromEntries(
    Object.entries(record).filter(([name, value]) => name !== "from" || value !== key),
  );
}

/** The file of text in which most records of the list stand: beside the whole of a part, then by what they are about. */
function mostLike(
  graph: Graph,
  list: ListName,
  record: WrittenMap,
  without: ReadonlySet<string>,
): string | null {
  const scores = new Map<string, number>();
  for (const other of graph.list(list)) {
    if (other.file.endsWith(".csv") || without.has(other.file)) continue;
    if (ownerOfFile(graph.companions, other.file) !== null) continue;
    const whole = other.id === record["part-of"] ? 10_000 : 0;
    scores.set(other.file, (scores.get(other.file) ?? 0) + whole + likeness(other, record));
  }
  const [best] = [...scores].toSorted(([a, n], [b, m]) => m - n || byText(a, b));
  return best?.[0] ?? null;
}

/** Fields that say what a record is about, so that records that share one belong together. */
const subjects = ["part-of", "of", "claim", "therefore", "plugin", "about"];

function likeness(other: AnyLinked, record: WrittenMap): number {
  const values = other.values as Readonly<Record<string, unknown>>;
  const shared = subjects.filter((name) => {
    const [mine, theirs] = [texts(record[name]), texts(values[name])];
    return mine.some((one) => theirs.includes(one));
  });
  return 1 + 100 * shared.length;
}

function texts(value: unknown): readonly string[] {
  return (Array.isArray(value) ? value : [value]).filter((one) => typeof one === "string");
}

/** The one file of records that a small corpus has; null where there are none or several, or it is called after a kind. */
function onlyFile(files: ReadonlyMap<string, string>, without: ReadonlySet<string>): string | null {
  const all = [...files.keys()].filter((file) => /\.ya?ml$/u.test(file) && file !== "corpus.yaml");
  const [only] = all;
  if (all.length !== 1 || only === undefined || without.has(only)) return null;
  return listNames.some((list) => only === `${list}.yaml`) ? null : only;
}
