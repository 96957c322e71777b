import { parseQuantity } from "../../../../base/quantity/quantity-text.ts";
import type { QuantityContext } from "../../../../base/quantity/quantity-text.ts";
import type { Text } from "../../../../base/text/said/said.ts";
import { quantityWords } from "../../forms/checked/understood.ts";

/** A quantity that stands in some words. */
export interface QuantityIn {
  /** As it stands there. */
  readonly printed: string;
  /** As it would be written in a record: the same, but for a decimal comma. */
  readonly written: string;
  /** How it is understood. */
  readonly meaning: Text;
}

/** Where a quantity may begin: at a figure, with the words and signs before it that belong to it. */
const beginnings =
  /(?<![\p{L}\p{N}.,/])(?:(?:about|approximately|around|circa|ca\.|c\.|between|at least|at most|more than|less than|over|under)\s+|[~≈≥≤<>]\s*|[-−]\s?)?\d/giu;
/** So long a quantity may be, in signs. */
const longest = 48;
/** So many are offered at most. */
const most = 12;

/** The quantities with a unit that stand in some words, in their order, each once. */
export function quantitiesIn(text: string, context: QuantityContext): readonly QuantityIn[] {
  const found: QuantityIn[] = [];
  let past = 0;
  for (const { index } of text.matchAll(beginnings)) {
    if (index < past || found.length >= most) continue;
    const one = longestAt(text.slice(index, index + longest), context);
    if (one === null) continue;
    past = index + one.printed.length;
    if (!found.some(({ written }) => written === one.written)) found.push(one);
  }
  return found;
}

/** The longest text from here on that is a quantity with a unit. */
function longestAt(text: string, context: QuantityContext): QuantityIn | null {
  const ends = [...text.matchAll(/[\p{L}\p{N}%°′″'"½¼¾)](?![\p{L}\p{N}])/gu)].map(
    ({ 0: sign, index }) => index + sign.length,
  );
  for (const end of ends.toReversed()) {
    const printed = text.slice(0, end);
    if (printed.split("(").length !== printed.split(")").length) continue;
    const one = read(printed.replace(/\s+/gu, " "), context);
    if (one !== null) return { printed, ...one };
  }
  return null;
}

function read(printed: string, context: QuantityContext): Omit<QuantityIn, "printed"> | null {
  const first = parseQuantity(printed, context);
  if ("problem" in first) {
    const { replacement, otherwise } = first.problem;
    // Of a number with two readings neither is offered: it is the scholar who has to say.
    return replacement === undefined || otherwise !== undefined || replacement === printed
      ? null
      : read(replacement, context);
  }
  const { unit } = first.ok;
  if (unit === "1" && !/%/u.test(printed)) return null;
  return { written: printed, meaning: quantityWords(first.ok) };
}
