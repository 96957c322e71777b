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

/** What `paint` puts round a text: bold, dim, underlined and colours (ECMA-48, SGR). */
const painted = /(\p{Cc}\[(?:[124]|2[24]|3\d)m)/u;

/** A text as a terminal may have it: nothing in it steers the terminal but what `paint` put there; a sign that would is written out. */
export function unsteered(text: string): string {
  const parts = text
    .split(painted)
    .map((part, at) =>
      at % 2 === 1 && part.startsWith("\u001b")
        ? part
        : part.replace(/[^\P{Cc}\n\t]/gu, (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, "0")}`),
    );
  return parts.join("");
}
