import { say } from "../../../base/text/said/said.ts";
import { resting } from "./resting.ts";

export const singleSource = resting(
  "single-source",
  say`A claim that stands would not without one source.`,
  say`Everything that carries the claim was said in one place. Check that source first-hand, and look for another that saw the same independently.`,
  (view, origin) => view.graph.sources.has(origin),
  (claims, only, several) =>
    several
      ? say`${claims} stand on one source, ${only}, and would not without it.`
      : say`${claims} stands on one source, ${only}, and would not without it.`,
);
