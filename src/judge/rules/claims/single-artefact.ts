import { resting } from "./resting.ts";

export const singleArtefact = resting(
  "single-artefact",
  "artefact",
  (view, origin) => view.graph.records.get(origin)?.list === "artefacts",
  "If that thing were redated, lost or misread, the claim would go with it. Say so where you state the claim, and look for a second thing that shows the same.",
);
