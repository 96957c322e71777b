import type { Id } from "../../../base/finding.ts";
import type { Derived } from "../../../derive/derived/derived.ts";
import { countsUnder } from "../../../derive/lens.ts";
import type { Lens } from "../../../derive/lens.ts";
import { prepare } from "../../../derive/prepare/prepare.ts";
import type { Prepared } from "../../../derive/prepare/prepare.ts";
import { givenUnder } from "../../../derive/recorded/dates/chronicle.ts";
import { asMap } from "../../../derive/prepare/settings.ts";
import type { Json } from "../../../base/json.ts";
import type { DerivationRecord, Graph } from "../../../link/graph.ts";
import type { InputDeclaration, LeftOut, Plugin } from "../../../plugin.ts";

/** What one input takes and leaves, as the derivation itself selects it. */
export interface Taken {
  readonly used: readonly Id[];
  readonly leftOut: readonly LeftOut[];
  readonly merged: readonly (readonly Id[])[];
}

/** Where a selection is made: a graph with the draft in it, under a lens. */
export interface Selecting {
  readonly graph: Graph;
  readonly lens: Lens;
}

/** The pairs that two inputs come to, as ids of what entered; a mean has several. Null where nothing is paired. */
export function pairsOf(
  at: Selecting,
  record: DerivationRecord,
  plugin: Plugin,
): readonly (readonly [readonly Id[], readonly Id[]])[] | null {
  const first = plugin.inputs.find((input) => input.pairedWith !== undefined);
  if (first?.pairedWith === undefined) return null;
  const { parameters: _, ...values } = record.values;
  // Without its parameters: half-typed ones hide nothing of what is selected.
  const { next, merged } = preparedWith(at, { ...record, values }, { ...plugin, parameters: [] });
  if (next === "pending" || !("run" in next)) return [];
  const idsOf = (id: Id | undefined): readonly Id[] =>
    id === undefined ? [] : (merged.find((ids) => ids.includes(id)) ?? [id]);
  const others = next.run.inputs[first.pairedWith] ?? [];
  return (next.run.inputs[first.name] ?? []).map(({ id }, place) => [idsOf(id), idsOf(others[place]?.id)]);
}

/** What one input takes and leaves when it is selected so, before anything is matched with another input. */
export function takenAlone(
  at: Selecting,
  record: DerivationRecord,
  input: InputDeclaration,
  plugin: Plugin,
  selection: Json | undefined = asMap(record.values.inputs)[input.name],
): Taken {
  if (selection === undefined) return { used: [], leftOut: [], merged: [] };
  const { pairedWith: _, ...alone } = input;
  const only = { ...record, values: { ...record.values, inputs: { [input.name]: selection } } };
  const { used, leftOut, merged } = preparedWith(at, only, { ...plugin, inputs: [alone], parameters: [] });
  return { used, leftOut, merged };
}

/** What each input takes in the whole derivation: what finds no counterpart, or is left by the method, is left out. */
export function takenByInput(
  at: Selecting,
  record: DerivationRecord,
  plugin: Plugin,
  derived: Derived,
): ReadonlyMap<string, Taken> {
  const { used: entering, outcome } = derived;
  const refused = new Set(outcome?.status === "computed" ? outcome.leftOut.map((one) => one.id) : []);
  return new Map(
    plugin.inputs.map((input) => {
      const alone = takenAlone(at, record, input, plugin);
      const dropped = derived.leftOut.filter(
        ({ id }) => alone.used.includes(id) && (refused.has(id) || !entering.includes(id)),
      );
      const used = alone.used.filter((id) => !dropped.some((one) => one.id === id));
      return [input.name, { used, leftOut: [...alone.leftOut, ...dropped], merged: alone.merged }] as const;
    }),
  );
}

function preparedWith({ graph, lens }: Selecting, record: DerivationRecord, plugin: Plugin): Prepared {
  const choices = (lens.instead ?? []).filter((one) => one.derivation === record.id);
  const sight = { graph, counts: countsUnder(graph, lens), choices, givenBy: givenUnder(graph, lens) };
  // Another derivation's number is no evidence of its own: it is told beside the counts.
  return prepare(record, [plugin], sight, () => ({ why: "a number" }));
}
