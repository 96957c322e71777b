import { yearsOf } from "../../map/changes.ts";
import type { Reported } from "../../report/report.ts";
import type { History } from "./history.ts";
import type { YearsDone } from "./years.ts";

/** A history as far as it is worked out: with the numbers it still waits for, or with how far the years have been gone through. */
export interface HistoryTold {
  readonly steps: History;
  /** How many numbers of earlier years are still to be computed. */
  readonly pending: number;
  /** Null where all years are told. */
  readonly progress: YearsDone | null;
  /** All years are told as they were before some numbers came, and are gone through again. */
  readonly again: boolean;
}

/** The dispute publication by publication, as far as it is worked out. */
export interface HistoryPage extends HistoryTold {
  /** Years in which sources came into print, whatever the year that is looked back from. */
  readonly years: readonly number[];
}

/** The page of a history under the model's lens. */
export function historyPage(model: Reported, told: HistoryTold): HistoryPage {
  return { years: yearsOf(model), ...told };
}
