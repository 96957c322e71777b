/** What a quantity is a quantity of; kinds are never converted into one another. */
export type QuantityKind = "length" | "mass" | "angle" | "time" | "area" | "volume" | "count" | "number";

/** How a quantity was stated; bounds are censored and never treated as values. */
export type QuantityForm = "value" | "approximate" | "range" | "at-least" | "at-most";

/** An error common to all quantities that name the same cause (an instrument, a survey, a unit). */
export interface SharedError {
  readonly with: string;
  /** Relative standard uncertainty, a pure number. */
  readonly relative: number;
}

/**
 * A quantity as read: the text as written, and its meaning in SI units of its kind
 * (metre, kilogram, radian, second, square and cubic metre; 1 for counts and pure numbers).
 */
export interface Quantity {
  readonly text: string;
  readonly kind: QuantityKind;
  readonly form: QuantityForm;
  /** Name of the (first) unit as the table of units has it; `1` for counts and pure numbers. */
  readonly unit: string;
  /** Size of that unit in SI. */
  readonly unitSize: number;
  /** Central value: the value, the middle of a range, or the bound. */
  readonly value: number;
  /** Limits within which the text puts it; null at the open end of a bound. */
  readonly low: number | null;
  readonly high: number | null;
  /** Standard uncertainty (1 s) of the statement itself, shared errors left out; null for bounds. */
  readonly u: number | null;
  /** SI size of one unit of the last digit (or smallest part) read; 0 for an exact count. */
  readonly digit: number;
  readonly shared: readonly SharedError[];
}
