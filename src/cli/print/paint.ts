import picocolors from "picocolors";
import type { Level } from "../../base/finding.ts";
import type { Standing } from "../../judge/judge.ts";

/** Colours for a terminal; none where nobody watches. */
export const paint = picocolors.createColors(
  process.stdout.isTTY === true && process.env["NO_COLOR"] === undefined,
);

/** The four standings as lines that survive without colour: solid, two dashed, stepping down, dotted. */
const lines: Readonly<Record<Standing, string>> = {
  stands: "━━━━",
  open: "╍╍╍╍",
  falls: "▔▔▁▁",
  unsupported: "····",
};

/** A standing as its line and its word. */
export function standingMark(standing: Standing): string {
  const mark = `${lines[standing]} ${standing}`;
  return standing === "stands" ? paint.blue(mark) : standing === "falls" ? paint.red(mark) : mark;
}

/** A level as a word. */
export function levelWord(level: Level): string {
  return level === "error" ? paint.red(paint.bold(level)) : level === "warning" ? paint.bold(level) : level;
}
