import { labelOf } from "../../../link/label.ts";
import { perDerivation, named } from "./per-derivation.ts";

export const inconclusiveDerivation = perDerivation(
  "inconclusive-derivation",
  "note",
  "A number says nothing about a claim that it bears on.",
  "It meets neither what would support the claim nor what would dispute it, or both. That is a result: print it as one. More measurements may decide it.",
  (derived, { graph }) =>
    derived.status === "computed"
      ? derived.bearings.flatMap((one, place) => {
          if (one.bearing !== "inconclusive" || one.trouble !== null) return [];
          const message = `${named(graph, derived)} neither supports nor disputes “${labelOf(graph, one.claim)}”.`;
          return [{ message, path: ["bears-on", place] }];
        })
      : [],
);
