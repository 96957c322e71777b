import { say } from "../../../../base/text/said/said.ts";
import type { Said } from "../../../../base/text/said/said.ts";
import type { SupposedFeature } from "../../../../link/suppose/examination.ts";

type Present = SupposedFeature["present"];

const sights: Readonly<Record<Present, Said>> = {
  true: say`seen`,
  false: say`looked for and not there`,
  unclear: say`looked for, cannot be told`,
  "not-reported": say`not reported`,
};

/** Whether a feature was seen, in words. */
export const sightOf = (present: Present): Said => sights[present];
