import type { Quantity } from "../quantity.ts";
import { say } from "../text/said/said.ts";
import { tidy, toSI } from "../unit/unit.ts";
import type { QuantityContext } from "./context.ts";
import type { Measure } from "./measure.ts";
import type { QuantityProblem } from "./problem.ts";
import type { Statement } from "./statement.ts";

/** A measure in SI: its value, and the size of its last digit or part. */
interface Reading {
  readonly value: number;
  readonly digit: number;
}

/** What a statement says of the value, in SI: the fields of a quantity that depend on its form. */
export type Limits = Pick<Quantity, "form" | "value" | "low" | "high" | "u" | "digit">;

/** Limits and standard uncertainty of a statement whose units are settled; `exact` for counts. */
export function limitsOf(
  statement: Statement,
  exact: boolean,
  context: QuantityContext,
): Limits | QuantityProblem {
  const { first, second } = statement;
  const one = readingOf(first);
  if (statement.bound !== null) return bounded(statement.bound, one, exact);
  if (second === null) return about(statement, context, one.digit, toLastDigit("value", one, exact));
  const other = readingOf(second.measure);
  if (second.joined === "plus-minus") {
    const coverage = statement.coverage ?? context.coverage ?? (context.plusMinus === "expanded" ? 2 : 1);
    return about(statement, context, one.digit, {
      form: "value",
      value: one.value,
      low: tidy(one.value - other.value),
      high: tidy(one.value + other.value),
      u: other.value / coverage,
      digit: one.digit,
    });
  }
  if (one.value > other.value) {
    const message = say`Unexpected range that runs backwards, expected the smaller end first`;
    return { code: "backwards", message, start: first.start, end: second.measure.end };
  }
  const digit = Math.max(one.digit, other.digit);
  return about(statement, context, digit, between(one.value, other.value, digit));
}

function bounded(form: "at-least" | "at-most", { value, digit }: Reading, exact: boolean): Limits {
  const least = form === "at-least";
  return {
    form,
    value,
    low: least ? value : null,
    high: least ? null : value,
    u: null,
    digit: exact ? 0 : digit,
  };
}

/** Rectangular over the range; equal ends say no more than a value read to its last digit. */
function between(low: number, high: number, digit: number): Limits {
  if (low === high) return toLastDigit("range", { value: low, digit }, false);
  return { form: "range", value: tidy((low + high) / 2), low, high, u: (high - low) / Math.sqrt(12), digit };
}

/** Half a unit of the last digit either way, rectangular (GUM 4.3.7). */
function toLastDigit(form: "value" | "range", reading: Reading, exact: boolean): Limits {
  const { value } = reading;
  const digit = exact ? 0 : reading.digit;
  return {
    form,
    value,
    low: tidy(value - digit / 2),
    high: tidy(value + digit / 2),
    u: digit / Math.sqrt(12),
    digit,
  };
}

/** "About" adds at least `approximate` of the value, or the last digit where that is more, as a standard uncertainty. */
function about(statement: Statement, context: QuantityContext, digit: number, limits: Limits): Limits {
  if (!statement.about) return limits;
  const least = Math.max(context.approximate * Math.abs(limits.value), digit);
  return {
    ...limits,
    form: "approximate",
    low: Math.min(limits.low ?? limits.value, tidy(limits.value - least)),
    high: Math.max(limits.high ?? limits.value, tidy(limits.value + least)),
    u: Math.max(limits.u ?? 0, least),
    digit,
  };
}

/** The sum of the parts, and the size of the last of them that was read. */
export function readingOf(measure: Measure): Reading {
  const sizes = measure.parts.map(({ numeral, unit }) =>
    unit === null ? numeral.value : toSI(numeral.value, unit),
  );
  const last = measure.parts.at(-1);
  const sum = tidy(sizes.reduce((total, size) => total + size, 0));
  const digit =
    last === undefined ? 0 : last.unit === null ? last.numeral.part : toSI(last.numeral.part, last.unit);
  return { value: measure.negative ? -sum : sum, digit };
}
