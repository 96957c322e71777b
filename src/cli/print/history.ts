import { yearText } from "../../base/date/year.ts";
import { inEnglish } from "../../base/text/said/english.ts";
import type { History, HistoryStep } from "../../show/judged/history/history.ts";
import { broughtInWords, changesInWords, wasInWords } from "../../show/judged/history/sentence.ts";
import { paint, standingMark } from "./paint.ts";

/** The dispute publication by publication: what came into print each year, and what that changed. */
export function historyText(history: History): readonly string[] {
  if (history.length === 0) return ["Nothing in this corpus is dated."];
  return history.flatMap((step) => [...stepText(step), ""]);
}

function stepText({ year, publications, changes }: HistoryStep): readonly string[] {
  const when = year === null ? "Without a year" : yearText(year);
  return [
    paint.bold(`${when}: ${inEnglish(changesInWords(changes))}`),
    ...publications.map(
      ({ text, brought }) =>
        `  ${text === null ? "In no publication" : inEnglish(text)}: ${inEnglish(broughtInWords(brought))}`,
    ),
    ...changes.map(
      ({ text, was, is }) => `  ${standingMark(is)}  ${inEnglish(text)} (${inEnglish(wasInWords(was))})`,
    ),
  ];
}
