import type { Id } from "../../base/finding.ts";
import { defaultStyle } from "../../read/bibliography/style/shipped.ts";
import type { ListName } from "../../read/grammar/field.ts";
import { listNames } from "../../read/grammar/kinds.ts";
import type { AnyRecord } from "../../read/record.ts";
import type { Reading } from "../../read/read.ts";
import { valueTrouble } from "../dimension.ts";
import type { AnyLinked, Graph, Linked } from "../graph.ts";
import { linkedAs, linkedLast } from "../names/name.ts";
import { sameEach, sameValue, saysAs } from "./changed.ts";

/** What was read, with the graph that it was tied to. */
export interface Tied {
  readonly reading: Reading;
  readonly graph: Graph;
}

/** Fields that nothing is tied by, whatever the kind of record. */
const everywhere = ["note", "short", "entered-by", "checked-by"];

/** Fields that nothing is tied by: another value there leaves every name, reference, part, year and author as they are. */
const apart: Readonly<Record<ListName, readonly string[]>> = {
  scholars: [],
  questions: ["text"],
  claims: ["text"],
  passages: ["at", "quote", "lang", "translation", "paraphrase", "selector"],
  positions: ["stance", "words", "certainty"],
  artefacts: [
    "kind",
    "material",
    "found-at",
    "coordinates",
    "held-at",
    "access",
    "shape",
    "withhold-location",
  ],
  images: ["file", "kind", "scale", "made-by", "when", "credit", "licence", "publish"],
  observations: ["text", "present", "basis"],
  // A value is held against its dimension besides.
  measurements: [
    "value",
    "state",
    "basis",
    "between",
    "instrument",
    "to-nearest",
    "readings",
    "n",
    "spread",
    "coverage",
    "shares-error",
    "condition",
  ],
  relations: ["at-least", "at-most", "because"],
  arguments: ["text", "scheme", "strength", "why-strength"],
  derivations: ["looks", "text"],
  examinations: ["method", "cost", "destructive", "permit"],
  talks: ["title"],
  searches: ["where", "words", "when", "found", "screened", "kept", "left-out"],
  readings: ["status", "when"],
};

/**
 * The graph of a reading that says of every tie what an earlier one said: that one's graph with the records that were
 * changed, or moved in their files, in their places. Null where anything could be tied otherwise.
 */
export function withReplaced(before: Tied | undefined, reading: Reading): Graph | null {
  if (!before || !sameBeside(before.reading, reading)) return null;
  const { graph } = before;
  const replaced = new Map<AnyLinked, AnyLinked>();
  const files = new Set<string>();
  /** Lists of which a record says something else. */
  const others = new Set<ListName>();
  for (const [place, record] of reading.records.entries()) {
    const was = before.reading.records[place];
    if (was === record) continue;
    const linked = was && linkedLast(was);
    // What was dropped from the graph, or lost a reference, is tied anew.
    if (!linked || graph.records.get(linked.id) !== linked || !isAlike(was, record)) return null;
    const differing = fieldsDiffering(was, record);
    if (!differing.every((name) => everywhere.includes(name) || apart[was.list].includes(name))) return null;
    const one = linkedAs(record, linked.id);
    if (differing.length > 0) others.add(was.list);
    if (differing.length > 0 && !fits(one, graph)) return null;
    replaced.set(linked, one);
    files.add(record.file);
  }
  const other = besideRecords(reading);
  if (replaced.size === 0) return { ...graph, ...other };
  // What was said of a file is said of places in it, which may be others now.
  if (graph.findings.some(({ at }) => at !== null && files.has(at.file))) return null;
  return { ...graph, ...other, ...inPlaceOf(graph, replaced, others) };
}

/** What a graph has of a reading that no record is tied by. */
export function besideRecords(
  reading: Reading,
): Required<Pick<Graph, "spoilt" | "pluginFiles" | "citationStyle" | "prose" | "companions">> {
  const { spoilt, pluginFiles, citationStyle, prose, companions } = reading;
  return {
    spoilt,
    pluginFiles,
    citationStyle: citationStyle ?? { shipped: defaultStyle },
    prose: prose ?? [],
    companions: companions ?? [],
  };
}

/** Whether two readings say the same beside their records. */
function sameBeside(one: Reading, other: Reading): boolean {
  return (
    one.settings === other.settings &&
    one.records.length === other.records.length &&
    sameValue(one.companions ?? [], other.companions ?? []) &&
    sameValue(
      one.spoilt.map(({ id }) => id),
      other.spoilt.map(({ id }) => id),
    ) &&
    sameEach(one.sources, other.sources)
  );
}

function isAlike(one: AnyRecord, other: AnyRecord): boolean {
  return one.list === other.list && one.id === other.id && one.file === other.file;
}

function fieldsDiffering(one: AnyRecord, other: AnyRecord): readonly string[] {
  if (one.values === other.values) return [];
  const [was, is] = [one.values, other.values] as unknown as readonly Readonly<Record<string, unknown>>[];
  const names = new Set([...Object.keys(was ?? {}), ...Object.keys(is ?? {})]);
  return [...names].filter((name) => !sameValue(was?.[name], is?.[name]));
}

/** Whether a measurement's value is still one of its dimension, whose kind is that of most values. */
function fits(record: AnyLinked, graph: Graph): boolean {
  if (record.list !== "measurements") return true;
  const was = graph.records.get(record.id);
  if (was?.list !== "measurements" || was.values.value.kind !== record.values.value.kind) return false;
  const name = graph.dimensionName(record.values.dimension);
  const anySign = graph.settings.dimensions.some((one) => one.anySign && one.name === name);
  return valueTrouble(record, name, graph.dimensionKind(name) ?? undefined, anySign) === null;
}

/** The records and lists of a graph with some records in the places of others; `others` are lists that say something else. */
function inPlaceOf(
  graph: Graph,
  replaced: ReadonlyMap<AnyLinked, AnyLinked>,
  others: ReadonlySet<ListName>,
): Pick<Graph, "records" | "list"> {
  const records = new Map<Id, AnyLinked>(graph.records);
  for (const is of replaced.values()) records.set(is.id, is);
  const touched = new Set([...replaced.keys()].map((one) => one.list));
  const lists = new Map(
    listNames.map((list) => {
      const those: readonly AnyLinked[] = graph.list(list);
      if (!touched.has(list)) return [list, those] as const;
      const now = those.map((one) => replaced.get(one) ?? one);
      if (!others.has(list)) saysAs(now, those);
      return [list, now] as const;
    }),
  );
  return {
    records,
    list: <L extends ListName>(list: L) => (lists.get(list) ?? []) as unknown as readonly Linked<L>[],
  };
}
