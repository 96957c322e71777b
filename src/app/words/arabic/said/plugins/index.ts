import type { ArabicCatalogue } from "../../../../../base/text/said/arabic.ts";
import { chronologySaid } from "./chronology.ts";
import { clearanceSaid } from "./clearance.ts";
import { countsSaid } from "./counts.ts";
import { refusalsSaid } from "./refusals.ts";
import { scalingSaid } from "./scaling.ts";
import { silenceSaid } from "./silence.ts";
import { spacingSaid } from "./spacing.ts";
import { unitFitSaid } from "./unit-fit.ts";

/** Every sentence of the methods. */
export const pluginsSaid: ArabicCatalogue = {
  ...chronologySaid,
  ...clearanceSaid,
  ...countsSaid,
  ...refusalsSaid,
  ...scalingSaid,
  ...silenceSaid,
  ...spacingSaid,
  ...unitFitSaid,
};
