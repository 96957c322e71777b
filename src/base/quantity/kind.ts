import type { QuantityKind } from "../quantity.ts";
import { kindWords, oneOfKind } from "../unit/kind-words.ts";
import type { Measure } from "./measure.ts";
import type { QuantityProblem } from "./problem.ts";
import { say } from "../text/said/said.ts";
import type { Said } from "../text/said/said.ts";

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
    const message = say`Unexpected ${mixed(kinds)} in one quantity, expected one kind`;
    return { code: "mixed-kinds", message, ...place };
  }
  if (named !== null)
    return due === undefined || due === named ? named : wrongKind(kindWords[named], due, place);
  const counts = measures.every((one) => !one.negative && one.parts.every((part) => part.numeral.whole));
  if (due === "number" || (due === undefined && !counts)) return "number";
  if (due === undefined || due === "count")
    return counts ? "count" : wrongKind(say`number that is broken or below 0`, "count", place);
  const message = say`Missing unit, expected ${oneOfKind[due]} such as \`${sample[due]}\``;
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

/** Kinds that stand in one quantity, as many as there are. */
function mixed(kinds: readonly (QuantityKind | null)[]): Said {
  const [first = null, ...others] = kinds;
  const word = (kind: QuantityKind | null): Said =>
    kind === null ? say`number without a unit` : kindWords[kind];
  return others.reduce((before, kind) => say`${before} with ${word(kind)}`, word(first));
}

function wrongKind(found: Said, due: QuantityKind, place: { start: number; end: number }): QuantityProblem {
  return {
    code: "wrong-kind",
    message: say`Unexpected ${found}, expected ${oneOfKind[due]} such as \`${sample[due]}\``,
    ...place,
  };
}
