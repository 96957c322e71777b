/** Order by UTF-16 code units: the same on every machine and in every language. */
export function byText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/** The distinct values of a list, sorted by text. */
export function distinct(values: Iterable<string>): readonly string[] {
  return [...new Set(values)].sort(byText);
}
