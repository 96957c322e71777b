import type { Quantity, SharedError } from "../quantity.ts";
import { say } from "../text/said/said.ts";
import { toSI, type Unit } from "../unit/unit.ts";
import type { QuantityContext } from "./context.ts";
import { kindOf } from "./kind.ts";
import { limitsOf, readingOf } from "./limits.ts";
import type { Measure } from "./measure.ts";
import { isProblem, type QuantityProblem } from "./problem.ts";
import type { Statement } from "./statement.ts";

/** The meaning of a statement in SI, with its limits and standard uncertainty (GUM 4.3.7 for what is read to a digit). */
export function meaningOf(
  text: string,
  statement: Statement,
  context: QuantityContext,
): Quantity | QuantityProblem {
  const settled = settleUnits(statement);
  if (isProblem(settled)) return settled;
  const measures = [settled.first, ...(settled.second === null ? [] : [settled.second.measure])];
  const kind = kindOf(measures, context.kind);
  if (isProblem(kind)) return kind;
  const limits = limitsOf(settled, kind === "count", context);
  if (isProblem(limits)) return limits;
  if (![limits.value, limits.low ?? 0, limits.high ?? 0].every(Number.isFinite)) {
    const message = say`Unreadable number, expected one below ${"1e308"}`;
    return { code: "unreadable", message, start: settled.first.start, end: settled.first.end };
  }
  const unit = settled.first.parts[0]?.unit ?? null;
  return {
    text,
    kind,
    form: limits.form,
    unit: unit?.name ?? "1",
    unitSize: unit?.size ?? 1,
    value: limits.value,
    low: limits.low,
    high: limits.high,
    u: limits.u,
    digit: limits.digit,
    shared: sharedBy(settled.first),
  };
}

/** A number without a unit takes that of the other number: `42–45 cm`, `18.2 cm ± 0.4`. */
function settleUnits(statement: Statement): Statement | QuantityProblem {
  const { first, second } = statement;
  if (second === null) return statement;
  const ahead = first.parts[0]?.unit ?? null;
  const behind = second.measure.parts[0]?.unit ?? null;
  if (ahead === null && behind !== null) return { ...statement, first: withUnit(first, behind) };
  if (behind !== null || ahead === null) return statement;
  if (first.parts.length > 1) {
    const { start, end } = second.measure;
    return { code: "missing-unit", message: say`Missing unit of the second number`, start, end };
  }
  return { ...statement, second: { ...second, measure: withUnit(second.measure, ahead) } };
}

function withUnit(measure: Measure, unit: Unit): Measure {
  return { ...measure, parts: measure.parts.map(({ numeral }) => ({ numeral, unit })) };
}

/** The share of the value that each unit's own uncertainty makes, common to all that is measured in that unit. */
function sharedBy(measure: Measure): readonly SharedError[] {
  const sum = Math.abs(readingOf(measure).value);
  return measure.parts.flatMap(({ numeral, unit }) => {
    if (unit === null || unit.u === 0) return [];
    const share = sum === 0 ? 1 : toSI(numeral.value, unit) / sum;
    return [{ with: `unit:${unit.name}`, relative: (unit.u / unit.size) * share }];
  });
}
