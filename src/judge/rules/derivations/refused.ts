import type { Derived } from "../../../derive/derive.ts";
import { notCounting } from "../../../derive/select.ts";
import type { View } from "../rule.ts";
import { perDerivation, sentence, named } from "./per-derivation.ts";

export const refusedDerivation = perDerivation(
  "refused-derivation",
  "warning",
  "The method refused to compute on these data.",
  "A method refuses where its number would mislead: too few values, bounds only, mixed kinds. Give it more or better measurements, or use another method; a refused derivation bears on nothing.",
  (derived, { graph, lens }) =>
    derived.status === "refused" && derived.reason !== "unit-from-these-data" && !isTooEarly(derived, lens)
      ? [{ message: `${named(graph, derived)} was refused. ${sentence(derived.why ?? "")}` }]
      : [],
);

/** Looked at from a year in which its data were not all in print: no fault of the record's. */
function isTooEarly(derived: Derived, lens: View["lens"]): boolean {
  return lens.asOf !== undefined && derived.leftOut.some((one) => one.why === notCounting);
}
