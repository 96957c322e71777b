import { byText } from "../../base/order.ts";
import type { ListName } from "../../read/grammar/field.ts";
import { kindOf } from "../../read/grammar/kinds.ts";
import { isList } from "../../read/edit/written.ts";
import type { Written, WrittenMap } from "../../read/edit/written.ts";
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
  const bySource = sourceFiles(files);
  const own = cited === null || !("from" in kindOf(list).fields) ? undefined : bySource.get(cited);
  if (own !== undefined) return { file: own, record: withoutHead(record, cited), head: "" };
  const like = mostLike(graph, list, record);
  const folder = folderOfSources(bySource);
  if (cited !== null && folder !== null && read.has(list) && graph.sources.has(cited))
    return {
      file: `${folder}${cited}.yaml`,
      record: withoutHead(record, cited),
      head: `source: ${cited}\n\n`,
    };
  return { file: like ?? onlyFile(files) ?? `${list}.yaml`, record, head: "" };
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

/** Files by the source that their head names. */
function sourceFiles(files: ReadonlyMap<string, string>): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  for (const [file, text] of files) {
    if (!/\.ya?ml$/u.test(file) || file === "corpus.yaml") continue;
    const head = /^\ufeff?source:[ \t]*["']?([^\s"'#]+)/mu.exec(text)?.[1];
    if (head !== undefined && !found.has(head)) found.set(head, file);
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
function mostLike(graph: Graph, list: ListName, record: WrittenMap): string | null {
  const scores = new Map<string, number>();
  for (const other of graph.list(list)) {
    if (other.file.endsWith(".csv")) continue;
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

/** The one file of records that a small corpus has; null where there are none or several. */
function onlyFile(files: ReadonlyMap<string, string>): string | null {
  const all = [...files.keys()].filter((file) => /\.ya?ml$/u.test(file) && file !== "corpus.yaml");
  return all.length === 1 ? (all[0] ?? null) : null;
}
