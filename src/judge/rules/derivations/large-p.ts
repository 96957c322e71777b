import { say } from "../../../base/text/said/said.ts";
import { quotedLabel } from "../tell.ts";
import { perDerivation } from "./per-derivation.ts";

export const supportsByLargeP = perDerivation(
  "supports-by-large-p",
  "warning",
  say`A large p is asked to support a claim.`,
  say`A large p may only mean that the data could not show a difference. Add an upper bound on \`detectable\` to the same condition, so that a difference that matters would hardly have been missed.`,
  (derived, { graph }) =>
    derived.bearings.flatMap((one, place) => {
      if (one.trouble !== "supports-by-large-p") return [];
      const [name, claim] = [quotedLabel(graph, derived.id), quotedLabel(graph, one.claim)];
      const message = say`${name} is to support ${claim} by a large p, expected a bound on what would have been missed.`;
      return [{ message, path: ["bears-on", place, "supports"] }];
    }),
);
