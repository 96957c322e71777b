import type { Quantity, QuantityKind } from "../../base/quantity.ts";
import { formatNumber, formatWithU, placesOf } from "../../base/quantity/quantity-print.ts";

/** The unit that a column of values is given in: its sign, and its size in SI. */
export interface SIUnit {
  readonly sign: string;
  readonly size: number;
}

const steps: Readonly<
  Record<QuantityKind, readonly (readonly [from: number, size: number, sign: string])[]>
> = {
  length: [
    [1000, 1000, "km"],
    [0.1, 1, "m"],
    [0, 0.001, "mm"],
  ],
  mass: [
    [1, 1, "kg"],
    [0, 0.001, "g"],
  ],
  angle: [[0, Math.PI / 180, "°"]],
  time: [
    [31557600, 31557600, "years"],
    [86400, 86400, "days"],
    [3600, 3600, "h"],
    [0, 1, "s"],
  ],
  area: [[0, 1, "m²"]],
  volume: [
    [0.1, 1, "m³"],
    [0, 0.001, "l"],
  ],
  count: [[0, 1, ""]],
  number: [[0, 1, ""]],
};

/** One unit for values that stand side by side, fit for the largest of them. */
export function siUnitFor(kind: QuantityKind, values: readonly number[]): SIUnit {
  const largest = Math.max(0, ...values.map(Math.abs));
  const [, size, sign] = steps[kind].find(([from]) => largest >= from) ?? [0, 1, ""];
  return { sign, size };
}

/** Standard uncertainty (1 s) in SI with the errors it shares, its unit's among them; null for bounds. */
export function wholeU({ u, value, shared }: Pick<Quantity, "u" | "value" | "shared">): number | null {
  return u === null ? null : Math.hypot(u, ...shared.map((error) => error.relative * value));
}

/**
 * A quantity in SI with its standard uncertainty, in digits that make sense: the uncertainty to one digit, to two where it
 * begins with 1, the value to the same place (GUM 7.2.6 asks for two at most). A bound has its sign, and the digits it is read to.
 */
export function siWords(quantity: Quantity, unit: SIUnit): string {
  const { form, value, digit } = quantity;
  const u = wholeU(quantity);
  const last = u === null ? stepOf(digit / unit.size) : placesOf(u / unit.size);
  const sign = form === "at-least" ? "≥ " : form === "at-most" ? "≤ " : "";
  return withSign(`${sign}${around(value, u, last, unit)}`, unit);
}

/** A size in SI with its standard uncertainty, in the unit that suits it: `0.743 ± 0.006 m`. */
export function sizeWords(value: number, u: number, kind: QuantityKind): string {
  const unit = siUnitFor(kind, [value]);
  return withSign(around(value, u, placesOf(u / unit.size), unit), unit);
}

/** A value in SI in a given unit, with its standard uncertainty where it has one: `0.743 ± 0.006 m`. */
export function valueWords(value: number, u: number | null, unit: SIUnit): string {
  return withSign(
    u === null ? formatNumber(value / unit.size) : around(value, u, placesOf(u / unit.size), unit),
    unit,
  );
}

/** A difference in SI, to two digits. */
export function differenceWords(value: number, unit: SIUnit): string {
  return withSign(formatNumber(value / unit.size, 2), unit);
}

function around(value: number, u: number | null, places: number | null, { size }: SIUnit): string {
  return formatWithU(value / size, u === null ? null : u / size, places);
}

function withSign(words: string, { sign }: SIUnit): string {
  return sign === "" || sign === "°" ? words + sign : `${words} ${sign}`;
}

/** Decimal places of a value that is read to a step; null where it is exact. */
function stepOf(step: number): number | null {
  return step > 0 ? -Math.floor(Math.log10(step * (1 + 1e-9))) : null;
}
