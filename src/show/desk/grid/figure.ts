import type { QuantityKind } from "../../../base/quantity.ts";
import { parseQuantity } from "../../../base/quantity/quantity-text.ts";
import type { QuantityContext, QuantityProblem } from "../../../base/quantity/quantity-text.ts";

/** What holds for figures that come bare: their unit, and what is ± of them; texts as they were typed. */
export interface Common {
  readonly unit: string | null;
  readonly u: string | null;
}

const uncertain = /^(.*?)\s*(?:±|\+\/-|\+-)\s*(.+)$/u;
const own = /±|\+\/?-/u;
const sigma = /\s*\(\s*[12]\s?(?:s|σ)\.?\s*\)\s*$/iu;

/** The unit and uncertainty of a column as they are typed: `cm`, `± 1 mm`, `cm ± 0.1`; or why they cannot be read. */
export function commonOf(text: string, context: QuantityContext): Common | QuantityProblem {
  const said = text.trim();
  const [, ahead = said, u = null] = uncertain.exec(said) ?? [];
  const unit = ahead.trim() === "" ? null : ahead.trim();
  const sample = `1 ${unit ?? ""}${u === null ? "" : ` ± ${u}`}`.trim();
  const read = parseQuantity(sample, context);
  if ("problem" in read && !(unit === null && u !== null)) return read.problem;
  return { unit, u };
}

/**
 * A figure as it is written into a file: one that comes bare gets the unit of its column, and one that says nothing of
 * its uncertainty that of its column. Counts and pure numbers have no unit; what cannot be read stays as it is.
 */
export function figureWith(
  text: string,
  { unit, u }: Common,
  context: QuantityContext,
  due: QuantityKind | null = null,
): string {
  const said = text.trim();
  const { kind: _, ...any } = context;
  const read = parseQuantity(said, any);
  if ("problem" in read) return said;
  const bare = read.ok.unit === "1" && !said.includes("%");
  const named = bare && unit !== null && due !== "count" && due !== "number";
  const alone = named ? `${said} ${unit}` : said;
  if (u === null || own.test(said) || read.ok.form !== "value") return alone;
  const [, covers = ""] = /(\s*\(.*)$/u.exec(sigma.exec(u)?.[0] ?? "") ?? [];
  const error = u.slice(0, u.length - covers.length).trim();
  const hasUnit = isNamed(error, any);
  // What is ± in some unit is none of a count or pure number, which would only take that unit for its own.
  if (bare && !named && (due === "count" || unit !== null || hasUnit)) return alone;
  if (isNothing(error, any)) return alone;
  const size = hasUnit || unit === null ? error : `${error} ${unit}`;
  const whole = named && !hasUnit ? `${said} ± ${error} ${unit}${covers}` : `${alone} ± ${size}${covers}`;
  // An uncertainty of another kind is none of this figure, a mass in a column of lengths; a share of it is told to be none.
  return "ok" in parseQuantity(whole, any) || error.includes("%") ? whole : alone;
}

/** Readings that all agree scatter by 0: the figure is still no better than its last digit (GUM F.2.2.1). */
export function isNothing(error: string, context: QuantityContext): boolean {
  const read = parseQuantity(error.replace(sigma, ""), context);
  return "ok" in read && read.ok.form === "value" && read.ok.value === 0;
}

function isNamed(text: string, context: QuantityContext): boolean {
  const read = parseQuantity(text, context);
  return "ok" in read && (read.ok.unit !== "1" || text.includes("%"));
}

/** A figure that was written with the comma as decimal sign, as files have it: `18,2` is `18.2`, `1.200,5` is `1200.5`. */
export function pointed(text: string, context: QuantityContext): string {
  const swapped = text
    .replace(/(?<=\d)[.,](?=\d)/gu, (sign) => (sign === "," ? "." : ","))
    .replace(/(?<![\d.,]),(?=\d)/gu, ".");
  const { kind: _, ...any } = context;
  const read = parseQuantity(swapped, any);
  if ("ok" in read) return swapped;
  const { replacement, otherwise } = read.problem;
  // Groups of three are certain here, since the point has been told not to be the decimal sign.
  return replacement !== undefined && (otherwise === undefined || swapped.includes(","))
    ? replacement
    : swapped;
}

/** Whether a figure is written with a comma, so that it must be told what that means. */
export function hasComma(text: string): boolean {
  return /\d,\d|(?<![\d.]),\d/u.test(text);
}
