import type { Fields } from "../../grammar/field.ts";
import { isList } from "../written.ts";
import type { Written, WrittenMap } from "../written.ts";

/** The fields that a map may have, in their order; `anyName` where its keys are names of the scholar's own. */
export interface Table {
  readonly fields: Fields;
  readonly anyName?: Fields;
}

/** The table of the maps that stand under a key; null where the grammar has none. */
export function tableUnder(table: Table | null, key: string): Table | null {
  if (table?.anyName) return { fields: table.anyName };
  const field = table && Object.hasOwn(table.fields, key) ? table.fields[key] : undefined;
  if (field?.type === "group" || field?.type === "items") return { fields: field.fields };
  return field?.type === "named" ? { fields: {}, anyName: field.fields } : null;
}

/**
 * The entries of a map in the order of its table, those that it does not name behind them as they come. One citation or
 * one scholar stands alone, without a list.
 */
export function inOrder(map: WrittenMap, table: Table | null): readonly (readonly [string, Written])[] {
  const rank = rankIn(Object.keys(table?.fields ?? {}));
  return Object.entries(map)
    .toSorted(([a], [b]) => rank(a) - rank(b))
    .map(([key, value]) => [key, standsAlone(table, key) ? alone(value) : value]);
}

/** The one text of a list of one; any other value as it is. */
export function alone(value: Written): Written {
  const [only] = isList(value) && value.length === 1 ? value : [];
  return typeof only === "string" ? only : value;
}

function standsAlone(table: Table | null, key: string): boolean {
  const field = table && Object.hasOwn(table.fields, key) ? table.fields[key] : undefined;
  if (field?.type === "refs") return field.to.every((list) => list === "scholars");
  return field?.type === "citations";
}

/** The place of each name among others; one that is not among them comes last. */
export function rankIn(names: readonly string[]): (name: string) => number {
  const ranks = new Map(names.map((name, place) => [name, place]));
  return (name) => ranks.get(name) ?? names.length;
}

/** A value with another put in, or taken out (null), at a path; where the path leads through nothing, maps and lists are made. */
export function withAt(
  value: Written | null,
  path: readonly (string | number)[],
  put: Written | null,
): Written | null {
  const [step, ...rest] = path;
  if (step === undefined) return put;
  if (typeof step === "number") {
    const items = value === null ? [] : isList(value) ? value : [value];
    const one = withAt(items[step] ?? null, rest, put);
    if (one === null) return items.filter((_, place) => place !== step);
    return step < items.length ? items.with(step, one) : [...items, one];
  }
  const map = Object.assign(Object.create(null), isMap(value) ? value : {}) as Record<string, Written>;
  const one = withAt(map[step] ?? null, rest, put);
  if (one === null) delete map[step];
  else map[step] = one;
  return map;
}

function isMap(value: Written | null): value is WrittenMap {
  return value !== null && typeof value !== "string" && !isList(value);
}
