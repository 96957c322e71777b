import { arabicFloor } from "../arabic/arguing/floor.ts";
import { told } from "../reader/told.ts";

/** Words of questions that somebody asks from the floor, written down in a line and worked in later. */
export const floorWords = told(
  {
    title: "A question from the floor",
    key: "Note a question",
    line: "What was asked",
    about: (label: string) => `About: ${label}`,
    help: "Enter keeps it. It waits on the page of questions.",
    keep: "Keep",
    kept: "Kept, on the page of questions.",
    cannot: (why: string) => `Nothing can be kept here. ${why}`.trim(),
    list: "From the floor, not worked in yet",
    asQuestion: "as a question",
    asClaim: "as a claim",
    asArgument: "as an argument",
    asNote: "as a note on it",
    work: (way: string, text: string) => `Work in ${way}: ${text}`,
    workIn: "Work it in",
    drop: "Throw away",
    dropOne: (text: string) => `Throw away: ${text}`,
    noteGone: "What it is about is not there any more.",
  },
  arabicFloor,
);
