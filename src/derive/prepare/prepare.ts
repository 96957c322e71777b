import type { Id } from "../../base/finding.ts";
import { nearest } from "../../base/nearest.ts";
import { either } from "../../base/text/said/either.ts";
import { say } from "../../base/text/said/said.ts";
import type { Said, Text } from "../../base/text/said/said.ts";
import type { DerivationRecord, Graph } from "../../link/graph.ts";
import { measurementsChanged } from "../../link/origin/changed.ts";
import { derivationOf } from "../../link/inputs.ts";
import type { Inputs, LeftOut, Measured, Plugin } from "../../plugin.ts";
import { pairsIn } from "./pair.ts";
import { dimensionsNamed, takingAlong } from "../recorded/along.ts";
import type { GivenBy } from "../recorded/dates/chronicle.ts";
import { leftOutFor } from "../recorded/left-out.ts";
import { leftOutOf, recordedFor, recordedIn, sizeOf } from "../recorded/recorded.ts";
import type { RecordedEntry } from "../recorded/recorded.ts";
import { notAllowed, runOf } from "../run.ts";
import type { Run } from "../run.ts";
import { isPlain } from "../lens.ts";
import type { Lens } from "../lens.ts";
import { isCensored, select } from "./select.ts";
import type { Selected, Sight } from "./select.ts";
import { asMap, readSettingsOf } from "./settings.ts";
import type { NoNumber, NumberLookup } from "./settings.ts";

/** What a derivation would compute on, before it is computed. */
export interface Prepared {
  /** Measurements, observations, relations and derivations that enter, in order. */
  readonly used: readonly Id[];
  readonly leftOut: readonly LeftOut[];
  readonly merged: readonly (readonly Id[])[];
  /** Names of the units given as settings. */
  readonly units: readonly string[];
  readonly next:
    | { readonly run: Run }
    | { readonly refused: string; readonly why: Text }
    | { readonly failed: Text }
    | { readonly withheld: Text }
    | "pending";
}

/** What was prepared for the derivations of a graph, under no lens. */
interface PreparedBefore {
  readonly graph: Graph;
  readonly plugins: readonly Plugin[];
  /** By what they say: a derivation that moved in its file is another object. */
  readonly bySaid: Map<DerivationRecord["values"], Prepared>;
}

/** After an edit nearly every derivation computes on what it did: it is not selected again. */
let before: PreparedBefore | null = null;

type Prepare = (
  derivation: DerivationRecord,
  sight: Sight & { readonly givenBy: GivenBy },
  numberOf: NumberLookup,
) => Prepared;

/** Prepares the derivations of a graph under a lens; what is known from the graph before an edit stays as it is. */
export function preparing(graph: Graph, plugins: readonly Plugin[], lens: Lens): Prepare {
  const fresh: Prepare = (derivation, sight, numberOf) => prepare(derivation, plugins, sight, numberOf);
  if (!isPlain(lens) || graph.supposed !== null) return fresh;
  if (before?.graph !== graph || before.plugins !== plugins)
    before = { graph, plugins, bySaid: untouched(before, graph, plugins) };
  const { bySaid } = before;
  return (derivation, sight, numberOf) => {
    const known = bySaid.get(derivation.values);
    if (known) return known;
    let isAlone = true;
    const prepared = fresh(derivation, sight, (reference) => {
      isAlone = false;
      return numberOf(reference);
    });
    // What leans on another number changes with it.
    if (isAlone) bySaid.set(derivation.values, prepared);
    return prepared;
  };
}

/** What of the preparations for an earlier graph still holds: all that no measurement is in or was left out of that changed since. */
function untouched(
  was: PreparedBefore | null,
  graph: Graph,
  plugins: readonly Plugin[],
): PreparedBefore["bySaid"] {
  const changed = was?.plugins === plugins ? measurementsChanged(was.graph, graph) : null;
  if (!was || !changed) return new Map();
  return new Map(
    [...was.bySaid].filter(
      ([, { used, leftOut }]) =>
        !used.some((id) => changed.has(id)) && !leftOut.some(({ id }) => changed.has(id)),
    ),
  );
}

/** Selects, pairs and reads settings: everything of a derivation but the computing. */
export function prepare(
  derivation: DerivationRecord,
  plugins: readonly Plugin[],
  sight: Sight & { readonly givenBy: GivenBy },
  numberOf: NumberLookup,
): Prepared {
  const { values } = derivation;
  const plugin = plugins.find((one) => one.id === values.plugin);
  const file = sight.graph.pluginFiles.find((one) => one.name === values.plugin);
  if (!plugin && file) return { ...failed(""), next: { withheld: notAllowed(file) } };
  if (!plugin) {
    const known = plugins.map((one) => one.id);
    const near = nearest(values.plugin, known);
    return failed(
      say`Unknown plug-in \`${values.plugin}\`, expected ${either(near.length > 0 ? near : known)}`,
    );
  }
  if (plugin.guest && plugin.guest.trouble !== null) return failed(plugin.guest.trouble);
  const given = asMap(values.inputs);
  const names = plugin.inputs.map((input) => input.name);
  const unknown = Object.keys(given).find((name) => name !== "pairs" && !names.includes(name));
  if (unknown !== undefined) return failed(say`Unknown input \`${unknown}\`, expected ${either(names)}`);

  const own: Sight = {
    ...sight,
    choices: sight.choices.filter((choice) => choice.derivation === derivation.id),
  };
  const chosen = new Map<string, readonly Selected[]>();
  const leftOut: LeftOut[] = [];
  const merged: (readonly Id[])[] = [];
  const numbers: Id[] = [];
  const recorded = new Map<string, RecordedEntry>();
  for (const input of plugin.inputs) {
    const selection = given[input.name];
    if (selection === undefined) continue;
    const reference = asMap(selection)["number"];
    if (typeof reference === "string") {
      const number = numberOf(reference);
      if (number === "pending") return { ...failed(""), next: "pending" };
      if ("why" in number) return { ...failed(""), next: withoutNumber(number) };
      numbers.push(reference);
      chosen.set(input.name, [{ measured: asMeasured(reference, number), ids: [], place: "" }]);
      continue;
    }
    const entry = recordedFor(input, selection, own, sight.givenBy);
    if (entry !== null && "why" in entry) return failed(entry.why);
    if (entry !== null) {
      recorded.set(input.name, entry);
      continue;
    }
    const asked = takingAlong(input, selection, values.parameters);
    const { selected, leftOut: out, merged: together } = select(asked, own);
    leftOut.push(...out);
    merged.push(...together);
    const admitted = input.takesBounds ? selected : selected.filter((one) => !isCensored(one));
    leftOut.push(
      ...selected
        .filter((one) => !admitted.includes(one))
        .flatMap((one) => one.ids.map((id) => ({ id, why: leftOutFor.bound }))),
    );
    chosen.set(input.name, admitted);
  }
  const paired = pairsIn(plugin, given["pairs"], chosen, own);
  leftOut.push(...paired.leftOut);

  const inputs: Record<string, readonly Measured[]> = {};
  const used: Id[] = [];
  for (const input of plugin.inputs) {
    const entering = paired.chosen.get(input.name) ?? [];
    inputs[input.name] = entering.map((one) => one.measured);
    used.push(...entering.flatMap((one) => one.ids));
    used.push(...(recorded.get(input.name)?.used ?? []));
  }
  leftOut.push(...leftOutOf(recorded, used));
  const read = readSettingsOf(plugin, values.parameters, sight.graph.settings, numberOf);
  const before = { used: [...new Set([...used, ...numbers.map(derivationOf)])], leftOut, merged, units: [] };
  if (read === "pending") return { ...before, next: "pending" };
  if ("why" in read) return { ...before, next: withoutNumber(read) };
  const { units, references } = read;
  const settings = dimensionsNamed(plugin, read.settings, sight.graph);
  const common = { ...before, used: [...new Set([...before.used, ...references.map(derivationOf)])] };
  const empty = plugin.inputs.find(({ name, optional }) => {
    const entry = recorded.get(name);
    return !optional && (entry ? sizeOf(entry) : (inputs[name] ?? []).length) === 0;
  });
  if (empty) {
    const what: Said =
      empty.kind === "dates" ? say`dates` : recorded.has(empty.name) ? say`observations` : say`measurements`;
    const why = say`Missing ${what} for \`${empty.name}\`, expected at least one that the selection takes`;
    return { ...common, units, next: { refused: "empty-selection", why } };
  }
  const computedOn = { inputs: inputs as Inputs, settings, looks: values.looks ?? 1 };
  return { ...common, units, next: { run: runOf(plugin, { ...computedOn, ...recordedIn(recorded) }) } };
}

function failed(why: Text): Prepared {
  return { used: [], leftOut: [], merged: [], units: [], next: { failed: why } };
}

function withoutNumber({ why, refused }: NoNumber): Prepared["next"] {
  return refused === true ? { refused: "refused-number", why } : { failed: why };
}

function asMeasured(id: Id, quantity: Measured["quantity"]): Measured {
  return { id, artefact: id, dimension: id, quantity, state: "complete", source: null };
}
