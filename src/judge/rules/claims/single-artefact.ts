import { say } from "../../../base/text/said/said.ts";
import { resting } from "./resting.ts";

export const singleArtefact = resting(
  "single-artefact",
  say`A claim that stands would not without one artefact.`,
  say`If that thing were redated, lost or misread, the claim would go with it. Say so where you state the claim, and look for a second thing that shows the same.`,
  (view, origin) => view.graph.records.get(origin)?.list === "artefacts",
  (claims, only, several) =>
    several
      ? say`${claims} stand on one artefact, ${only}, and would not without it.`
      : say`${claims} stands on one artefact, ${only}, and would not without it.`,
);
