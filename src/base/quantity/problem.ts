import type { Text } from "../text/said/said.ts";

/** What can be wrong with the text of a quantity; each code has its own cure. */
export type QuantityProblemCode =
  | "unreadable"
  | "decimal-comma"
  | "digit-groups"
  | "unknown-unit"
  | "missing-unit"
  | "wrong-kind"
  | "mixed-kinds"
  | "backwards"
  | "negative-end"
  | "negative-uncertainty";

/** Why a text is no quantity, with the place in it (UTF-16 units; `end` exclusive). */
export interface QuantityProblem {
  readonly code: QuantityProblemCode;
  readonly message: Text;
  readonly start: number;
  readonly end: number;
  /** The whole text mended. */
  readonly replacement?: string;
  /** The whole text mended in the other way it may have been meant; the message then names both. */
  readonly otherwise?: string;
}

/** Tells a problem from what was to be read. */
export function isProblem<Value>(read: Value | QuantityProblem): read is QuantityProblem {
  return typeof read === "object" && read !== null && "code" in read && "message" in read;
}
