import { labelOf } from "../../../link/names/label.ts";
import { inWords } from "../tell.ts";
import { holding, support } from "./support.ts";

export const circularSupport = support(
  "circular-support",
  "Every argument for a claim that a scholar holds leans on the claim itself.",
  "Claims that hold one another up support nothing. Find evidence for one of them that does not come from the others.",
  ({ claim, lack }) => [...new Set([claim, ...lack.through])].sort().join("\n"),
  (view, group) => {
    const [{ claim, lack }] = group;
    const others = lack.through.filter((one) => one !== claim).map((one) => `“${labelOf(view.graph, one)}”`);
    const way = others.length > 0 ? `through ${inWords(others)}` : "directly";
    return group.length === 1
      ? `${holding(view, group)}, and every argument for it leans on itself, ${way}.`
      : `${holding(view, group)}, and every argument for these leads back to them.`;
  },
);
