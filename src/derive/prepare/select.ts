import type { Id } from "../../base/finding.ts";
import { listsBy } from "../../base/lists/gathered.ts";
import { isList } from "../../base/json.ts";
import type { Json } from "../../base/json.ts";
import { remembered } from "../../base/text/remembered.ts";
import type { Said } from "../../base/text/said/said.ts";
import type { Graph, MeasurementRecord } from "../../link/graph.ts";
import { folded } from "../../link/dimension.ts";
import type { LeftOut, Measured } from "../../plugin.ts";
import { isSupposed } from "../../link/names/label.ts";
import { merged } from "./merge.ts";
import { leftOutFor } from "../recorded/left-out.ts";
import type { Choice } from "../lens.ts";
import { rereadIn } from "../trials/reread.ts";

/** One value that enters a computation, and the measurements it was made of. */
export interface Selected {
  readonly measured: Measured;
  readonly ids: readonly Id[];
  /** Where the artefact stands under the one named in `of`: what pairs are matched by. */
  readonly place: string;
}

/** What a selection takes and what it leaves out, with the reasons. */
export interface Selection {
  readonly selected: readonly Selected[];
  readonly leftOut: readonly LeftOut[];
  /** Dimensions of which several readings entered as one mean. */
  readonly merged: readonly (readonly Id[])[];
}

/** What of the corpus a selection sees, and the other choices it is to make. */
export interface Sight {
  readonly graph: Graph;
  readonly counts: (id: Id) => boolean;
  readonly choices: readonly Choice[];
}

/** Selects measurements as format.md 4 has it: a list of ids as it stands, or artefacts with a dimension. */
export function select(input: Json, sight: Sight): Selection {
  if (typeof input === "string" || isList(input)) return listed(texts(input), sight);
  if (input === null || typeof input !== "object") return { selected: [], leftOut: [], merged: [] };
  return described(input as { readonly [key: string]: Json }, sight);
}

/** The measurements of a list of ids, in that order, unmerged. */
export function listed(ids: readonly Id[], sight: Sight): Selection {
  const selected: Selected[] = [];
  const leftOut: LeftOut[] = [];
  for (const id of ids) {
    const record = sight.graph.records.get(id);
    if (record?.list !== "measurements") continue;
    if (sight.choices.some((choice) => choice.without?.includes(id)))
      leftOut.push({ id, why: leftOutFor.byName });
    else if (!sight.counts(id)) leftOut.push({ id, why: leftOutFor.notCounting });
    else {
      const read = rereadIn(record, sight.graph, sight.choices);
      selected.push({ measured: measuredOf(read, sight.graph), ids: [id], place: "" });
    }
  }
  return { selected, leftOut, merged: [] };
}

function described(input: { readonly [key: string]: Json }, sight: Sight): Selection {
  const { graph } = sight;
  const wholes = texts(input["of"]);
  const dimension = texts(input["dimension"]).map((name) => folded(graph.dimensionName(name)));
  const states = texts(input["state"]);
  const bases = texts(input["basis"]);
  const by = texts(input["by"]);
  const from = texts(input["from"]);
  const without = new Set([
    ...texts(input["without"]),
    ...sight.choices.flatMap((choice) => choice.without ?? []),
  ]);
  const choices = sight.choices.flatMap((choice) => choice.prefer ?? []);
  const preferred = texts(input["prefer"]);
  const chosen = new Set(sight.choices.flatMap((choice) => choice.use ?? []));

  const order = new Map<Id, { readonly at: number; readonly place: string }>();
  for (const whole of wholes) {
    const things = input["parts"] === "false" ? [whole] : graph.withParts(whole);
    for (const thing of things) {
      const place = thing === whole ? "" : (thing.split("/").at(-1) ?? thing);
      if (!order.has(thing)) order.set(thing, { at: order.size, place });
    }
  }
  const leftOut: LeftOut[] = [];
  const groups = new Map<string, MeasurementRecord[]>();
  for (const { record, name } of measuredOn([...order.keys()], graph)) {
    const { values } = record;
    if (dimension.length > 0 && !dimension.includes(name)) continue;
    const why = reasonToLeaveOut(record);
    if (why !== null) leftOut.push({ id: record.id, why });
    else {
      const key = `${values.of}\n${name}\n${values.between ?? ""}`;
      groups.set(key, [...(groups.get(key) ?? []), record]);
    }
  }

  function reasonToLeaveOut({ id, values }: MeasurementRecord): Said | null {
    const said = graph.provenance(id);
    if (without.has(id)) return leftOutFor.byName;
    if (!sight.counts(id)) return leftOutFor.notCounting;
    if (values.repeats !== undefined) return leftOutFor.repeats;
    if (bases.length > 0 && !bases.includes(values.basis ?? "")) return leftOutFor.basis;
    if (by.length > 0 && !said.scholars.some((scholar) => by.includes(scholar)))
      return leftOutFor.somebodyElse;
    if (from.length > 0 && !isSupposed(graph, id) && !said.sources.some((source) => from.includes(source)))
      return leftOutFor.source;
    const state = values.state ?? "complete";
    if (states.length > 0 && !states.includes(state)) return leftOutFor.state;
    if (state === "reconstructed" && !states.includes("reconstructed")) return leftOutFor.reconstructed;
    if (values.spread === true && input["spread"] !== "true") return leftOutFor.spread;
    return null;
  }

  const selected: Selected[] = [];
  const mergedGroups: (readonly Id[])[] = [];
  const inOrder = [...groups.values()].sort((a, b) => placeOf(a).at - placeOf(b).at);
  function placeOf(group: readonly MeasurementRecord[]): { readonly at: number; readonly place: string } {
    return order.get(group[0]?.values.of ?? "") ?? { at: 0, place: "" };
  }
  for (const group of inOrder) {
    const entered = preferredOf(group, { chosen, choices, preferred }, graph);
    for (const record of group) {
      if (!entered.includes(record)) leftOut.push({ id: record.id, why: leftOutFor.anotherTaken });
    }
    const ids = entered.map((record) => record.id);
    if (ids.length > 1) mergedGroups.push(ids);
    selected.push({
      measured: merged(entered.map((record) => measuredOf(rereadIn(record, graph, sight.choices), graph))),
      ids,
      place: placeOf(group).place,
    });
  }
  return { selected, leftOut, merged: mergedGroups };
}

/** A measurement with the folded name of its dimension and its place among those of the corpus. */
interface Placed {
  readonly record: MeasurementRecord;
  readonly name: string;
  readonly place: number;
}

/** Every selection looks for the measurements of a few things: looking through all of them each time takes longest. */
const byThing = new WeakMap<Graph, ReadonlyMap<Id, readonly Placed[]>>();

/** The measurements of some things, in the order of the corpus. */
export function measuredOn(things: readonly Id[], graph: Graph): readonly Placed[] {
  const all = byThing.get(graph) ?? placedIn(graph);
  byThing.set(graph, all);
  return things.flatMap((thing) => all.get(thing) ?? []).sort((a, b) => a.place - b.place);
}

function placedIn(graph: Graph): ReadonlyMap<Id, readonly Placed[]> {
  const nameOf = remembered((written) => folded(graph.dimensionName(written)));
  const all = graph
    .list("measurements")
    .map((record, place) => ({ record, name: nameOf(record.values.dimension), place }));
  return listsBy(all, ({ record }) => [record.values.of]);
}

/** What comes first among several readings: single ones, sources another choice names, sources the selection names. */
interface Preference {
  readonly chosen: ReadonlySet<Id>;
  readonly choices: readonly Id[];
  readonly preferred: readonly Id[];
}

/**
 * Of several readings of one dimension: the chosen one, else those of the first source by preference, else all; of these the
 * values before bounds, of which one is taken and no mean. What is supposed comes before every source that is preferred.
 */
function preferredOf(
  group: readonly MeasurementRecord[],
  { chosen, choices, preferred }: Preference,
  graph: Graph,
): readonly MeasurementRecord[] {
  const picked = group.filter((record) => chosen.has(record.id));
  if (picked.length > 0) return withoutBounds(picked);
  const supposed = graph.supposed ? [graph.supposed.examination.id] : [];
  for (const source of [...choices, ...supposed, ...preferred]) {
    const its = group.filter((record) => graph.provenance(record.id).sources.includes(source));
    if (its.length > 0) return withoutBounds(its);
  }
  return withoutBounds(group);
}

function withoutBounds(group: readonly MeasurementRecord[]): readonly MeasurementRecord[] {
  const values = group.filter((record) => !isBound(record));
  return values.length > 0 ? values : group.slice(0, 1);
}

/** A lower or upper bound: stated so, or a preserved dimension. */
function isBound({ values }: MeasurementRecord): boolean {
  return values.state === "preserved" || values.value.form === "at-least" || values.value.form === "at-most";
}

/** Whether what was selected is a bound: no value, unless the plug-in takes it as what it is. */
export function isCensored({ measured }: Selected): boolean {
  return measured.quantity.form === "at-least" || measured.quantity.form === "at-most";
}

/** A measurement as a plug-in sees it; what is preserved is a lower bound, and shared errors ride along. */
export function measuredOf(record: MeasurementRecord, graph: Graph): Measured {
  const { values } = record;
  const state = values.state ?? "complete";
  const common = values["shares-error"];
  const digit = values["to-nearest"]?.value ?? values.value.digit;
  const stated = values.value;
  const shared = common
    ? [...stated.shared, { with: common.with, relative: common.of.value }]
    : stated.shared;
  const bound = state === "preserved" && stated.form !== "at-most";
  const u = ownU(record);
  const isAsStated = u === stated.u && digit === stated.digit && shared === stated.shared;
  const quantity = bound
    ? { ...stated, form: "at-least" as const, low: stated.value, high: null, u: null, digit, shared }
    : isAsStated
      ? stated
      : { ...stated, u, digit, shared };
  return {
    id: record.id,
    artefact: values.of,
    dimension: graph.dimensionName(values.dimension),
    quantity,
    state,
    source: graph.provenance(record.id).sources[0] ?? null,
  };
}

/** A measurement's own standard uncertainty in SI: never less than what it was rounded to leaves open; null for bounds. */
export function ownU({ values }: MeasurementRecord): number | null {
  const { u } = values.value;
  return u === null ? null : Math.max(u, (values["to-nearest"]?.value ?? 0) / Math.sqrt(12));
}

/** A value or a list of values as texts. */
export function texts(value: Json | undefined): readonly string[] {
  if (value === undefined || value === null) return [];
  if (isList(value)) return value.filter((one): one is string => typeof one === "string");
  return typeof value === "string" ? [value] : [];
}
