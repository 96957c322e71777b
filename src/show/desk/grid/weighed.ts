import type { Id } from "../../../base/finding.ts";
import type { Text } from "../../../base/text/said/said.ts";
import { derive } from "../../../derive/derive.ts";
import type { ComputeMemo } from "../../../derive/run.ts";
import { countsUnder } from "../../../derive/lens.ts";
import { apart, comparable } from "../../../judge/rules/measurements/compare.ts";
import { link } from "../../../link/link.ts";
import type { Graph, MeasurementRecord } from "../../../link/graph.ts";
import { authorOrCorpus, labelText } from "../../../link/names/label.ts";
import type { Plugin } from "../../../plugin.ts";
import { readCorpus } from "../../../read/read.ts";
import type { Reading, ReadMemo } from "../../../read/read.ts";
import type { ListName } from "../../../read/grammar/field.ts";
import type { AnyRecord } from "../../../read/record.ts";
import type { SourceFile } from "../../../read/source-file.ts";
import { differenceWords, siUnitFor } from "../../artefacts/si-words.ts";
import { withheldIn } from "../../withhold.ts";
import type { GridDraft } from "./draft.ts";
import { gridFile, rowsRead } from "./read.ts";

/** The corpus that rows are weighed in. */
export interface GridCorpus {
  readonly graph: Graph;
  readonly files: readonly SourceFile[];
  readonly read: ReadMemo;
  readonly compute: ComputeMemo;
  readonly plugins: readonly Plugin[];
}

/** Another reading of the same dimension of the same thing: of the corpus, or of another row of the grid. */
export interface Beside {
  /** The record; null for a row. */
  readonly id: Id | null;
  readonly row: number | null;
  readonly figure: string;
  readonly who: Text;
  /** How far it lies off, and how far both uncertainties and honest repetition allow. */
  readonly by: string;
  readonly allowed: string;
}

/** A derivation that would take a row in, or would not and why. */
export interface Taker {
  readonly id: Id;
  readonly name: Text;
  /** Why it is left out; null where it enters. */
  readonly leftOut: Text | null;
}

/** What a row comes to among what is recorded. */
export interface RowWeighed {
  readonly key: number;
  /** At most six of each are told. */
  readonly against: readonly Beside[];
  /** How many readings of others it agrees with. */
  readonly agrees: number;
  /** Readings of the same source that say the same. */
  readonly twins: readonly Beside[];
  readonly takers: readonly Taker[];
  /** What the corpus would say against it as a whole. */
  readonly troubles: readonly Text[];
}

/** How another reading lies beside a row. */
interface Lying {
  readonly is: "against" | "agrees" | "twin";
  readonly told: Beside;
}

/** A row of the grid as a record among the others. */
interface Entered {
  readonly key: number;
  readonly record: MeasurementRecord;
}

/**
 * What the good rows come to when they stand in the corpus: each held against the other readings as the rule
 * `conflicting-measurements` does it, and with the derivations that would select it.
 */
export function rowsWeighed(corpus: GridCorpus, draft: GridDraft): readonly RowWeighed[] {
  const rows = rowsRead(corpus.graph, draft).flatMap(({ read, record }) =>
    // Rows that say the same are read as one; each is told from the others by its node.
    record ? [{ key: read.key, record: { ...record, node: { ...record.node } } }] : [],
  );
  if (rows.length === 0) return [];
  const reading = readCorpus(corpus.files, corpus.read);
  if (!("settings" in reading)) return [];
  const graph = tied(reading, rows);
  const keys = new Map(rows.map(({ record, key }) => [record.node, key]));
  const entered = graph.list("measurements").flatMap((record): readonly Entered[] => {
    const key = record.file === gridFile ? keys.get(record.node) : undefined;
    return key === undefined ? [] : [{ key, record }];
  });
  const groups = groupsIn(graph);
  const takers = takersIn(corpus, graph, entered);
  const troubles = troublesIn(graph, rows);
  const keyOf = new Map(entered.map(({ key, record }) => [record.id, key]));
  const found = new Map(entered.map((one) => [one.key, one.record]));
  return rows.map(({ key }) => {
    const record = found.get(key);
    const others = record ? (groups.get(record.id) ?? []) : [];
    const besides = record ? others.flatMap((other) => besideOf(graph, keyOf, record, other) ?? []) : [];
    return {
      key,
      against: toldOf(besides, "against"),
      agrees: besides.filter((one) => one.is === "agrees").length,
      twins: toldOf(besides, "twin"),
      takers: record ? (takers.get(record.id) ?? []) : [],
      troubles: troubles.get(key) ?? [],
    };
  });
}

/** As many others as are told one by one. */
const most = 6;

function toldOf(besides: readonly Lying[], is: Lying["is"]): readonly Beside[] {
  return besides.flatMap((one) => (one.is === is ? [one.told] : [])).slice(0, most);
}

/** Lists that decide what measurements are compared with and which derivations take them; the others are not tied again. */
const bearing: readonly ListName[] = ["measurements", "artefacts", "derivations", "passages", "scholars"];

function tied(reading: Reading, rows: readonly Entered[]): Graph {
  const own = rows.map(({ record }): AnyRecord => ({ ...record, id: record.named ? record.id : null }));
  const others = reading.records.filter(({ list }) => bearing.includes(list));
  return link({ ...reading, records: [...others, ...own] });
}

/** The measurements that each can be compared with, itself left out. */
function groupsIn(graph: Graph): ReadonlyMap<Id, readonly MeasurementRecord[]> {
  const withheld = withheldIn(graph);
  const found = new Map<Id, readonly MeasurementRecord[]>();
  for (const group of comparable({ graph, judgement: { counts: countsUnder(graph, {}) } })) {
    if (!group.some(({ file }) => file === gridFile)) continue;
    for (const one of group)
      if (one.file === gridFile)
        found.set(
          one.id,
          group.filter((other) => other !== one && !withheld(other.id)),
        );
  }
  return found;
}

function besideOf(
  graph: Graph,
  keyOf: ReadonlyMap<Id, number>,
  one: MeasurementRecord,
  other: MeasurementRecord,
): Lying | null {
  const row = keyOf.get(other.id) ?? null;
  const { kind, value } = one.values.value;
  const unit = siUnitFor(kind, [value, other.values.value.value]);
  const far = apart(one, other, graph);
  const sourceOf = ({ id }: MeasurementRecord): string => graph.provenance(id).sources.join(" ");
  const same = one.values.value.text === other.values.value.text && sourceOf(one) === sourceOf(other);
  if (!same && far === null) return null;
  const told = {
    id: row === null ? other.id : null,
    row,
    figure: other.values.value.text,
    who: authorOrCorpus(graph, other.id),
    by: differenceWords(far?.by ?? 0, unit),
    allowed: differenceWords(far?.allowed ?? 0, unit),
  };
  if (same) return { is: "twin", told };
  return { is: far !== null && far.by > far.allowed ? "against" : "agrees", told };
}

/** The derivations whose selection meets each row; those that are withheld, or would not run here, are not told. */
function takersIn(
  { compute, plugins }: GridCorpus,
  graph: Graph,
  entered: readonly Entered[],
): ReadonlyMap<Id, readonly Taker[]> {
  const own = new Set(entered.map(({ record }) => record.id));
  const withheld = withheldIn(graph);
  const found = new Map<Id, Taker[]>();
  const add = (id: Id, taker: Taker): void => {
    if (own.has(id)) found.set(id, [...(found.get(id) ?? []), taker]);
  };
  for (const { id, used, leftOut, merged, status } of derive(graph, plugins, compute, {}).byId.values()) {
    if (withheld(id) || status === "withheld") continue;
    const name = labelText(graph, id);
    const entering = new Set([
      ...used,
      ...merged.filter((ids) => ids.some((it) => used.includes(it))).flat(),
    ]);
    for (const it of entering) add(it, { id, name, leftOut: null });
    for (const { id: it, why } of leftOut) if (!entering.has(it)) add(it, { id, name, leftOut: why });
  }
  return found;
}

/** What is said against a row only once it stands beside the others: a dimension that is of two kinds among the rows. */
function troublesIn(graph: Graph, rows: readonly Entered[]): ReadonlyMap<number, readonly Text[]> {
  const keys = new Map(rows.map(({ record, key }) => [record.node, key]));
  const lost = graph.leftOut.flatMap((one) => {
    const { id } = one;
    const key = one.file === gridFile ? keys.get(one.node) : undefined;
    return key === undefined ? [] : [{ id, key }];
  });
  if (lost.length === 0) return new Map();
  return new Map(
    lost.map(({ id, key }) => {
      const own = graph.findings.filter(({ about, at }) => at?.file === gridFile && about.includes(id));
      return [key, own.slice(0, 1).map(({ message }) => message)] as const;
    }),
  );
}
