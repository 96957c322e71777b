import { arabicPapers } from "../arabic/reading/papers.ts";
import { told } from "../reader/told.ts";

/** Words of the page on which a paper is read. */
export const paperWords = told(
  {
    room: "Readings",
    paper: "Paper",
    papers: "Papers of this source",
    beside: "Beside the paper",
    division: "Division between the paper and what stands beside it",
    hidePaper: "Hide the paper",
    showPaper: "Show the paper",
    opening: "Opening the paper …",
    pictures: (n: number) => (n === 1 ? "one picture" : `${n} pictures of pages`),

    page: "Page",
    pageOf: (page: string, place: number, count: number) =>
      page === ""
        ? `Page ${place} of ${count} of the file`
        : `Page ${page}, ${place} of ${count} of the file`,
    inFile: (place: number, count: number) => `${place} of ${count}`,
    toPage: "Go to page",
    noPage: "There is no such page.",
    larger: "Larger",
    smaller: "Smaller",
    fit: "Full width",
    size: "Size",

    search: "Search in this paper",
    next: "Next place",
    before: "Place before",
    hit: (place: number, count: number) => `${place} of ${count}`,
    hits: (count: number) => (count === 1 ? "one place" : `${count} places`),
    manyHits: (count: number) => `the first ${count} places`,
    noHits: "nowhere",
    soFar: (done: number, count: number) => `${done} of ${count} pages are read`,

    take: "Take these words",
    takeRegion: "Take this part of the page",
    takeHint: "Select words in the paper and press c.",
    scanHint: "This paper has no text. Press r, or drag over the page, and then press c.",
    readOnlyHint: "Nothing can be taken from it: this corpus can only be read.",
    select: "Select words by keys",
    selecting: "Arrow keys move over the words, with Shift they take more; c takes them, Escape leaves.",
    region: "Mark a part of the page",
    leaveRegion: "Leave the part of the page",
    regionAt: (x: number, y: number, w: number, h: number) =>
      `Part of the page: ${x} % from the left, ${y} % from the top, ${w} % wide, ${h} % high. Arrow keys move it, with Shift they change its size; c takes it, Escape leaves it.`,
    mark: (number: number, at: string) => `Passage ${number}, ${at}`,
    notFound: (at: string) => `The words of ${at} are no longer found in this file.`,

    none: "There is no paper of this source yet.",
    noneHere: (name: string) =>
      `It lies in the folder of the corpus as ${name}: put it there, or bring it in here.`,
    bring: "Bring in a paper",
    drop: "Drop a PDF or pictures of pages here, or",
    choose: "choose files",
    bringing: "Bringing it in …",
    brought: (file: string) => `Brought in as ${file}.`,
    notBrought: (name: string, why: string) => `${name} was not brought in. ${why}`,
    noPaper: "It is neither a PDF nor a picture (PNG, JPEG, WebP, GIF).",

    refused: {
      gone: "The file is no longer there.",
      locked:
        "This PDF is locked with a password. Save it without one, in whatever opened it before, and bring that in.",
      long: "This PDF has more than 10,000 pages: divide it among several files, and bring those in.",
      broken: "The file cannot be read: it is damaged, or not what its name says.",
    },
  },
  arabicPapers,
);
