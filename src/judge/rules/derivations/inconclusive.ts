import { labelOf } from "../../../link/names/label.ts";
import { inWords } from "../tell.ts";
import { perDerivation, named } from "./per-derivation.ts";

export const inconclusiveDerivation = perDerivation(
  "inconclusive-derivation",
  "note",
  "A number says nothing about a claim that it bears on.",
  "It meets neither what would support the claim nor what would dispute it, or both. That is a result: print it as one. More measurements may decide it.",
  (derived, { graph }) => {
    const places = derived.bearings.flatMap((one, place) =>
      derived.status === "computed" && one.bearing === "inconclusive" && one.trouble === null ? [place] : [],
    );
    const [first] = places;
    if (first === undefined) return [];
    const claims = [...new Set(places.flatMap((place) => derived.bearings[place]?.claim ?? []))];
    const names = inWords(claims.map((claim) => `“${labelOf(graph, claim)}”`));
    const message = `${named(graph, derived)} neither supports nor disputes ${names}.`;
    return [{ message, path: ["bears-on", first] }];
  },
);
