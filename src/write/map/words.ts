import { say } from "../../base/text/said/said.ts";
import type { Said } from "../../base/text/said/said.ts";
import type { Standing } from "../../judge/judge.ts";
import type { BandName, BoxState } from "../../show/map/scene.ts";

/** Names of the bands, as they stand at the inner edge. */
export const bandWords: Readonly<Record<BandName, Said>> = {
  things: say`things`,
  seen: say`seen and measured`,
  computed: say`computed`,
  claims: say`claims`,
  answers: say`answers`,
};

/** Over a bow that joins rivals. */
export const rivalWords: Said = say`not both`;

const became: Readonly<Record<Standing, Said>> = {
  stands: say`now stands`,
  open: say`now open`,
  falls: say`now falls`,
  unsupported: say`now unsupported`,
};

const before: Readonly<Record<NonNullable<BoxState["was"]>, Said>> = {
  stands: say`was stands`,
  open: say`was open`,
  falls: say`was falls`,
  unsupported: say`was unsupported`,
  "not there": say`not there before`,
};

/** What changed since the step before: `now open, was stands`. */
export function changeWords(now: Standing | null, was: NonNullable<BoxState["was"]>): Said {
  return now === null ? before[was] : say`${became[now]}, ${before[was]}`;
}
