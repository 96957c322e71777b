import type { Id } from "../../base/finding.ts";
import type { QuantityKind } from "../../base/quantity.ts";
import { formatNumber } from "../../base/quantity/quantity-print.ts";
import { first, row, say } from "../../base/text/said/said.ts";
import type { Said, Text } from "../../base/text/said/said.ts";
import type { Derived } from "../../derive/derived/derived.ts";
import { measuredOf } from "../../derive/prepare/select.ts";
import type { Judgement } from "../../judge/judge.ts";
import type { Graph } from "../../link/graph.ts";
import { authorText, labelText } from "../../link/names/label.ts";
import { derivationOf } from "../../link/inputs.ts";
import { linkTo } from "../pages/pieces.ts";
import type { Piece } from "../pages/pieces.ts";
import { choiceName } from "../../read/grammar/field-words.ts";
import { withheldIn } from "../withhold.ts";
import { siUnitFor, siWords } from "../artefacts/si-words.ts";
import type { SIUnit } from "../artefacts/si-words.ts";

/** A measurement, an observation, a relation, or another derivation's number, that a derivation took or left. */
export interface EntryLine {
  readonly id: Id;
  readonly text: Text;
  /** As it was written or what was seen, and in SI with its standard uncertainty; both empty for a number. */
  readonly written: Text;
  readonly inSI: string;
  readonly source: Piece | null;
  /** The input it entered by; null where there is one only, or it was left out. */
  readonly input: string | null;
  /** Who else's readings it entered with, as one mean. */
  readonly mergedWith: readonly Text[];
  /** Why it was left out; null where it entered. */
  readonly why: Text | null;
  /** An argument beats it: it does not hold, whether it entered or not. */
  readonly beaten: boolean;
}

/** What a derivation took and left, in the order of its inputs, and how many more are withheld. */
export interface Entries {
  readonly taken: readonly EntryLine[];
  readonly left: readonly EntryLine[];
  readonly withheld: number;
}

/** The inputs of a derivation as a table; nothing withheld is in it. */
export function entriesOf(graph: Graph, judgement: Judgement, derived: Derived): Entries {
  const withheld = withheldIn(graph);
  const dropped = derived.leftOut.filter(({ id }) => evidence.includes(graph.records.get(id)?.list ?? ""));
  const shown = derived.used.filter((id) => !withheld(id));
  const outside = dropped.filter(({ id }) => !withheld(id));
  const entering = shown.filter((id) => !outside.some((one) => one.id === id));
  const ids = new Set([...derived.used, ...dropped.map((one) => one.id)]);
  const units = unitsFor(graph, [...entering, ...outside.map((one) => one.id)]);
  const marked = (line: Omit<EntryLine, "beaten">): EntryLine => {
    const standing = judgement.standings.get(line.id);
    return { ...line, beaten: standing !== undefined && standing !== "stands" };
  };
  return {
    taken: entering.flatMap((id) => lineOf(graph, derived, units, id, null)).map(marked),
    left: outside.flatMap(({ id, why }) => lineOf(graph, derived, units, id, why)).map(marked),
    withheld: [...ids].filter(withheld).length,
  };
}

const evidence: readonly string[] = ["measurements", "observations", "relations"];

const seen = {
  true: say`seen`,
  false: say`looked for and not there`,
  unclear: say`looked for, cannot be told`,
  "not-reported": say`passed over in silence`,
} as const satisfies Readonly<Record<string, Said>>;

type Units = ReadonlyMap<QuantityKind, SIUnit>;

/** One SI unit for all measurements of a kind. */
function unitsFor(graph: Graph, ids: readonly Id[]): Units {
  const values = new Map<QuantityKind, number[]>();
  for (const id of ids) {
    const record = graph.records.get(id);
    if (record?.list !== "measurements") continue;
    const { kind, value } = record.values.value;
    const known = values.get(kind);
    if (known) known.push(value);
    else values.set(kind, [value]);
  }
  return new Map([...values].map(([kind, all]) => [kind, siUnitFor(kind, all)]));
}

function lineOf(
  graph: Graph,
  derived: Derived,
  units: Units,
  id: Id,
  why: Text | null,
): readonly Omit<EntryLine, "beaten">[] {
  const record = graph.records.get(id);
  const input = why === null ? inputOf(derived, id) : null;
  if (record?.list === "derivations") {
    const number = referencesTo(derived, id);
    const label = labelText(graph, id);
    const text = number === "" ? label : say`${label}: ${number}`;
    return [{ id, text, written: "", inSI: "", source: null, input, mergedWith: [], why }];
  }
  const withheld = withheldIn(graph);
  const sources = graph.provenance(id).sources.filter((source) => !withheld(source));
  const source = sources[0] === undefined ? null : linkTo(graph, sources[0]);
  if (record?.list === "observations" || record?.list === "relations") {
    const written = record.list === "relations" ? say`relation` : seen[record.values.present ?? "true"];
    const common = { inSI: "", source, input, mergedWith: [], why };
    return [{ id, text: begun(labelText(graph, id)), written, ...common }];
  }
  if (record?.list !== "measurements") return [];
  const { of, dimension, value, between, state } = record.values;
  const its = state === undefined || state === "complete" ? undefined : choiceName(state);
  const told = [between, its].filter((one) => one !== undefined);
  const group = derived.merged.find((ids) => ids.includes(id)) ?? [];
  return [
    {
      id,
      text: say`${row([say`${dimension} of ${labelText(graph, of)}`, ...told], "comma")}`,
      written: value.text,
      inSI: siWords(measuredOf(record, graph).quantity, units.get(value.kind) ?? siUnitFor(value.kind, [])),
      source,
      input,
      mergedWith:
        why === null
          ? group
              .filter((one) => one !== id && !withheld(one))
              .map((one) => authorText(graph, one) ?? say`the corpus`)
          : [],
      why,
    },
  ];
}

/** The input by which a measurement entered, alone or as one of several readings. */
function inputOf({ run, merged }: Derived, id: Id): string | null {
  const group = merged.find((ids) => ids.includes(id)) ?? [id];
  const inputs = Object.entries({ ...run?.inputs, ...run?.recorded?.observations }).filter(
    ([, members]) => members.length > 0,
  );
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
    .map((one) => `${one.id.slice(id.length + 1)} ${formatNumber(one.quantity.value, 4)}`)
    .join(", ");
}

function begun(text: Text): Text {
  return typeof text === "string" ? text.charAt(0).toUpperCase() + text.slice(1) : first(text);
}
