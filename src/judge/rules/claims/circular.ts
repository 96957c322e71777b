import { row, say } from "../../../base/text/said/said.ts";
import { quotedLabel } from "../tell.ts";
import { holding, support } from "./support.ts";

export const circularSupport = support(
  "circular-support",
  say`Every argument for a claim that a scholar holds leans on the claim itself.`,
  say`Claims that hold one another up support nothing. Find evidence for one of them that does not come from the others.`,
  ({ claim, lack }) => [...new Set([claim, ...lack.through])].sort().join("\n"),
  (view, group) => {
    const [{ claim, lack }] = group;
    const held = holding(view, group);
    if (group.length > 1) return say`${held}, and every argument for these leads back to them.`;
    const others = lack.through.filter((one) => one !== claim).map((one) => quotedLabel(view.graph, one));
    return others.length > 0
      ? say`${held}, and every argument for it leans on itself, through ${row(others)}.`
      : say`${held}, and every argument for it leans on itself, directly.`;
  },
);
