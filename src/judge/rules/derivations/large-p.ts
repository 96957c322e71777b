import { labelOf } from "../../../link/names/label.ts";
import { perDerivation, named } from "./per-derivation.ts";

export const supportsByLargeP = perDerivation(
  "supports-by-large-p",
  "warning",
  "A large p is asked to support a claim.",
  "A large p may only mean that the data could not show a difference. Add an upper bound on `detectable` to the same condition, so that a difference that matters would hardly have been missed.",
  (derived, { graph }) =>
    derived.bearings.flatMap((one, place) => {
      if (one.trouble !== "supports-by-large-p") return [];
      const message = `${named(graph, derived)} is to support “${labelOf(graph, one.claim)}” by a large p, expected a bound on what would have been missed.`;
      return [{ message, path: ["bears-on", place, "supports"] }];
    }),
);
