import type { Said, Text } from "./said.ts";

/** The same data with words put into a language where something is said. */
export type Worded<T> = T extends Said
  ? string
  : T extends object
    ? { readonly [Key in keyof T]: Worded<T[Key]> }
    : T;

/** Puts into words whatever is said at any depth of plain data; all else stays as it is. */
export function worded<T>(value: T, words: (text: Text) => string): Worded<T> {
  return wordedAny(value, words) as Worded<T>;
}

function wordedAny(value: unknown, words: (text: Text) => string): unknown {
  if (Array.isArray(value)) return value.map((one: unknown) => wordedAny(one, words));
  if (typeof value !== "object" || value === null) return value;
  if (isSaid(value)) return words(value);
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, wordedAny(one, words)]));
}

function isSaid(value: object): value is Said {
  return "say" in value && "with" in value;
}
