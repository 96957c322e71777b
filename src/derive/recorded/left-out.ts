import { say } from "../../base/text/said/said.ts";
import type { Said, Text } from "../../base/text/said/said.ts";

/** Why a selection leaves something out, one reason each. */
export const leftOutFor = {
  notCounting: say`not in print or lost`,
  anotherTaken: say`another reading was taken`,
  byName: say`left out by name`,
  bound: say`bound`,
  repeats: say`repeats another`,
  basis: say`another basis`,
  somebodyElse: say`by somebody else`,
  source: say`from another source`,
  state: say`another state`,
  reconstructed: say`reconstructed`,
  spread: say`spread of several things`,
  noCounterpart: say`no counterpart`,
  supposed: say`supposed, and no source's own`,
  contradicted: say`seen by one, looked for in vain by another`,
  toldAlready: say`another tells the same`,
  byPlugin: say`left out by the plug-in`,
} as const satisfies Readonly<Record<string, Said>>;

/** Whether this is why something was left out. */
export function isFor(why: Text, reason: keyof typeof leftOutFor): boolean {
  return typeof why !== "string" && why.say === leftOutFor[reason].say;
}
