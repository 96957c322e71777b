import { parseQuantity } from "../../../../base/quantity/quantity-text.ts";
import type { QuantityContext } from "../../../../base/quantity/quantity-text.ts";
import { isNothing } from "../../grid/figure.ts";
import { coded, say } from "../../../../base/text/said/said.ts";
import type { Text } from "../../../../base/text/said/said.ts";

/** A figure as a table has it, in one cell or several. */
export interface Parts {
  readonly value: string;
  /** What is ± of it; empty where nothing is. */
  readonly error: string;
  /** The unit of a value that comes bare. */
  readonly unit: string | null;
  readonly errorUnit: string | null;
}

/** The text of a quantity, or why there is none. */
export type Figure = { readonly text: string } | { readonly problem: Text };

/** The parts of a figure put together as a quantity is written, with the point for its decimal sign. */
export function figureOf(parts: Parts, decimal: "point" | "comma", context: QuantityContext): Figure {
  const value = pointed(parts.value, decimal, context);
  if ("problem" in value) return value;
  const error = pointed(withoutSign(parts.error), decimal, context);
  if ("problem" in error) return error;
  const { unit } = parts;
  const errorUnit = parts.errorUnit ?? unit;
  const needs = isBare(value.text, context) && unit !== null;
  const errorNeeds = isBare(error.text, context) && errorUnit !== null;
  if (error.text === "" || isNothing(error.text, context))
    return { text: needs ? withUnit(value.text, unit) : value.text };
  // A unit behind both stands for both.
  if (needs && (!errorNeeds || errorUnit === unit))
    return {
      text: isBare(error.text, context)
        ? withUnit(`${value.text} ± ${error.text}`, unit)
        : `${withUnit(value.text, unit)} ± ${error.text}`,
    };
  const first = needs ? withUnit(value.text, unit) : value.text;
  return { text: `${first} ± ${errorNeeds ? withUnit(error.text, errorUnit) : error.text}` };
}

function withoutSign(error: string): string {
  return error.replace(/^\s*(?:±|\+\/?\s*[-−])\s*/u, "");
}

/** Whether a text has figures and no unit. */
export function isBare(text: string, context: QuantityContext): boolean {
  if (text === "" || /[%‰°′″]/u.test(text)) return false;
  const read = parseQuantity(text, context);
  return "ok" in read ? read.ok.unit === "1" : read.problem.code === "missing-unit";
}

/** The unit stands behind the figures, before what a pair of brackets says of them. */
function withUnit(text: string, unit: string): string {
  return text.replace(/\s*(\([12] s\))?\s*$/u, (_, said?: string) => ` ${unit}${said ? ` ${said}` : ""}`);
}

/** A number written with a decimal comma as it is written with a point; one that has no such reading is told. */
export function pointed(text: string, decimal: "point" | "comma", context: QuantityContext): Figure {
  const said = text.trim();
  if (decimal === "point" || !/[.,]/u.test(said)) return { text: said };
  const read = parseQuantity(said, { ...context, decimal: "comma" });
  if ("ok" in read || read.problem.code === "missing-unit") return { text: exchanged(said) };
  return { problem: read.problem.message };
}

/** Points for commas and commas for points. */
export function exchanged(text: string): string {
  return text.replace(/[.,]/gu, (sign) => (sign === "," ? "." : ","));
}

/** Marks by which a cell says that there is no figure (common practice). */
export function isNoFigure(text: string): boolean {
  return /^\s*[-–—−]*\s*$/u.test(text);
}

/** Why a bare figure cannot be read, where no unit is known for it. */
export function withoutUnit(text: string): Text {
  return say`Missing unit of ${coded(text)}, expected one in the cell or in the head of its column`;
}
