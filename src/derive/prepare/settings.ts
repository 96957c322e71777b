import type { Id } from "../../base/finding.ts";
import type { Json } from "../../base/json.ts";
import { nearest } from "../../base/nearest.ts";
import type { Quantity } from "../../base/quantity.ts";
import { parseQuantity } from "../../base/quantity/quantity-text.ts";
import type { QuantityContext } from "../../base/quantity/quantity-text.ts";
import { remembered } from "../../base/text/remembered.ts";
import { either } from "../../base/text/said/either.ts";
import { row, say } from "../../base/text/said/said.ts";
import type { Said, Text } from "../../base/text/said/said.ts";
import { derivationOf } from "../../link/inputs.ts";
import type { Settings as CorpusSettings } from "../../read/settings/settings.ts";
import type { ParameterDeclaration, Plugin, Setting, Settings } from "../../plugin.ts";

/** Why a number is not to be had; `refused` when that is the data's doing and no mistake of the author. */
export interface NoNumber {
  readonly why: Text;
  readonly refused?: boolean;
}

/** Looks up another derivation's number for a parameter. */
export type NumberLookup = (reference: string) => Quantity | NoNumber | "pending";

/** Settings as read, with the units and the other numbers they name; or why not. */
export type SettingsRead =
  | { readonly settings: Settings; readonly units: readonly string[]; readonly references: readonly string[] }
  | NoNumber
  | "pending";

/** Reads a derivation's parameters by the plug-in's declarations; `why` says what is wrong with one. */
export function readSettingsOf(
  plugin: Plugin,
  parameters: Json | undefined,
  corpus: CorpusSettings,
  numberOf: NumberLookup,
): SettingsRead {
  const given = asMap(parameters);
  const names = plugin.parameters.map((parameter) => parameter.name);
  const unknown = Object.keys(given).find((name) => !names.includes(name));
  if (unknown !== undefined) {
    const near = nearest(unknown, names);
    const expected = either(near.length > 0 ? near : names);
    return { why: say`Unknown parameter \`${unknown}\`, expected ${expected}` };
  }
  const settings: Record<string, Setting> = {};
  const units: string[] = [];
  const references: string[] = [];
  for (const parameter of plugin.parameters) {
    const value = given[parameter.name] ?? parameter.default;
    if (value === undefined) continue;
    const read = settingOf(parameter, value, corpus, numberOf);
    if (read === "pending") return "pending";
    if ("why" in read) return read;
    if (read.kind === "unit") units.push(read.value.name);
    const reference = asMap(value)["number"];
    if (typeof reference === "string") references.push(reference);
    settings[parameter.name] = read;
  }
  return { settings, units, references };
}

/** Quantities as settings write them, which are few, and read again for every other choice. */
const known = new WeakMap<QuantityContext, (written: string) => ReturnType<typeof parseQuantity>>();

function quantityIn(context: QuantityContext): (written: string) => ReturnType<typeof parseQuantity> {
  const reader = known.get(context) ?? remembered((written) => parseQuantity(written, context));
  known.set(context, reader);
  return reader;
}

function settingOf(
  parameter: ParameterDeclaration,
  value: Json,
  corpus: CorpusSettings,
  numberOf: NumberLookup,
): Setting | NoNumber | "pending" {
  const wrong = (expected: Said): { readonly why: Text } => ({
    why: say`Unexpected value of \`${parameter.name}\`, expected ${expected}`,
  });
  const most = parameter.most ?? Infinity;
  const tooMuch = wrong(say`a number of at most ${String(most)}`);
  const reference = asMap(value)["number"];
  if (typeof reference === "string") {
    const number = numberOf(reference);
    if (number === "pending" || "why" in number) return number;
    if (parameter.kind !== "number") return { kind: "quantity", value: number };
    return number.value <= most ? { kind: "number", value: number.value } : tooMuch;
  }
  if (typeof value !== "string") return wrong(say`a single value`);
  switch (parameter.kind) {
    case "number": {
      const read = quantityIn(corpus.quantities)(value);
      if ("ok" in read && (read.ok.kind === "number" || read.ok.kind === "count")) {
        return read.ok.value <= most ? { kind: "number", value: read.ok.value } : tooMuch;
      }
      return wrong(say`a pure number`);
    }
    case "quantity": {
      const read = quantityIn(corpus.quantities)(value);
      return "ok" in read ? { kind: "quantity", value: read.ok } : { why: read.problem.message };
    }
    case "unit": {
      const unit = corpus.quantities.units.find(value);
      if (unit)
        return { kind: "unit", value: { name: unit.name, kind: unit.kind, size: unit.size, u: unit.u } };
      const near = corpus.quantities.units.near(value);
      return wrong(near.length > 0 ? say`a unit such as ${either(near)}` : say`a unit`);
    }
    case "choice":
      return parameter.choices?.includes(value)
        ? { kind: "text", value }
        : wrong(say`one of ${row(parameter.choices ?? [], "comma")}`);
    default:
      return { kind: "text", value };
  }
}

/** What derivations used: measurements, and other derivations; and what of each measurement is measured, by a name. */
export interface UsedData {
  readonly usedBy: (derivation: Id) => readonly Id[];
  readonly dataOf: (id: Id) => string;
}

/** Why a number of another derivation is none known beforehand: it leans on some of the data that are tested against it. */
export function foundInTheseData(
  plugin: Plugin | undefined,
  parameters: Json | undefined,
  used: readonly Id[],
  { usedBy, dataOf }: UsedData,
): Text | null {
  const tested = new Set(used.map(dataOf));
  const leansOnThem = (derivation: Id): boolean =>
    usedBy(derivation).some((id) => tested.has(dataOf(id)) || leansOnThem(id));
  for (const { name, beforehand } of plugin?.parameters ?? []) {
    const reference = asMap(asMap(parameters)[name])["number"];
    if (beforehand === true && typeof reference === "string" && leansOnThem(derivationOf(reference)))
      return say`The ${name} was found in these data, expected one known beforehand`;
  }
  return null;
}

/** The entries of a map; anything else has none. */
export function asMap(value: Json | undefined): { readonly [key: string]: Json } {
  return value !== undefined && value !== null && typeof value === "object" && !Array.isArray(value)
    ? (value as { readonly [key: string]: Json })
    : {};
}
