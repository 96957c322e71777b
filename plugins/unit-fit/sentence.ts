import type { Computation, Settings } from "../../src/plugin.ts";

/** What the review's methods section prints; the words for what p says are fixed. */
export function unitFitSentence({ numbers, warnings }: Computation, settings: Settings): string {
  const unit = settings["unit"];
  const n = numbers["n"]?.value ?? 0;
  const p = numbers["p"]?.value ?? 1;
  const verdict =
    p < 0.05 ? "are compatible with" : p < 0.2 ? "cannot decide on" : "fit no better than chance to";
  const shown = warnings.includes("below-smallest-p") ? "p < 1e-9" : `p = ${p.toPrecision(2)}`;
  if (unit?.kind === "unit") {
    return `${n} measurements ${verdict} the ${unit.value.name}, a unit given beforehand (exact V-test of the cosine quantogram, Kendall 1974: ${shown}).`;
  }
  const q = numbers["q"]?.value ?? 0;
  return `A search among units found its best at ${q.toPrecision(4)} m; ${n} measurements ${verdict} a unit of that size (cosine quantogram, Kendall 1974, against sets without a unit searched alike: ${shown}).`;
}
