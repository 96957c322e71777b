import type { QuantityKind } from "../quantity.ts";
import type { Measure } from "./measure.ts";
import type { QuantityProblem } from "./problem.ts";

/** The kind of a quantity, if it is one and the one that is due; whole numbers without a unit are counts. */
export function kindOf(
  measures: readonly Measure[],
  due: QuantityKind | undefined,
): QuantityKind | QuantityProblem {
  const parts = measures.flatMap((measure) => measure.parts);
  const place = { start: measures[0]?.start ?? 0, end: measures.at(-1)?.end ?? 0 };
  const kinds = [...new Set(parts.map((part) => part.unit?.kind ?? null))];
  const named = kinds[0] ?? null;
  if (kinds.length > 1) {
    const message = `Unexpected ${kinds.map((kind) => kind ?? "number without a unit").join(" with ")} in one quantity, expected one kind`;
    return { code: "mixed-kinds", message, ...place };
  }
  if (named !== null) return due === undefined || due === named ? named : wrongKind(named, due, place);
  const counts = measures.every((one) => !one.negative && one.parts.every((part) => part.numeral.whole));
  if (due === "number" || (due === undefined && !counts)) return "number";
  if (due === undefined || due === "count")
    return counts ? "count" : wrongKind("number that is broken or below 0", "count", place);
  const message = `Missing unit, expected ${withArticle(due)} such as \`${sample[due]}\``;
  return { code: "missing-unit", message, ...place };
}

const sample: Readonly<Record<QuantityKind, string>> = {
  length: "18.2 cm",
  mass: "8.4 g",
  angle: "12° 30′",
  time: "3 d",
  area: "2.5 m²",
  volume: "1.2 l",
  count: "17",
  number: "1.74",
};

function withArticle(kind: QuantityKind): string {
  return /^[aeiou]/u.test(kind) ? `an ${kind}` : `a ${kind}`;
}

function wrongKind(found: string, due: QuantityKind, place: { start: number; end: number }): QuantityProblem {
  return {
    code: "wrong-kind",
    message: `Unexpected ${found}, expected ${withArticle(due)} such as \`${sample[due]}\``,
    ...place,
  };
}
