import type { Id } from "../base/finding.ts";
import { nearest } from "../base/nearest.ts";
import type { DerivationRecord } from "../link/graph.ts";
import { derivationOf } from "../link/inputs.ts";
import type { Inputs, LeftOut, Measured, Plugin } from "../plugin.ts";
import { pairsIn } from "./pair.ts";
import { runOf } from "./run.ts";
import type { Run } from "./run.ts";
import { isCensored, select } from "./select.ts";
import type { Selected, Sight } from "./select.ts";
import { asMap, readSettingsOf } from "./settings.ts";
import type { NoNumber, NumberLookup } from "./settings.ts";

/** What a derivation would compute on, before it is computed. */
export interface Prepared {
  /** Measurements and derivations that enter, in order. */
  readonly used: readonly Id[];
  readonly leftOut: readonly LeftOut[];
  readonly merged: readonly (readonly Id[])[];
  /** Names of the units given as settings. */
  readonly units: readonly string[];
  readonly next:
    | { readonly run: Run }
    | { readonly refused: string; readonly why: string }
    | { readonly failed: string }
    | "pending";
}

/** Selects, pairs and reads settings: everything of a derivation but the computing. */
export function prepare(
  derivation: DerivationRecord,
  plugins: readonly Plugin[],
  sight: Sight,
  numberOf: NumberLookup,
): Prepared {
  const { values } = derivation;
  const plugin = plugins.find((one) => one.id === values.plugin);
  if (!plugin) {
    const known = plugins.map((one) => one.id);
    const near = nearest(values.plugin, known);
    return failed(
      `Unknown plug-in \`${values.plugin}\`, expected ${(near.length > 0 ? near : known).join(" or ")}`,
    );
  }
  const given = asMap(values.inputs);
  const names = plugin.inputs.map((input) => input.name);
  const unknown = Object.keys(given).find((name) => name !== "pairs" && !names.includes(name));
  if (unknown !== undefined) return failed(`Unknown input \`${unknown}\`, expected ${names.join(" or ")}`);

  const own: Sight = {
    ...sight,
    choices: sight.choices.filter((choice) => choice.derivation === derivation.id),
  };
  const chosen = new Map<string, readonly Selected[]>();
  const leftOut: LeftOut[] = [];
  const merged: (readonly Id[])[] = [];
  const numbers: Id[] = [];
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
    const { selected, leftOut: out, merged: together } = select(selection, own);
    leftOut.push(...out);
    merged.push(...together);
    const admitted = input.takesBounds ? selected : selected.filter((one) => !isCensored(one));
    leftOut.push(
      ...selected
        .filter((one) => !admitted.includes(one))
        .flatMap((one) => one.ids.map((id) => ({ id, why: "bound" }))),
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
  }
  const read = readSettingsOf(plugin, values.parameters, sight.graph.settings, numberOf);
  const before = { used: [...new Set([...used, ...numbers.map(derivationOf)])], leftOut, merged, units: [] };
  if (read === "pending") return { ...before, next: "pending" };
  if ("why" in read) return { ...before, next: withoutNumber(read) };
  const { settings, units, references } = read;
  const common = { ...before, used: [...new Set([...before.used, ...references.map(derivationOf)])] };
  const empty = plugin.inputs.find((input) => !input.optional && (inputs[input.name] ?? []).length === 0);
  if (empty) {
    const why = `Missing measurements for \`${empty.name}\`, expected at least one that the selection takes`;
    return { ...common, units, next: { refused: "empty-selection", why } };
  }
  return { ...common, units, next: { run: runOf(plugin, inputs as Inputs, settings, values.looks ?? 1) } };
}

function failed(why: string): Prepared {
  return { used: [], leftOut: [], merged: [], units: [], next: { failed: why } };
}

function withoutNumber({ why, refused }: NoNumber): Prepared["next"] {
  return refused === true ? { refused: "refused-number", why } : { failed: why };
}

function asMeasured(id: Id, quantity: Measured["quantity"]): Measured {
  return { id, artefact: id, dimension: id, quantity, state: "complete", source: null };
}
