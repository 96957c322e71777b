import type { Json } from "../base/json.ts";
import { nearest } from "../base/nearest.ts";
import type { Quantity } from "../base/quantity.ts";
import { parseQuantity } from "../base/quantity/quantity-text.ts";
import type { Settings as CorpusSettings } from "../read/settings.ts";
import type { ParameterDeclaration, Plugin, Setting, Settings } from "../plugin.ts";

/** Why a number is not to be had; `refused` when that is the data's doing and no mistake of the author. */
export interface NoNumber {
  readonly why: string;
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
    const expected = (near.length > 0 ? near : names).join(" or ");
    return { why: `Unknown parameter \`${unknown}\`, expected ${expected}` };
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

function settingOf(
  parameter: ParameterDeclaration,
  value: Json,
  corpus: CorpusSettings,
  numberOf: NumberLookup,
): Setting | NoNumber | "pending" {
  const wrong = (expected: string): { readonly why: string } => ({
    why: `Unexpected value of \`${parameter.name}\`, expected ${expected}`,
  });
  const reference = asMap(value)["number"];
  if (typeof reference === "string") {
    const number = numberOf(reference);
    if (number === "pending" || "why" in number) return number;
    return parameter.kind === "number"
      ? { kind: "number", value: number.value }
      : { kind: "quantity", value: number };
  }
  if (typeof value !== "string") return wrong("a single value");
  switch (parameter.kind) {
    case "number": {
      const read = parseQuantity(value, corpus.quantities);
      if ("ok" in read && (read.ok.kind === "number" || read.ok.kind === "count")) {
        return { kind: "number", value: read.ok.value };
      }
      return wrong("a pure number");
    }
    case "quantity": {
      const read = parseQuantity(value, corpus.quantities);
      return "ok" in read ? { kind: "quantity", value: read.ok } : { why: read.problem.message };
    }
    case "unit": {
      const unit = corpus.quantities.units.find(value);
      if (unit)
        return { kind: "unit", value: { name: unit.name, kind: unit.kind, size: unit.size, u: unit.u } };
      const near = corpus.quantities.units.near(value);
      return wrong(near.length > 0 ? `a unit such as ${near.join(" or ")}` : "a unit");
    }
    case "choice":
      return parameter.choices?.includes(value)
        ? { kind: "text", value }
        : wrong(`one of ${(parameter.choices ?? []).join(", ")}`);
    default:
      return { kind: "text", value };
  }
}

/** The entries of a map; anything else has none. */
export function asMap(value: Json | undefined): { readonly [key: string]: Json } {
  return value !== undefined && value !== null && typeof value === "object" && !Array.isArray(value)
    ? (value as { readonly [key: string]: Json })
    : {};
}
