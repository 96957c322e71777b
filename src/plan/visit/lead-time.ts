import { distinct } from "../../base/order.ts";

const numbers = "one two three four five six seven eight nine ten eleven twelve".split(" ");
const days: Readonly<Record<string, number>> = { day: 1, week: 7, fortnight: 14, month: 30, year: 365 };

/** How many days a lead time as people write it comes to at most (`a week`, `2–3 months`); null where it cannot be told. */
export function daysIn(written: string): number | null {
  const found = [
    ...written.toLowerCase().matchAll(/(\d+(?:\.\d+)?|[a-z]+)\s+(day|week|fortnight|month|year)s?\b/g),
  ];
  const lengths = found.flatMap(([, number = "", unit = ""]) => {
    const counted = countOf(number);
    return counted === null ? [] : [counted * (days[unit] ?? 0)];
  });
  return lengths.length > 0 ? Math.max(...lengths) : null;
}

function countOf(number: string): number | null {
  if (/^\d/.test(number)) return Number(number);
  if (number === "a" || number === "an") return 1;
  const at = numbers.indexOf(number);
  return at < 0 ? null : at + 1;
}

/** Lead times, each once, the longest first; those that cannot be told come before all, for they may be longer. */
export function longestFirst(written: readonly string[]): readonly string[] {
  const length = (one: string): number => daysIn(one) ?? Infinity;
  return distinct(written).toSorted((a, b) => (length(a) === length(b) ? 0 : length(b) - length(a)));
}
