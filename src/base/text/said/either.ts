import { say } from "./said.ts";
import type { Text } from "./said.ts";

/** Several of which one is meant, with `or` between each two: `a or b or c`. */
export function either([one = "", ...others]: readonly Text[]): Text {
  return others.reduce((before, other) => say`${before} or ${other}`, one);
}
