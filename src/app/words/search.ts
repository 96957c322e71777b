import { arabicKeys, arabicSearch } from "./arabic/search.ts";
import { told } from "./reader/told.ts";

/** Words of the search, the command list and the keyboard map. */
export const searchWords = told(
  {
    search: "Search",
    field: "Search the corpus",
    reading: (done: number, of: number) =>
      `Still reading the corpus: ${done} of ${of} parts can be searched.`,
    waiting: "Reading the corpus …",
    all: (n: number) => (n === 1 ? "Found in one record." : `Found in ${n} records.`),
    slips: (n: number) => (n === 1 ? "In one more a letter differs." : `In ${n} more a letter differs.`),
    slipsAlone: (n: number) =>
      n === 1
        ? "Found in one record, where a letter differs."
        : `Found in ${n} records, where a letter differs.`,
    some: (n: number) =>
      n === 1
        ? "No record has all the words; one has some of them."
        : `No record has all the words; ${n} have some of them.`,
    none: "Nothing in the corpus has it.",
    cut: "Only the first twelve words were looked for.",
    unknown: (word: string) => `“${word}” stands nowhere in the corpus.`,
    nearest: "Most like it:",
    wholeCorpus: (year: string) =>
      `The whole corpus is searched, whatever the year; what was not in print in ${year} is marked.`,
    notYet: (year: string) => `not yet in print in ${year}`,
    allOfKind: (n: number, kind: string) => `All ${n} ${kind}`,
    allKinds: "All kinds",
    first: (n: number, of: number) => `The first ${n} of ${of}; one more word would narrow them.`,
    help: "Arrow keys move through what was found; Enter opens the sheet.",
    line: "line",
    canBeFound: "What can be found",
    teach: [
      [
        "Any word",
        "of any text, in any script; accents and capitals do not matter, nor the ending of an English word.",
      ],
      ["Names", "of people, things and sources, in all the spellings the corpus gives."],
      ["Quotations", "in their own language, and their translations."],
      ["Numbers of registers", "as printed or in part, with or without their points and strokes."],
      ["Figures", "as they were written, and the names of dimensions in any language."],
      ["Places in a source", "by its key and page."],
    ],
    together: "Several words narrow it: a record must have them all. One slip in a longer word is forgiven.",
    inThisCorpus: "In this corpus",
    allRecords: "All records",

    commands: "Commands",
    commandsTitle: "What can be done here",
    narrow: "Narrow by words",
    fitting: (n: number) =>
      n === 0
        ? "Nothing here is called that."
        : n === 1
          ? "One fits; Enter does it."
          : `${n} fit; Enter does the first.`,
    nextHeading: "Next heading of the page",
    headingBefore: "Heading before",
    keys: "Keys",
    keysTitle: "Keys",
    close: "Close",
    year: "Year",
    rooms: "Rooms",
    everywhere: "Everywhere",
    language: "Language of the interface",
    singleKeys: "Single keys work",
    singleKeysWhy:
      "Turn them off if dictation or a slip of the hand sets them off. The browser remembers it.",
    singleKeysOff: "Single keys are off. The buttons at the side and the command list still do everything.",
  },
  arabicSearch,
);

/** Keys that are not called as the browser calls them. */
export const keyWords: Readonly<Record<string, string>> = told(
  {
    ArrowUp: "↑",
    ArrowDown: "↓",
    ArrowLeft: "←",
    ArrowRight: "→",
    " ": "Space",
    "Arrow keys": "Arrow keys",
  } as Readonly<Record<string, string>>,
  arabicKeys,
);
