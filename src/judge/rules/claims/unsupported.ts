import { labelOf } from "../../../link/names/label.ts";
import { inWords } from "../tell.ts";
import { holding, support } from "./support.ts";

export const unsupportedClaim = support(
  "unsupported-claim",
  "A claim that a scholar holds has no argument, or only such as lean on what is bare.",
  "Read the passage again: is a reason given there that was not recorded? If so, record it; if not, the claim is a bare assertion, and the review should say so. An argument of your own may be put under it.",
  ({ claim, lack }) => lack.through[0] ?? claim,
  (view, group) => {
    const bare = group[0].lack.through[0] ?? group[0].claim;
    const own = group.filter(({ claim }) => claim === bare);
    const leaning = group.filter(({ claim }) => claim !== bare);
    const name = `“${labelOf(view.graph, bare)}”`;
    if (own.length === 0) {
      const lean = leaning.length === 1 ? "leans" : "lean";
      return `${holding(view, leaning)}, which ${lean} on ${name}, under which there is nothing.`;
    }
    const also =
      leaning.length === 0
        ? ""
        : `; ${inWords(leaning.map(({ claim, who }) => `“${labelOf(view.graph, claim)}” (${who})`))} ${leaning.length === 1 ? "leans" : "lean"} on it`;
    return `${holding(view, own)} without an argument, expected at least one under it${also}.`;
  },
);
