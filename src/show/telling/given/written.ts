import { yearText } from "../../../base/date/year.ts";
import { isList } from "../../../base/json.ts";
import type { Json } from "../../../base/json.ts";
import type { Quantity } from "../../../base/quantity.ts";
import type { Id } from "../../../base/finding.ts";
import type { Citation, Field, Fields } from "../../../read/grammar/field.ts";
import type { Written, WrittenMap } from "../../../read/edit/written.ts";

/** How a quantity is written in the files that are given. */
export type QuantityText = (quantity: Quantity) => string;

/** Values as they would be typed, by the grammar's types: reading them gives the same values again. */
export function writtenValues(values: object, fields: Fields, quantity: QuantityText): WrittenMap {
  const map = Object.create(null) as Record<string, Written>;
  for (const [name, field] of Object.entries(fields)) {
    const value: unknown = (values as Readonly<Record<string, unknown>>)[name];
    if (value !== undefined) map[name] = written(value, field, quantity);
  }
  return map;
}

function written(value: unknown, field: Field, quantity: QuantityText): Written {
  switch (field.type) {
    case "id":
    case "text":
    case "date":
    case "ref":
    case "choice":
      return value as string;
    case "texts":
    case "refs":
      return value as readonly string[];
    case "flag":
      return String(value);
    case "number":
    case "amount":
    case "whole":
      return numberText(value as number);
    case "year":
      return yearText(value as number);
    case "quantity":
      return quantity(value as Quantity);
    case "quantities":
      return (value as readonly Quantity[]).map(quantity);
    case "citation":
      return cited(value as Citation);
    case "citations":
      return (value as readonly Citation[]).map(cited);
    case "textMap":
      return mapOf(value as ReadonlyMap<string, string>, (one) => one);
    case "numberMap":
      return mapOf(value as ReadonlyMap<Id, number>, numberText);
    case "probability":
      return typeof value === "number"
        ? numberText(value)
        : mapOf(value as ReadonlyMap<Id, number>, numberText);
    case "json":
      return ofJson(value as Json);
    case "group":
      return writtenValues(value as object, field.fields, quantity);
    case "items":
      return (value as readonly object[]).map((one) => writtenValues(one, field.fields, quantity));
    case "named":
      return mapOf(value as ReadonlyMap<string, object>, (one) => writtenValues(one, field.fields, quantity));
  }
}

function cited({ key, locator }: Citation): string {
  return locator === null ? key : `${key} ${locator}`;
}

function mapOf<T>(map: ReadonlyMap<string, T>, one: (value: T) => Written): WrittenMap {
  const all = Object.create(null) as Record<string, Written>;
  for (const [name, value] of map) all[name] = one(value);
  return all;
}

function ofJson(value: Json): Written {
  if (value === null || typeof value !== "object") return String(value ?? "");
  if (isList(value)) return value.map(ofJson);
  const map = Object.create(null) as Record<string, Written>;
  for (const [key, one] of Object.entries(value)) map[key] = ofJson(one);
  return map;
}

/** A number without a power of ten, which no field takes. */
function numberText(value: number): string {
  const text = String(value);
  const [, sign = "", first = "", others = "", power = ""] =
    /^(-?)(\d)(?:\.(\d+))?e([+-]\d+)$/.exec(text) ?? [];
  if (power === "") return text;
  const places = Number(power);
  return places < 0
    ? `${sign}0.${"0".repeat(-places - 1)}${first}${others}`
    : `${sign}${first}${others.padEnd(places, "0")}`;
}
