import type { Cell } from "../../../show/scholars/matrix.ts";
import { marks } from "../../words/reader/marks.ts";
import { heldWord, scholarWords, stanceWords } from "../../words/shown/scholars.ts";
import { inReadersWords } from "../../words/reader/said.ts";
import { yearIn } from "../../words/index.ts";

/** The word in a cell: the latest stance, or that the claim was held until a rival was. */
export function cellWord(cell: Cell): string {
  return cell.left === null ? stanceWords[cell.stance] : heldWord;
}

/** Since when, until when, and what was said before: `since 1951; before: holds 1937`. */
export function cellYears(cell: Cell): string {
  const parts: string[] = [];
  if (cell.since !== null) parts.push(scholarWords.since(yearIn(cell.since)));
  if (cell.left !== null) {
    parts.push(scholarWords.thenHeld(cell.left.year, inReadersWords(cell.left.text)));
  }
  if (cell.before.length > 0) {
    const before = cell.before.map(({ stance, year }) =>
      year === null ? stanceWords[stance] : `${stanceWords[stance]} ${yearIn(year)}`,
    );
    parts.push(`${scholarWords.before} ${before.join(marks.comma)}`);
  }
  return parts.join(marks.semicolon);
}
