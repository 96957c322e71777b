import { resting } from "./resting.ts";

export const singleSource = resting(
  "single-source",
  "source",
  (view, origin) => view.graph.sources.has(origin),
  "Everything that carries the claim was said in one place. Check that source first-hand, and look for another that saw the same independently.",
);
