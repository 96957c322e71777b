import { say } from "../../../../base/text/said/said.ts";
import type { Text } from "../../../../base/text/said/said.ts";
import type { MeasurementRecord, ObservationRecord } from "../../../../link/graph.ts";
import { choiceName } from "../../../../read/grammar/field-words.ts";

/** What was seen or measured. */
export type Evidence = ObservationRecord | MeasurementRecord;

/** The state of a measurement; a spread, a mean of several and a copy are no single reading. */
export function stateOf({ values }: MeasurementRecord): Text | null {
  if (values.repeats !== undefined) return say`copied`;
  if (values.spread === true) return say`range of several`;
  return values.state === undefined || values.state === "complete" ? null : choiceName(values.state);
}
