import type { Quantity } from "../quantity.ts";
import type { QuantityContext } from "./context.ts";
import { meaningOf } from "./meaning.ts";
import { plainText, type PlainText } from "./plain-text.ts";
import { isProblem, type QuantityProblem } from "./problem.ts";
import { withoutSeparators } from "./separators.ts";
import { readStatement } from "./statement.ts";
import { say } from "../text/said/said.ts";

export type { QuantityContext } from "./context.ts";
export type { QuantityProblem, QuantityProblemCode } from "./problem.ts";

/**
 * Reads a quantity as a scholar writes it: `18.2 ± 0.4 cm`, `42–45 cm`, `≥ 240 cm`, `about 6 foot`, `5 ft 4 in`,
 * `1½ ft`, `17`, `45 %`. Never throws; what cannot be read comes back as a problem with its place.
 */
export function parseQuantity(
  text: string,
  context: QuantityContext,
): { readonly ok: Quantity } | { readonly problem: QuantityProblem } {
  const plain = plainText(text);
  const statement = readStatement(
    context.decimal === "comma" ? swapped(plain.text) : plain.text,
    context.units,
  );
  const quantity = isProblem(statement) ? statement : meaningOf(text, statement, context);
  return isProblem(quantity) ? { problem: placed(quantity, text, plain, context) } : { ok: quantity };
}

/** Whether all of it lies above 0, as lengths and masses must unless their dimension says `sign: any`. */
export function isPositive(quantity: Quantity): boolean {
  if (quantity.form === "at-most") return quantity.value > 0;
  return quantity.form === "range" ? (quantity.low ?? 0) > 0 : quantity.value > 0;
}

/** Whether it is a share of something, from 0 to less than all of it: `1 %`, `0.01`. */
export function isShare({ kind, form, value }: Quantity): boolean {
  const isPure = kind === "number" || kind === "count";
  return isPure && (form === "value" || form === "approximate") && value >= 0 && value < 1;
}

function swapped(text: string): string {
  return text.replace(/[.,]/gu, (sign) => (sign === "," ? "." : ","));
}

/** Puts a problem of the plain text into the text as written, and mends what can be mended. */
function placed(
  problem: QuantityProblem,
  text: string,
  plain: PlainText,
  context: QuantityContext,
): QuantityProblem {
  const start = plain.at(problem.start);
  const end = Math.max(start, plain.at(problem.end));
  const moved = { code: problem.code, message: problem.message, start, end };
  const put = (from: number, to: number, word: string): string =>
    text.slice(0, plain.at(from)) + word + text.slice(plain.at(to));
  if (problem.code === "negative-end")
    return { ...moved, replacement: put(problem.start, problem.end, " to ") };
  if (problem.code === "negative-uncertainty") {
    return { ...moved, replacement: put(problem.start, problem.start + 1, "") };
  }
  if (problem.code !== "decimal-comma" && problem.code !== "digit-groups") return moved;
  if (context.decimal === "comma") {
    const message = say`Unexpected number \`${text.slice(start, end)}\`, expected a comma as the decimal sign and no other`;
    const mirrored = parseQuantity(swapped(text), { ...context, decimal: "point" });
    const mended = "problem" in mirrored ? mirrored.problem : null;
    return mended?.replacement === undefined || mended.otherwise !== undefined
      ? { ...moved, message }
      : { ...moved, message, replacement: swapped(mended.replacement) };
  }
  return withoutSeparators(moved, text, plain, (mended) => {
    const again = parseQuantity(mended, context);
    return "ok" in again || again.problem.code === "missing-unit";
  });
}
