/** Order by UTF-16 code units: the same on every machine and in every language. */
export function byText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/** Order by year, the earliest first; what has no year stands where it is told to. */
export function byYear(undated: "first" | "last"): (a: number | null, b: number | null) => number {
  const unknown = undated === "first" ? -Infinity : Infinity;
  return (a, b) => {
    const [one, other] = [a ?? unknown, b ?? unknown];
    return one === other ? 0 : one - other;
  };
}

/** The distinct values of a list, sorted by text. */
export function distinct(values: Iterable<string>): readonly string[] {
  return [...new Set(values)].sort(byText);
}
