import { say } from "../../../base/text/said/said.ts";
import type { Derived } from "../../../derive/derived/derived.ts";
import { isFor } from "../../../derive/recorded/left-out.ts";
import type { View } from "../rule.ts";
import { perDerivation, wasRefused } from "./per-derivation.ts";

export const refusedDerivation = perDerivation(
  "refused-derivation",
  "warning",
  say`The method refused to compute on these data.`,
  say`A method refuses where its number would mislead: too few values, bounds only, mixed kinds. Give it more or better measurements, or use another method; a refused derivation bears on nothing.`,
  (derived, { graph, lens }) =>
    derived.status === "refused" && derived.reason !== "unit-from-these-data" && !isTooEarly(derived, lens)
      ? [{ message: wasRefused(graph, derived) }]
      : [],
);

/** Looked at from a year in which its data were not all in print: no fault of the record's. */
function isTooEarly(derived: Derived, lens: View["lens"]): boolean {
  return lens.asOf !== undefined && derived.leftOut.some((one) => isFor(one.why, "notCounting"));
}
