import { labelOf } from "../../../link/label.ts";
import { support } from "./support.ts";

export const unsupportedClaim = support(
  "unsupported-claim",
  "A claim that a scholar holds has no argument, or only such as lean on what is bare.",
  "Read the passage again: is a reason given there that was not recorded? If so, record it; if not, the claim is a bare assertion, and the review should say so. An argument of your own may be put under it.",
  ({ graph }, claim, who, { through }) => {
    const bare = through[0];
    return bare === undefined || bare === claim
      ? `${who} holds “${labelOf(graph, claim)}” without an argument, expected at least one under it.`
      : `${who} holds “${labelOf(graph, claim)}”, which leans on “${labelOf(graph, bare)}”, under which there is nothing.`;
  },
);
