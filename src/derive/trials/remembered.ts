import type { Id } from "../../base/finding.ts";
import type { Graph } from "../../link/graph.ts";
import type { Derived } from "../derived/derived.ts";
import type { Lens } from "../lens.ts";
import type { ComputeMemo } from "../run.ts";
import { isFor } from "../recorded/left-out.ts";
import { measuredOf } from "../prepare/select.ts";

/** A result with all that it depends on, as a text. */
interface Remembered {
  readonly signature: string;
  readonly result: unknown;
}

const remembered = new WeakMap<ComputeMemo, Map<string, Remembered>>();
const mostRemembered = 2000;

/** What was found for a derivation under a lens the last time, if nothing it depends on has changed since; else found anew. */
export function sameAsBefore<T>(
  memo: ComputeMemo,
  name: string,
  signature: string,
  find: () => { readonly result: T; readonly isWhole: boolean },
): T {
  const all = remembered.get(memo) ?? new Map<string, Remembered>();
  remembered.set(memo, all);
  const known = all.get(name);
  // Only what this very call put there is ever under its name.
  if (known?.signature === signature) return known.result as T;
  const { result, isWhole } = find();
  if (all.size >= mostRemembered) all.clear();
  if (isWhole) all.set(name, { signature, result });
  return result;
}

/**
 * All that a derivation and those it leans on would say under any other choice of evidence: the runs, how the evidence
 * was selected, the readings that stand behind a mean or were passed over, what is asked of the numbers, and in what units.
 */
export function signatureOf(graph: Graph, lens: Lens, numbers: readonly Derived[], more: unknown): string {
  const readings = numbers.flatMap(({ merged, leftOut }) => [
    ...merged.flat(),
    ...leftOut.filter(({ why }) => isFor(why, "anotherTaken")).map(({ id }) => id),
  ]);
  return JSON.stringify([
    lens,
    numbers.map(({ id, run, used, leftOut, merged }) => [run?.key, used, leftOut, merged, asked(graph, id)]),
    readings.map((id) => readingOf(graph, id)),
    graph.settings.units,
    more,
  ]);
}

function asked(graph: Graph, id: Id): unknown {
  const record = graph.records.get(id);
  if (record?.list !== "derivations") return null;
  const { inputs, parameters, looks, "bears-on": bearsOn } = record.values;
  return [inputs, parameters, looks, bearsOn];
}

function readingOf(graph: Graph, id: Id): unknown {
  const record = graph.records.get(id);
  return record?.list === "measurements" ? [measuredOf(record, graph), graph.provenance(id).sources] : id;
}
