import { yearText } from "../../../base/date/year.ts";
import type { Cell } from "../../../show/scholars/matrix.ts";
import { heldWord, scholarWords, stanceWords } from "../../words/scholars.ts";

/** The word in a cell: the latest stance, or that the claim was held until a rival was. */
export function cellWord(cell: Cell): string {
  return cell.left === null ? stanceWords[cell.stance] : heldWord;
}

/** Since when, until when, and what was said before: `since 1951; before: holds 1937`. */
export function cellYears(cell: Cell): string {
  const parts: string[] = [];
  if (cell.since !== null) parts.push(scholarWords.since(yearText(cell.since)));
  if (cell.left !== null) {
    const when = cell.left.year === null ? "" : `${scholarWords.until(yearText(cell.left.year))}, `;
    parts.push(`${when}then ${stanceWords.holds} “${cell.left.text}”`);
  }
  if (cell.before.length > 0) {
    const before = cell.before.map(({ stance, year }) =>
      year === null ? stanceWords[stance] : `${stanceWords[stance]} ${yearText(year)}`,
    );
    parts.push(`${scholarWords.before} ${before.join(", ")}`);
  }
  return parts.join("; ");
}
