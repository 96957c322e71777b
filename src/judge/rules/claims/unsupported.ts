import { row, say } from "../../../base/text/said/said.ts";
import { quotedLabel } from "../tell.ts";
import { holding, support } from "./support.ts";

export const unsupportedClaim = support(
  "unsupported-claim",
  say`A claim that a scholar holds has no argument, or only such as lean on what is bare.`,
  say`Read the passage again: is a reason given there that was not recorded? If so, record it; if not, the claim is a bare assertion, and the review should say so. An argument of your own may be put under it.`,
  ({ claim, lack }) => lack.through[0] ?? claim,
  (view, group) => {
    const bare = group[0].lack.through[0] ?? group[0].claim;
    const own = group.filter(({ claim }) => claim === bare);
    const leaning = group.filter(({ claim }) => claim !== bare);
    const name = quotedLabel(view.graph, bare);
    const held = holding(view, own.length === 0 ? leaning : own);
    if (own.length === 0)
      return leaning.length === 1
        ? say`${held}, which leans on ${name}, under which there is nothing.`
        : say`${held}, which lean on ${name}, under which there is nothing.`;
    if (leaning.length === 0) return say`${held} without an argument, expected at least one under it.`;
    const others = row(leaning.map(({ claim, who }) => say`${quotedLabel(view.graph, claim)} (${who})`));
    return leaning.length === 1
      ? say`${held} without an argument, expected at least one under it; ${others} leans on it.`
      : say`${held} without an argument, expected at least one under it; ${others} lean on it.`;
  },
);
