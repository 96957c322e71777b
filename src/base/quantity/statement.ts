import { readMeasure, readUnit, skip, unexpected, type Measure } from "./measure.ts";
import { matchAt, vulgar } from "./numeral.ts";
import { isProblem, type QuantityProblem } from "./problem.ts";
import { coded, say } from "../text/said/said.ts";
import type { UnitTable } from "../unit/unit-table.ts";

/** What a text says, before units and kinds are settled; offsets are those of the plain text. */
export interface Statement {
  readonly bound: "at-least" | "at-most" | null;
  readonly about: boolean;
  readonly first: Measure;
  readonly second: { readonly joined: "range" | "plus-minus"; readonly measure: Measure } | null;
  /** What `(1 s)` or `(2 s)` at the end says. */
  readonly coverage: 1 | 2 | null;
}

type Joined = NonNullable<Statement["second"]>;

const atLeast = /(?:≥|>=|=>|>|(?:at least|more than|over)(?![\p{L}\p{M}]))/iuy;
const atMost = /(?:≤|<=|=<|<|(?:at most|less than|under)(?![\p{L}\p{M}]))/iuy;
const approximately = /(?:~|≈|(?:about|circa|ca|c)(?![\p{L}\p{M}])\.?)/iuy;
const between = /between(?![\p{L}\p{M}])/iuy;
const plusMinus = / *(?:±|\+\/-|\+-)/uy;
const to = / *to(?![\p{L}\p{M}])/iuy;
const and = / *and(?![\p{L}\p{M}])/iuy;
const dash = new RegExp(` *[-–](?= *[-–+]?(?:[\\d.]|${vulgar}))`, "uy");
const sigma = / *\( *([12]) ?(?:s|σ)\.? *\)/iuy;

/** Reads the grammar of a quantity from a plain text. */
export function readStatement(text: string, units: UnitTable): Statement | QuantityProblem {
  const prefix = readPrefix(text);
  if (isProblem(prefix)) return prefix;
  const open = text.charAt(prefix.end) === "(";
  const inBetween = matchAt(between, text, prefix.end);
  const start = prefix.end + (open ? 1 : (inBetween?.[0].length ?? 0));
  const first = readMeasure(text, start, units);
  if (isProblem(first)) return first;
  const second = inBetween === null ? readSecond(text, first, units) : readAnd(text, first, units);
  if (second !== null && isProblem(second)) return second;
  let statement: Statement = { ...prefix, first, second, coverage: null };
  let end = second?.measure.end ?? first.end;
  if (open) {
    const closed = readClosing(text, statement, end, units);
    if (isProblem(closed)) return closed;
    ({ statement, end } = closed);
  }
  const stated = matchAt(sigma, text, end);
  if (stated !== null && second?.joined === "plus-minus") {
    statement = { ...statement, coverage: stated[1] === "2" ? 2 : 1 };
    end += stated[0].length;
  }
  return ended(text, end, statement);
}

function readPrefix(
  text: string,
): { readonly bound: Statement["bound"]; readonly about: boolean; readonly end: number } | QuantityProblem {
  const start = skip(text, 0);
  const least = matchAt(atLeast, text, start);
  const most = matchAt(atMost, text, start);
  const about = matchAt(approximately, text, start);
  const end = skip(text, start + ((least ?? most ?? about)?.[0].length ?? 0));
  if (end > start) {
    const again =
      matchAt(atLeast, text, end) ?? matchAt(atMost, text, end) ?? matchAt(approximately, text, end);
    if (again !== null) {
      const words = text.slice(start, end + again[0].length);
      const message = say`Unexpected \`${words}\`, expected one word for a bound or for about`;
      return { code: "unreadable", message, start, end: end + again[0].length };
    }
  }
  return {
    bound: least !== null ? "at-least" : most !== null ? "at-most" : null,
    about: about !== null,
    end,
  };
}

function readSecond(text: string, first: Measure, units: UnitTable): Joined | QuantityProblem | null {
  const sign = matchAt(plusMinus, text, first.end);
  if (sign !== null) {
    const measure = readMeasure(text, first.end + sign[0].length, units);
    if (isProblem(measure)) return measure;
    if (!measure.negative) return { joined: "plus-minus", measure };
    const message = say`Unexpected uncertainty below 0, expected one of 0 or more`;
    return { code: "negative-uncertainty", message, start: measure.start, end: measure.end };
  }
  const word = matchAt(to, text, first.end);
  const join = word ?? matchAt(dash, text, first.end);
  if (join === null) return null;
  const measure = readMeasure(text, first.end + join[0].length, units);
  if (isProblem(measure)) return measure;
  if (word !== null || !(first.negative || measure.negative)) return { joined: "range", measure };
  const message = say`Unexpected dash beside an end below 0, expected ${coded("to")} between the ends of the range`;
  return { code: "negative-end", message, start: first.end, end: first.end + join[0].length };
}

function readAnd(text: string, first: Measure, units: UnitTable): Joined | QuantityProblem {
  const word = matchAt(and, text, first.end);
  if (word === null) {
    const at = skip(text, first.end);
    const message = say`Missing ${coded("and")}, expected ${coded("between … and …")}`;
    return { code: "unreadable", message, start: at, end: Math.max(at, text.trimEnd().length) };
  }
  const measure = readMeasure(text, first.end + word[0].length, units);
  return isProblem(measure) ? measure : { joined: "range", measure };
}

/** After `(18.2 ± 0.4)` the unit is that of all numbers within. */
function readClosing(
  text: string,
  statement: Statement,
  end: number,
  units: UnitTable,
): { readonly statement: Statement; readonly end: number } | QuantityProblem {
  const at = skip(text, end);
  if (text.charAt(at) !== ")") {
    return {
      code: "unreadable",
      message: say`Missing ${coded(")")}`,
      start: at,
      end: Math.max(at, text.trimEnd().length),
    };
  }
  const found = readUnit(text, at + 1, units, null);
  if (found === null) return { statement, end: at + 1 };
  if (isProblem(found)) return found;
  const withUnit = (measure: Measure): Measure => ({
    ...measure,
    parts: measure.parts.map(({ numeral, unit }) => ({ numeral, unit: unit ?? found.unit })),
  });
  const { first, second } = statement;
  return {
    statement: {
      ...statement,
      first: withUnit(first),
      second: second === null ? null : { joined: second.joined, measure: withUnit(second.measure) },
    },
    end: found.end,
  };
}

function ended(text: string, end: number, statement: Statement): Statement | QuantityProblem {
  const at = skip(text, end);
  const place = { start: at, end: text.trimEnd().length };
  if (at < text.length) {
    if (matchAt(sigma, text, at) !== null) {
      return {
        code: "unreadable",
        message: say`Unexpected \`${text.slice(at).trim()}\` without a ±`,
        ...place,
      };
    }
    return unexpected(text, at).end > at
      ? {
          code: "unreadable",
          message: say`Unexpected \`${text.slice(at).trim()}\` after the quantity`,
          ...place,
        }
      : statement;
  }
  if (statement.bound !== null && statement.second !== null) {
    const message = say`Unexpected range or uncertainty after a bound, expected a single value`;
    return { code: "unreadable", message, start: 0, end: place.end };
  }
  return statement;
}
