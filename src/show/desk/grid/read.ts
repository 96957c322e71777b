import type { Finding, Id } from "../../../base/finding.ts";
import type { Quantity } from "../../../base/quantity.ts";
import { parseQuantity } from "../../../base/quantity/quantity-text.ts";
import type { QuantityContext } from "../../../base/quantity/quantity-text.ts";
import { ownU } from "../../../derive/prepare/select.ts";
import { nearest } from "../../../base/nearest.ts";
import { row as rowOf, say } from "../../../base/text/said/said.ts";
import type { Text } from "../../../base/text/said/said.ts";
import { valueTrouble } from "../../../link/dimension.ts";
import type { Graph, MeasurementRecord } from "../../../link/graph.ts";
import { labelText } from "../../../link/names/label.ts";
import { checkReferences } from "../../../link/references/check.ts";
import { expected } from "../../../link/references/points-to.ts";
import type { Known } from "../../../link/references/points-to.ts";
import { suchAs } from "../../../read/decode/named.ts";
import { decoderFor } from "../../../read/decode/decode.ts";
import { readRecord } from "../../../read/records.ts";
import { siUnitFor, siWords } from "../../artefacts/si-words.ts";
import { withheldIn } from "../../withhold.ts";
import { placed } from "../forms/checked/placed.ts";
import { troublesOf } from "../forms/checked/troubles.ts";
import { quantityWords } from "../forms/checked/understood.ts";
import { fieldsIn } from "../forms/layout.ts";
import { dimensionKnown, dimensionNames } from "./columns/meaning.ts";
import { saidIn } from "./draft.ts";
import type { GridDraft, GridRow } from "./draft.ts";
import { commonOf } from "./figure.ts";
import { saidBy } from "./said.ts";
import type { RowSaid } from "./said.ts";

/** Something to be said of a cell, with texts that could stand there instead, the likeliest first. */
export interface CellTold {
  readonly column: string;
  readonly message: Text;
  readonly offered: readonly string[];
}

/** How a row is read. */
export interface RowRead {
  readonly key: number;
  /** What the thing is called, and its id; null where none is found, or none that may be named. */
  readonly of: { readonly id: Id; readonly name: Text } | null;
  /** A new artefact is made for it. */
  readonly fresh: boolean;
  /** The name fits no artefact, so that one could be made of it. */
  readonly unmet: boolean;
  /** The figure in SI: `182 ± 0.3 mm`; null where it cannot be read. */
  readonly si: string | null;
  /** The figure as it will be written, and as it is understood, in words. */
  readonly written: string;
  readonly understood: Text | null;
  /** What has to be mended before the row can be saved. */
  readonly troubles: readonly CellTold[];
  /** What should be looked at, and keeps nothing back. */
  readonly notes: readonly CellTold[];
}

/** A row with the record that it would be; null where it cannot be one yet, or is of a thing that is to be made. */
export interface RowRecord {
  readonly read: RowRead;
  readonly said: RowSaid;
  readonly record: MeasurementRecord | null;
}

/** The file that a row is read as; no file of a corpus has such a name. */
export const gridFile = "\u0000grid";

interface Remembered {
  readonly rows: Map<string, RowRecord>;
  readonly known: Known;
}

const remembered = new WeakMap<Graph, Remembered>();

/** How the rows of a grid are read, those that were read before recalled. Rows without anything in them are passed over. */
export function rowsRead(graph: Graph, draft: GridDraft): readonly RowRecord[] {
  const { rows, known } = memoryOf(graph);
  if (rows.size > 20_000) rows.clear();
  const every = JSON.stringify(draft.every);
  return draft.rows.flatMap((row) => {
    if (Object.values(row.cells).every((text) => text.trim() === "")) return [];
    const fresh = draft.fresh.includes(saidIn(draft, row, "of"));
    const key = JSON.stringify([row.cells, every, fresh]);
    const made = rows.get(key) ?? rowRead(graph, known, draft, row);
    rows.set(key, made);
    return [made.read.key === row.key ? made : { ...made, read: { ...made.read, key: row.key } }];
  });
}

/** What there is to say of what holds for every row. */
export function everyRead(graph: Graph, draft: GridDraft): readonly CellTold[] {
  const text = draft.every["value"] ?? "";
  if (text.trim() === "") return [];
  const common = commonOf(text, graph.settings.quantities);
  return "code" in common ? [{ column: "value", message: common.message, offered: [] }] : [];
}

function memoryOf(graph: Graph): Remembered {
  const before = remembered.get(graph);
  if (before) return before;
  const lost = new Set([...graph.leftOut, ...(graph.spoilt ?? [])].map((one) => one.id));
  const names = { records: graph.records, lost, findings: [] };
  const made = { rows: new Map(), known: { names, sources: graph.sources, lost: new Set<Id>() } };
  remembered.set(graph, made);
  return made;
}

function rowRead(graph: Graph, known: Known, draft: GridDraft, row: GridRow): RowRecord {
  const said = saidBy(graph, draft, row);
  const { of, values } = said;
  const context = contextIn(graph, values["coverage"]);
  const unmet = of !== null && of.is !== "found";
  // What the thing is called is read in a manner of its own: a name or number is no id.
  const whole = placed(unmet ? { ...values, of: "unmet" } : values);
  const decoder = decoderFor(gridFile, graph.settings.quantities, (node, text) => [
    { file: gridFile, start: node.start, end: node.end, text },
  ]);
  const decoded = readRecord("measurements", whole.node, null, gridFile, decoder);
  const findings: Finding[] = [...decoder.findings];
  let record: MeasurementRecord | null = null;
  if ("list" in decoded && decoded.list === "measurements") {
    const named = { ...decoded, id: decoded.id ?? "", named: decoded.id !== null };
    if (decoded.id !== null && (graph.records.has(decoded.id) || graph.sources.has(decoded.id)))
      findings.push(duplicate(named, decoded.id));
    const checked = checkReferences(unmet ? withoutThing(named) : named, known, findings);
    const kept = checked?.list === "measurements" ? checked : null;
    const trouble = kept && valueFinding(graph, kept);
    if (trouble) findings.push(trouble);
    record = !unmet && kept ? kept : null;
  }
  const withheld = withheldIn(graph);
  const troubles: readonly CellTold[] = [
    ...(of === null ? [] : calledTroubles(of, saidIn(draft, row, "of"))),
    ...troublesOf(graph, findings, whole, fieldsIn("measurements"), values).map(
      ({ path, message, fixes }) => ({
        column: String(path[0] ?? "value"),
        message,
        offered:
          path[0] === "value" && fixes.length === 0
            ? otherUnits(values["value"], context)
            : fixes.filter((one) => !withheld(one.split(/\s/u)[0] ?? "")),
      }),
    ),
  ];
  const written = typeof values["value"] === "string" ? values["value"] : "";
  const quantity = quantityIn(written, context);
  return {
    said,
    record: troubles.length === 0 ? record : null,
    read: {
      key: row.key,
      of: of?.is === "found" && !withheld(of.id) ? { id: of.id, name: labelText(graph, of.id) } : null,
      fresh: of?.is === "fresh",
      unmet: of?.is === "none",
      si:
        quantity &&
        siWords(
          { ...quantity, u: record ? ownU(record) : quantity.u },
          siUnitFor(quantity.kind, [quantity.value]),
        ),
      written,
      understood: quantity && quantityWords(quantity),
      troubles,
      notes: notesOn(graph, saidIn(draft, row, "dimension")),
    },
  };
}

function contextIn(graph: Graph, coverage: unknown): QuantityContext {
  const context = graph.settings.quantities;
  return coverage === "1" || coverage === "2" ? { ...context, coverage: coverage === "1" ? 1 : 2 } : context;
}

function quantityIn(text: string, context: QuantityContext): Quantity | null {
  const read = text === "" ? null : parseQuantity(text, context);
  return read && "ok" in read ? read.ok : null;
}

/** A figure with each of the units that its own, which nobody knows, may be a slip for. */
function otherUnits(value: unknown, context: QuantityContext): readonly string[] {
  const read = typeof value === "string" ? parseQuantity(value, context) : null;
  if (typeof value !== "string" || !read || "ok" in read || read.problem.code !== "unknown-unit") return [];
  const { start, end } = read.problem;
  return context.units
    .near(value.slice(start, end))
    .map((unit) => value.slice(0, start) + unit + value.slice(end))
    .filter((text) => "ok" in parseQuantity(text, context))
    .slice(0, 3);
}

function duplicate({ file, node }: Pick<MeasurementRecord, "file" | "node">, id: Id): Finding {
  const at = node.entries.find(({ key }) => key === "id")?.value ?? node;
  const message = say`Duplicate id \`${id}\`, expected another name`;
  return {
    rule: "duplicate-id",
    level: "error",
    message,
    at: { file, start: at.start, end: at.end },
    about: [id],
    fix: null,
    accepted: null,
  };
}

/** A record whose thing is not looked up. */
function withoutThing(record: MeasurementRecord): MeasurementRecord {
  const { of: _, ...values } = record.values;
  return { ...record, values } as unknown as MeasurementRecord;
}

function valueFinding(graph: Graph, record: MeasurementRecord): Finding | null {
  const name = graph.dimensionName(record.values.dimension);
  const anySign = graph.settings.dimensions.some((one) => one.anySign && one.name === name);
  return valueTrouble(record, name, graph.dimensionKind(name) ?? undefined, anySign);
}

function calledTroubles(of: NonNullable<RowSaid["of"]>, text: string): readonly CellTold[] {
  if (of.is === "found" || of.is === "fresh") return [];
  if (of.is === "none") {
    const message = say`Unknown artefact \`${text}\`, expected ${suchAs(expected(["artefacts"]), of.near)}`;
    return [{ column: "of", message, offered: of.near }];
  }
  const message = say`Unexpected name \`${text}\`, which several artefacts have: ${rowOf(of.ids.slice(0, 6), "comma")}`;
  return [{ column: "of", message, offered: of.ids.slice(0, 6) }];
}

/** A dimension that the corpus does not have yet, and what it may be a slip for. */
function notesOn(graph: Graph, dimension: string): readonly CellTold[] {
  if (dimension === "" || dimensionKnown(graph, dimension) !== null) return [];
  const offered = nearest(dimension, dimensionNames(graph), 3);
  return [
    {
      column: "dimension",
      message: say`Nothing in the corpus has the dimension \`${dimension}\` yet`,
      offered,
    },
  ];
}
