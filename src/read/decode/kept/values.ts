import type { Json } from "../../../base/json.ts";
import type { Field, Fields } from "../../grammar/field.ts";
import { bare } from "../bare.ts";

type Values = Readonly<Record<string, unknown>>;
type Unpacked = Record<string, unknown>;

/** The values of a map as JSON has them, which knows no maps but objects: those by names of the scholar's own become lists of pairs. */
export function packedValues(fields: Fields, values: Values): Json {
  const packed: Record<string, Json> = {};
  for (const [name, value] of Object.entries(values)) packed[name] = packedValue(fields[name], value);
  return packed;
}

function packedValue(field: Field | undefined, value: unknown): Json {
  switch (field?.type) {
    case "group":
      return packedValues(field.fields, value as Values);
    case "items":
      return (value as readonly Values[]).map((one) => packedValues(field.fields, one));
    case "named":
      return [...(value as ReadonlyMap<string, Values>)].map(([name, one]) => [
        name,
        packedValues(field.fields, one),
      ]);
    default:
      return value instanceof Map ? [...(value as ReadonlyMap<string, Json>)] : (value as Json);
  }
}

/** The values that were packed; what is packed is used up. */
export function unpackedValues(fields: Fields, packed: Unpacked): Values {
  Object.setPrototypeOf(packed, bare);
  for (const [name, field] of deepIn(fields)) {
    const value = packed[name];
    if (value !== undefined) packed[name] = unpackedValue(field, value);
  }
  return packed;
}

function unpackedValue(field: Field, value: unknown): unknown {
  switch (field.type) {
    case "group":
      return unpackedValues(field.fields, value as Unpacked);
    case "items":
      return (value as readonly Unpacked[]).map((one) => unpackedValues(field.fields, one));
    case "named":
      return new Map(
        (value as readonly (readonly [string, Unpacked])[]).map(([name, one]) => [
          name,
          unpackedValues(field.fields, one),
        ]),
      );
    case "json":
      return withoutPrototype(value as Json);
    default:
      return Array.isArray(value) ? new Map(value as readonly (readonly [string, Json])[]) : value;
  }
}

/** As it is read from a file: no name in it means anything but what stands there. */
function withoutPrototype(value: Json): Json {
  if (Array.isArray(value)) return (value as readonly Json[]).map(withoutPrototype);
  if (value === null || typeof value !== "object") return value;
  const object = Object.create(null) as Record<string, Json>;
  for (const [name, one] of Object.entries(value)) object[name] = withoutPrototype(one);
  return object;
}

const deepTypes: ReadonlySet<Field["type"]> = new Set<Field["type"]>([
  "textMap",
  "numberMap",
  "probability",
  "json",
  "group",
  "items",
  "named",
]);

const deep = new WeakMap<Fields, readonly (readonly [string, Field])[]>();

/** The fields that JSON does not have as they are. */
function deepIn(fields: Fields): readonly (readonly [string, Field])[] {
  const known = deep.get(fields) ?? Object.entries(fields).filter(([, field]) => deepTypes.has(field.type));
  deep.set(fields, known);
  return known;
}

/** Whether JSON gives the same value again: it knows no undefined, no number beyond all bounds, and no zero below zero. */
export function isExact(value: unknown): value is Json {
  switch (typeof value) {
    case "string":
    case "boolean":
      return true;
    case "number":
      return Number.isFinite(value) && !Object.is(value, -0);
    case "object":
      if (value === null) return true;
      if (Array.isArray(value)) return value.every(isExact);
      return !(value instanceof Map) && Object.values(value).every(isExact);
    default:
      return false;
  }
}
