import { say } from "../../../base/text/said/said.ts";
import { quotedLabel, quotedLabels } from "../tell.ts";
import { perDerivation } from "./per-derivation.ts";

export const inconclusiveDerivation = perDerivation(
  "inconclusive-derivation",
  "note",
  say`A number says nothing about a claim that it bears on.`,
  say`It meets neither what would support the claim nor what would dispute it, or both. That is a result: print it as one. More measurements may decide it.`,
  (derived, { graph }) => {
    const places = derived.bearings.flatMap((one, place) =>
      derived.status === "computed" && one.bearing === "inconclusive" && one.trouble === null ? [place] : [],
    );
    const [first] = places;
    if (first === undefined) return [];
    const claims = [...new Set(places.flatMap((place) => derived.bearings[place]?.claim ?? []))];
    const message = say`${quotedLabel(graph, derived.id)} neither supports nor disputes ${quotedLabels(graph, claims)}.`;
    return [{ message, path: ["bears-on", first] }];
  },
);
