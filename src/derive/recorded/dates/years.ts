import { zero } from "../../../base/date/differences.ts";
import type { Difference } from "../../../base/date/differences.ts";
import { parseEdtf } from "../../../base/date/edtf.ts";
import type { DateSpan } from "../../../base/date/edtf.ts";

/** Limits to the year of an event. */
export type Years = (event: string, span: DateSpan) => readonly Difference[];

/** In the years of a span. */
export const within: Years = (event, { low, high }) => between(event, low ?? -Infinity, high ?? Infinity);
/** In the first year of a span or later. */
export const notBefore: Years = (event, { low }) => between(event, low ?? -Infinity, Infinity);
/** In the last year of a span or earlier. */
export const notAfter: Years = (event, { high }) => between(event, -Infinity, high ?? Infinity);

/** A year is a stretch: what is of 1850 came before the beginning of 1851. */
export function between(event: string, low: number, high: number): readonly Difference[] {
  return [
    ...(low === -Infinity ? [] : [atMost(event, zero, -low)]),
    ...(high === Infinity ? [] : [{ from: zero, to: event, most: high + 1, strict: true }]),
  ];
}

/** One event at most so many years after another. */
export function atMost(from: string, to: string, most: number): Difference {
  return { from, to, most };
}

/** One came before the other, by so many years at least; by none given, before it all the same, in one year or not. */
export function precedes(first: string, second: string, atLeast = 0): Difference {
  return { from: second, to: first, most: -Math.max(0, atLeast), strict: atLeast <= 0 };
}

/** A date in EDTF; null where it cannot be read. */
export function spanIn(text: string): DateSpan | null {
  const span = parseEdtf(text);
  return "ok" in span ? span.ok : null;
}

/** Whether a date is only approximate or uncertain. */
export function isLoose({ approximate, uncertain }: DateSpan): boolean {
  return approximate || uncertain;
}
