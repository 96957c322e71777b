import { say } from "../../../base/text/said/said.ts";
import { holding, support } from "./support.ts";

export const silenceOnly = support(
  "silence-only",
  say`For a claim that a scholar holds, only things passed over in silence are reached.`,
  say`Silence is weighed, not counted. Ask how often that author reports such traces where others saw them, and let a derivation of silence bear on the claim; or find somebody who looked.`,
  ({ claim }) => claim,
  (view, group) =>
    say`${holding(view, group)} on silence alone, expected something seen or a weight for the silence.`,
);
