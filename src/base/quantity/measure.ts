import { kindWords } from "../unit/kind-words.ts";
import type { QuantityProblem } from "./problem.ts";
import { isProblem } from "./problem.ts";
import { matchAt, readNumeral, vulgar, type Numeral } from "./numeral.ts";
import { coded, row, say } from "../text/said/said.ts";
import type { UnitTable } from "../unit/unit-table.ts";
import type { Unit } from "../unit/unit.ts";

/** One number with its unit, as in `5 ft`; a unit that stands further on is not yet known. */
export interface MeasurePart {
  readonly numeral: Numeral;
  readonly unit: Unit | null;
}

/** A number with its unit, or several from larger to smaller unit (`5 ft 4 in`); offsets are those of the plain text. */
export interface Measure {
  readonly negative: boolean;
  readonly parts: readonly MeasurePart[];
  readonly start: number;
  readonly end: number;
}

const sign = /(?:[-–] ?|\+(?=[\d.]))?/uy;
const spaces = / */uy;
const goesOn = new RegExp(
  ` *(?:$|±|\\+/-|\\+-|[-–] *[-–+]?(?:[\\d.]|${vulgar})|[()]|(?:to|and)(?![\\p{L}\\p{M}]))`,
  "iuy",
);
const numberAhead = new RegExp(`\\d|\\.\\d|${vulgar}`, "uy");
const foreign = new RegExp(
  `(?:(?!\\d|${vulgar}|[±()]|\\+/-|[-–] *(?:[\\d.]|${vulgar})|(?<![\\p{L}\\p{M}])(?:to|and)(?![\\p{L}\\p{M}])).)+`,
  "iuy",
);

/** Reads a measure that begins at `start`, spaces before it included. */
export function readMeasure(text: string, start: number, units: UnitTable): Measure | QuantityProblem {
  const from = skip(text, start);
  const signed = matchAt(sign, text, from)?.[0] ?? "";
  const parts: MeasurePart[] = [];
  let at = from + signed.length;
  for (;;) {
    const numeral = readNumeral(text, at);
    if (numeral === null) return unexpected(text, at);
    if ("unread" in numeral) {
      const digits = text.slice(numeral.start, numeral.end);
      return {
        code: numeral.unread,
        message: say`Unreadable number \`${digits}\`, expected one such as ${coded("18.2")}`,
        start: numeral.start,
        end: numeral.end,
      };
    }
    const found = readUnit(text, numeral.end, units, parts.at(-1)?.unit ?? null);
    if (found !== null && isProblem(found)) return found;
    if (found === null && parts.length > 0) {
      const stray = text.slice(numeral.start, numeral.end);
      return {
        code: "missing-unit",
        message: say`Missing unit after \`${stray}\``,
        start: numeral.start,
        end: numeral.end,
      };
    }
    parts.push({ numeral, unit: found?.unit ?? null });
    at = found?.end ?? numeral.end;
    const next = skip(text, at);
    if (found === null || matchAt(numberAhead, text, next) === null) break;
    at = next;
  }
  return orderedParts({ negative: /[-–]/u.test(signed), parts, start: from, end: at });
}

/** The place of the next sign that is no space. */
export function skip(text: string, at: number): number {
  return at + (matchAt(spaces, text, at)?.[0].length ?? 0);
}

/** Says what stands where a number was expected. */
export function unexpected(text: string, at: number): QuantityProblem {
  const rest = text.slice(at).trim();
  const message =
    rest === ""
      ? say`Missing number, expected a quantity such as ${coded("18.2 cm")}`
      : say`Unexpected \`${rest}\`, expected a number`;
  return { code: "unreadable", message, start: at, end: Math.max(at, text.trimEnd().length) };
}

/** The longest name of a unit that begins here; null where the statement goes on without one. */
export function readUnit(
  text: string,
  at: number,
  units: UnitTable,
  larger: Unit | null,
): { readonly unit: Unit; readonly end: number } | QuantityProblem | null {
  const start = skip(text, at);
  const within = text.slice(start, start + units.longestName);
  const arc = larger?.kind === "angle" ? arcAt(text, start, units) : null;
  if (arc !== null) return arc;
  for (let length = within.length; length > 0; length--) {
    if (!endsWord(within, length, text.charAt(start + length))) continue;
    const unit = units.find(within.slice(0, length));
    if (unit !== null) return { unit, end: start + length };
  }
  if (matchAt(goesOn, text, at) !== null || matchAt(numberAhead, text, start) !== null) return null;
  return unknownUnit(text, start, units);
}

const arcs = /(minutes?(?: of arc)?|mins?|')|(seconds?(?: of arc)?|secs?|''|"|s)(?![\p{L}\p{M}])/iuy;

/** After degrees, minutes and seconds are those of arc. */
function arcAt(
  text: string,
  start: number,
  units: UnitTable,
): { readonly unit: Unit; readonly end: number } | null {
  const found = matchAt(arcs, text, start);
  const unit = found === null ? null : units.find(found[1] === undefined ? "″" : "′");
  return found === null || unit === null ? null : { unit, end: start + found[0].length };
}

function endsWord(within: string, length: number, after: string): boolean {
  const last = within.charAt(length - 1);
  if (/[\s–-]/u.test(last)) return false;
  return !(/[\p{L}\p{M}]/u.test(last) && /[\p{L}\p{M}]/u.test(after));
}

function unknownUnit(text: string, start: number, units: UnitTable): QuantityProblem {
  const name = (matchAt(foreign, text, start)?.[0] ?? text.charAt(start)).trimEnd();
  const place = { start, end: start + Math.max(1, name.length) };
  if (/^['"]/u.test(name)) {
    const [length, angle] = name.startsWith("'") ? ["ft", "′"] : ["in", "″"];
    const message = say`Unexpected \`${name.charAt(0)}\`, expected \`${length}\` for a length or \`${angle}\` for an angle`;
    return { code: "unknown-unit", message, ...place };
  }
  if (!/[\p{L}%°′″²³]/u.test(name)) {
    return {
      code: "unreadable",
      message: say`Unexpected \`${name}\` after the number, expected a unit`,
      ...place,
    };
  }
  const near = units.near(name);
  const hint = near.length > 0 ? near : ["mm", "cm", "m", "ft", "in", "g", "kg", "°"];
  const expected = row(hint.map(coded), "comma");
  const message =
    hint.length > 1
      ? say`Unknown unit \`${name}\`, expected one of ${expected}`
      : say`Unknown unit \`${name}\`, expected ${expected}`;
  return { code: "unknown-unit", message, ...place };
}

function orderedParts(measure: Measure): Measure | QuantityProblem {
  for (const [index, part] of measure.parts.entries()) {
    const before = measure.parts[index - 1];
    if (before === undefined || before.unit === null || part.unit === null) continue;
    const place = { start: before.numeral.start, end: measure.end };
    if (before.unit.kind !== part.unit.kind) {
      const message = say`Unexpected ${kindWords[before.unit.kind]} with ${kindWords[part.unit.kind]} in one quantity, expected one kind`;
      return { code: "mixed-kinds", message, ...place };
    }
    if (!(part.unit.size < before.unit.size)) {
      const message = say`Unexpected \`${part.unit.name}\` after \`${before.unit.name}\`, expected units from larger to smaller`;
      return { code: "unreadable", message, ...place };
    }
    if (!before.numeral.whole) {
      const message = say`Unexpected broken number before a smaller unit, expected a whole one`;
      return { code: "unreadable", message, start: before.numeral.start, end: before.numeral.end };
    }
  }
  return measure;
}
