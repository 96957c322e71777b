import { yearText } from "../../../base/date/year.ts";
import type { Contents } from "../../../show/pages/contents.ts";
import type { Address } from "../../address.ts";
import { artefactWords } from "../../words/artefacts.ts";
import { examinationWords } from "../../words/judged/examinations.ts";
import { historyWords } from "../../words/history.ts";
import { words } from "../../words/index.ts";
import { mapWords } from "../../words/map.ts";
import { numberWords } from "../../words/numbers.ts";
import { scholarWords } from "../../words/scholars.ts";
import { searchWords } from "../../words/search.ts";
import { standpointWords } from "../../words/standpoints.ts";
import type { PageData } from "../../worker/pages.ts";

/** What a page is called when one arrives at it: what is looked at, and the room it is looked at in. */
export function nameOf(page: PageData, path: string): string {
  return named(page, path).join(" · ");
}

/** The window's title: what is looked at, as of which year, then the corpus. */
export function titleOf(page: PageData, { title }: Contents, { path, query, asOf }: Address): string {
  const sought = page.page === "search" ? (query.get("q")?.trim() ?? "") : "";
  return [
    ...(sought === "" ? [] : [sought]),
    ...named(page, path),
    ...(asOf === null ? [] : [`${words.asKnownIn} ${yearText(asOf)}`]),
    title,
  ].join(" · ");
}

function named(page: PageData, path: string): readonly string[] {
  switch (page.page) {
    case "question":
      return [page.data?.text ?? words.notThere];
    case "sheet":
      return page.data ? [page.data.title, words.recordSheet] : [words.notThere];
    case "artefact":
      return page.data ? [page.data.name, artefactWords.artefacts] : [words.notThere];
    case "number":
      return page.data ? [page.data.title, numberWords.numbers] : [words.notThere];
    case "scholar":
      return page.data ? [page.data.name, scholarWords.scholars] : [words.notThere];
    case "map": {
      const { questions, view } = page.data;
      const question = questions.find((one) => one.id === view.question);
      return question ? [question.text, mapWords.title] : [mapWords.title];
    }
    case "contents":
      return [path.startsWith("/records") ? words.records : words.questions];
    default:
      return [rooms[page.page]];
  }
}

const rooms = {
  outline: words.outline,
  artefacts: artefactWords.artefacts,
  numbers: numberWords.numbers,
  scholars: scholarWords.scholars,
  history: historyWords.history,
  standpoints: standpointWords.standpoints,
  examinations: examinationWords.examinations,
  findings: words.findings,
  search: searchWords.search,
} as const;
