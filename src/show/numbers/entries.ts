import type { Id } from "../../base/finding.ts";
import type { Quantity } from "../../base/quantity.ts";
import type { Derived } from "../../derive/derive.ts";
import type { Graph } from "../../link/graph.ts";
import { authorLabel, labelOf } from "../../link/label.ts";
import { derivationOf } from "../../link/inputs.ts";
import { linkTo } from "../pages/pieces.ts";
import type { Piece } from "../pages/pieces.ts";
import { withheldIn } from "../withhold.ts";
import { siWords } from "./value.ts";

/** A measurement, or another derivation's number, that a derivation took or left. */
export interface EntryLine {
  readonly id: Id;
  readonly text: string;
  /** As it was written, and in SI with its standard uncertainty. */
  readonly written: string;
  readonly inSI: string;
  readonly source: Piece | null;
  /** The input it entered by; null where there is one only, or it was left out. */
  readonly input: string | null;
  /** Who else's readings it entered with, as one mean. */
  readonly mergedWith: readonly string[];
  /** Why it was left out; null where it entered. */
  readonly why: string | null;
}

/** What a derivation took and left, in the order of its inputs, and how many more are withheld. */
export interface Entries {
  readonly taken: readonly EntryLine[];
  readonly left: readonly EntryLine[];
  readonly withheld: number;
}

/** The inputs of a derivation as a table; nothing withheld is in it. */
export function entriesOf(graph: Graph, derived: Derived): Entries {
  const withheld = withheldIn(graph);
  const dropped = derived.leftOut.filter(({ id }) => graph.records.get(id)?.list === "measurements");
  const shown = derived.used.filter((id) => !withheld(id));
  const outside = dropped.filter(({ id }) => !withheld(id));
  const entering = shown.filter((id) => !outside.some((one) => one.id === id));
  const ids = new Set([...derived.used, ...dropped.map((one) => one.id)]);
  return {
    taken: entering.flatMap((id) => lineOf(graph, derived, id, null)),
    left: outside.flatMap(({ id, why }) => lineOf(graph, derived, id, why)),
    withheld: [...ids].filter(withheld).length,
  };
}

function lineOf(graph: Graph, derived: Derived, id: Id, why: string | null): readonly EntryLine[] {
  const record = graph.records.get(id);
  const input = why === null ? inputOf(derived, id) : null;
  if (record?.list === "derivations") {
    const number = referencesTo(derived, id);
    const text = `${labelOf(graph, id)}${number === "" ? "" : `: ${number}`}`;
    return [{ id, text, written: "", inSI: "", source: null, input, mergedWith: [], why }];
  }
  if (record?.list !== "measurements") return [];
  const { of, dimension, value, between, state } = record.values;
  const told = [between, state === "complete" ? undefined : state].filter((one) => one !== undefined);
  const sources = graph.provenance(id).sources.filter((source) => !withheldIn(graph)(source));
  const group = derived.merged.find((ids) => ids.includes(id)) ?? [];
  return [
    {
      id,
      text: [`${dimension} of ${labelOf(graph, of)}`, ...told].join(", "),
      written: value.text,
      inSI: quantityWords(state === "preserved" ? boundOf(value) : value),
      source: sources[0] === undefined ? null : linkTo(graph, sources[0]),
      input,
      mergedWith: why === null ? group.filter((one) => one !== id).map((one) => authorLabel(graph, one)) : [],
      why,
    },
  ];
}

/** The input by which a measurement entered, alone or as one of several readings. */
function inputOf({ run, merged }: Derived, id: Id): string | null {
  const group = merged.find((ids) => ids.includes(id)) ?? [id];
  const inputs = Object.entries(run?.inputs ?? {}).filter(([, members]) => members.length > 0);
  if (inputs.length < 2) return null;
  const found = inputs.find(([, members]) =>
    members.some((one) => group.includes(one.id) || derivationOf(one.id) === id),
  );
  return found?.[0] ?? null;
}

/** What of another derivation entered: `k`; empty where it entered as a setting. */
function referencesTo({ run }: Derived, id: Id): string {
  const references = Object.values(run?.inputs ?? {})
    .flat()
    .filter((one) => derivationOf(one.id) === id && one.id !== id);
  return references
    .map((one) => `${one.id.slice(id.length + 1)} ${one.quantity.value.toPrecision(4)}`)
    .join(", ");
}

/** What is preserved was at least so long. */
function boundOf(value: Quantity): Quantity {
  return value.form === "at-most" ? value : { ...value, form: "at-least" };
}

/** A quantity in SI: its value with its standard uncertainty, or its bound, or its ends. */
function quantityWords({ kind, form, value, low, high, u }: Quantity): string {
  if (form === "at-least") return `≥ ${siWords(value, null, kind)}`;
  if (form === "at-most") return `≤ ${siWords(value, null, kind)}`;
  if (form === "range" && low !== null && high !== null) {
    return `${siWords(low, null, kind)} to ${siWords(high, null, kind)}`;
  }
  return siWords(value, u, kind);
}
