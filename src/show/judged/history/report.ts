import { objectOf } from "../../../base/json.ts";
import type { Report } from "../../report/schema.ts";
import type { History } from "./history.ts";

/** The history as the machine-readable result has it. */
export function historyReport(history: History): NonNullable<Report["history"]> {
  return history.map(({ year, publications, changes }) => ({
    year,
    publications: publications.map(({ source, brought }) => ({
      source,
      brought: objectOf(brought.map(({ list, count }) => [list, count] as const)),
    })),
    changes: objectOf(
      changes.map(({ claim, was, is }): readonly [string, [typeof was, typeof is]] => [claim, [was, is]]),
    ),
  }));
}
