import type { ArabicCatalogue } from "../../../../../base/text/said/arabic.ts";
import { arguingSaid } from "./arguing.ts";
import { historySaid } from "./history.ts";
import { mapSaid } from "./map.ts";
import { planSaid } from "./plan.ts";
import { restingSaid } from "./resting.ts";
import { standpointsSaid } from "./standpoints.ts";

/** What follows from the record: standpoints, losses, the history, and what to look at next. */
export const judgedSaid: ArabicCatalogue = {
  ...historySaid,
  ...restingSaid,
  ...standpointsSaid,
  ...planSaid,
  ...mapSaid,
  ...arguingSaid,
};
