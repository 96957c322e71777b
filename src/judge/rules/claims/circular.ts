import { labelOf } from "../../../link/label.ts";
import { inWords } from "../tell.ts";
import { support } from "./support.ts";

export const circularSupport = support(
  "circular-support",
  "Every argument for a claim that a scholar holds leans on the claim itself.",
  "Claims that hold one another up support nothing. Find evidence for one of them that does not come from the others.",
  ({ graph }, claim, who, { through }) => {
    const others = through.filter((one) => one !== claim).map((one) => `“${labelOf(graph, one)}”`);
    const way = others.length > 0 ? `through ${inWords(others)}` : "directly";
    return `${who} holds “${labelOf(graph, claim)}”, and every argument for it leans on itself, ${way}.`;
  },
);
