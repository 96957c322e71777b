import type { Marked } from "../../../../base/text/conflict-marks.ts";
import { words } from "../../../pages/pieces.ts";
import type { FieldRow } from "../../../pages/pieces.ts";
import type { Hidden } from "../hidden.ts";
import type { Merging } from "./records.ts";
import type { Answer, MergeClash } from "./told.ts";

/** The merge of a file stretch by stretch, as the marks part it; lines are shown as typed, unless some might be withheld. */
export function mergingByLines(
  { pieces }: Marked,
  text: string,
  hidden: Hidden,
): Merging & { readonly withheld: boolean } {
  const withheld = namesIn(text).some(hidden.names);
  const rows = (lines: string): readonly FieldRow[] =>
    lines === ""
      ? []
      : lines
          .replace(/\r?\n$/u, "")
          .split(/\r?\n/u)
          .map((line) => ({ label: null, pieces: [words(shown(line))] }));
  const shown = (line: string): string =>
    withheld
      ? line.replace(/\S/gu, "·")
      : line.replace(
          /^(.*\b(?:coordinates|found-at):)(.*)$/u,
          (_, head: string, tail: string) => `${head}${tail.replace(/\S/gu, "·")}`,
        );
  const isShown = (...versions: readonly string[]): boolean =>
    versions.every((lines) => lines.split(/\r?\n/u).every((line) => shown(line) === line));
  const differing = pieces.flatMap((one) => (one.is === "differs" ? [one] : []));
  const lineAt = (offset: number): number => text.slice(0, offset).split("\n").length;
  return {
    withheld,
    alone: [],
    clashes: differing.map(({ start, end, base, mine, theirs }): MergeClash => ({
      kind: "lines",
      text: `${lineAt(start)}–${lineAt(Math.max(start, end - 1))}`,
      field: null,
      base: base === null ? null : rows(base),
      mine: rows(mine),
      theirs: rows(theirs),
      choices: ["mine", "theirs", "both", ...(isShown(mine, theirs) ? (["own"] as const) : [])],
      typed: isShown(mine, theirs) ? mine : null,
      asTyped: true,
    })),
    written: (answers) => {
      let place = 0;
      const part = (one: (typeof pieces)[number]): string => {
        if (one.is === "same") return one.text;
        const answer: Answer = answers[place++] ?? "mine";
        if (typeof answer === "object") return ended(answer.own);
        return answer === "both" ? joined(one.mine, one.theirs) : one[answer];
      };
      return { text: pieces.map(part).join("") };
    },
  };
}

/** Lines with the end of the last one; nothing stays nothing. */
function ended(lines: string): string {
  return lines === "" || lines.endsWith("\n") ? lines : `${lines}\n`;
}

/** One stretch of lines behind another; the first may lack the end of its last line. */
function joined(first: string, second: string): string {
  return first === "" || first.endsWith("\n") ? `${first}${second}` : `${first}\n${second}`;
}

/** Every word of a text that could be the name of a record. */
function namesIn(text: string): readonly string[] {
  return [...new Set(text.match(/[a-z0-9][a-z0-9/-]*/gu))];
}
