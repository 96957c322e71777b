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
