import type { Contents } from "../../../show/pages/contents.ts";
import type { Address } from "../../address.ts";
import { artefactWords } from "../../words/shown/artefacts.ts";
import { imageWords } from "../../words/recording/images.ts";
import { examinationWords } from "../../words/judged/examinations.ts";
import { historyWords } from "../../words/judged/history.ts";
import { words, yearIn } from "../../words/index.ts";
import { mapWords } from "../../words/shown/map.ts";
import { numberWords } from "../../words/shown/numbers.ts";
import { scholarWords } from "../../words/shown/scholars.ts";
import { searchWords } from "../../words/search.ts";
import { formWords } from "../../words/desk/forms.ts";
import { changesWords } from "../../words/desk/changes.ts";
import { entryWords } from "../../words/desk/entry.ts";
import { importWords } from "../../words/desk/import.ts";
import { gridWords } from "../../words/recording/grid.ts";
import { mergeWords } from "../../words/desk/merge.ts";
import { paperWords } from "../../words/reading/papers.ts";
import { workbenchWords } from "../../words/desk/workbench.ts";
import { literatureWords } from "../../words/reading/literature.ts";
import { tellingWords } from "../../words/telling/telling.ts";
import { talkWords } from "../../words/telling/talk.ts";
import { visitWords } from "../../words/recording/visit.ts";
import { standpointWords } from "../../words/judged/standpoints.ts";
import { inReadersWords } from "../../words/reader/said.ts";
import type { PageData } from "../../worker/pages.ts";

/** What a page is called when one arrives at it: what is looked at, and the room it is looked at in. */
export function nameOf(page: PageData): string {
  return named(page).join(" · ");
}

/** The window's title: what is looked at, as of which year, then the corpus. */
export function titleOf(page: PageData, { title }: Contents, { query, asOf }: Address): string {
  const sought = page.page === "search" ? (query.get("q")?.trim() ?? "") : "";
  return [
    ...(sought === "" ? [] : [sought]),
    ...named(page),
    ...(asOf === null ? [] : [`${words.asKnownIn} ${yearIn(asOf)}`]),
    title,
  ].join(" · ");
}

function named(page: PageData): readonly string[] {
  switch (page.page) {
    case "question":
      return [page.data?.text ?? words.notThere];
    case "sheet":
      return page.data ? [inReadersWords(page.data.title), words.recordSheet] : [words.notThere];
    case "artefact":
      return page.data ? [inReadersWords(page.data.name), artefactWords.artefacts] : [words.notThere];
    case "image":
      return page.data ? [inReadersWords(page.data.name), imageWords.pictures] : [words.notThere];
    case "number":
      return page.data ? [inReadersWords(page.data.title), numberWords.numbers] : [words.notThere];
    case "merge":
      return page.data ? [mergeWords.title, page.data.file] : [words.notThere];
    case "workbench":
      return [
        workbenchWords.titleOf(page.data.title === null ? null : inReadersWords(page.data.title)),
        numberWords.numbers,
      ];
    case "form":
      return page.data
        ? [
            page.data.title === null
              ? formWords.new(page.data.singular)
              : formWords.changing(inReadersWords(page.data.title)),
          ]
        : [words.notThere];
    case "entry":
      return page.data ? [entryWords.title(page.data.label)] : [words.notThere];
    case "paper":
      return page.data ? [page.data.label, paperWords.room] : [words.notThere];
    case "visit":
      return [
        page.data.sheet === null ? visitWords.title : inReadersWords(page.data.sheet.title),
        visitWords.title,
      ];
    case "scholar":
      return page.data ? [page.data.name, scholarWords.scholars] : [words.notThere];
    case "map": {
      const { questions, view } = page.data;
      const question = questions.find((one) => one.id === view.question);
      return question ? [question.text, mapWords.title] : [mapWords.title];
    }
    case "talk":
      return [page.data.slides?.title ?? talkWords.notThere, talkWords.title];
    case "contents":
      return [words.questions];
    default:
      return [rooms[page.page]];
  }
}

const rooms = {
  talks: talkWords.title,
  grid: gridWords.title,
  import: importWords.title,
  literature: literatureWords.title,
  outline: words.outline,
  artefacts: artefactWords.artefacts,
  numbers: numberWords.numbers,
  scholars: scholarWords.scholars,
  history: historyWords.history,
  standpoints: standpointWords.standpoints,
  examinations: examinationWords.examinations,
  telling: tellingWords.title,
  findings: words.findings,
  changes: changesWords.changes,
  search: searchWords.search,
  records: words.records,
} as const;
