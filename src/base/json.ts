import { byText } from "./order.ts";

/** What JSON can hold. */
export type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };

/** JSON text with sorted keys and no spaces: equal values give equal bytes. */
export function canonical(value: Json): string {
  if (value === null || typeof value !== "object") return JSON.stringify(value);
  if (isList(value)) return `[${value.map(canonical).join(",")}]`;
  const keys = Object.keys(value).sort(byText);
  return `{${keys.map((key) => `${JSON.stringify(key)}:${canonical(value[key] ?? null)}`).join(",")}}`;
}

/** An object from pairs, sorted by key, without a prototype: safe for any key (`__proto__` is one). */
export function objectOf<T>(pairs: Iterable<readonly [string, T]>): Record<string, T> {
  const object: Record<string, T> = Object.create(null) as Record<string, T>;
  for (const [key, value] of [...pairs].sort((a, b) => byText(a[0], b[0]))) object[key] = value;
  return object;
}

/** Tells a list from the rest of what JSON can hold. */
export function isList(value: Json): value is readonly Json[] {
  return Array.isArray(value);
}

/** The entries of a map; anything else has none. */
export function fieldsOf(value: Json | undefined): { readonly [key: string]: Json } {
  return value !== undefined && value !== null && typeof value === "object" && !isList(value)
    ? (value as { readonly [key: string]: Json })
    : {};
}

/** The members of a list; anything else has none. */
export function membersOf(value: Json | undefined): readonly Json[] {
  return value !== undefined && isList(value) ? value : [];
}

/** A number, or 0 for anything else. */
export function numberOf(value: Json | undefined): number {
  return typeof value === "number" ? value : 0;
}

/** A text, or an empty one for anything else. */
export function textOf(value: Json | undefined): string {
  return typeof value === "string" ? value : "";
}

/** Rows of numbers, each column divided by its size (a unit's, in SI). */
export function rowsOf(value: Json | undefined, sizes: readonly number[]): readonly (readonly number[])[] {
  return membersOf(value).map((row) => sizes.map((size, at) => numberOf(membersOf(row)[at]) / size));
}
