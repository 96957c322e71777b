import { arabicMap } from "../arabic/shown/map.ts";
import { told } from "../reader/told.ts";
import type { Standing } from "../../../judge/judge.ts";
import type { Look } from "../../../show/map/scene.ts";
import { taughtArgument, taughtLines } from "./taught-lines.ts";

/** What each kind of box is called when it is read aloud. */
const kinds: Readonly<Record<Look["as"], string>> = {
  answer: "Answer",
  claim: "Claim",
  beam: "Argument",
  pile: "Seen or measured",
  number: "Computed number",
  thing: "Thing",
  fold: "Folded",
  mark: "The line goes on at",
};

const notYet = "Not yet in print.";

const counted = (n: number, one: string, many: string): string => `${n} ${n === 1 ? one : many}`;

/** All words of the map. */
export const mapWords = told(
  {
    title: "Map",
    kinds,
    question: "Question",
    everyQuestion: "All questions",
    name: (question: string | null) =>
      question === null ? "The dispute as a section through the ground" : `Section through: ${question}`,
    help: "Arrow keys go up to what a box supports, down to what it rests on and along its row; [ and ] go to the attacks on it and from it. Enter opens the sheet, Space folds and unfolds, f puts it in focus, o shows it alone, plus, minus and 0 change the distance. Of the box that is taken, p argues from it, t for it, x against it, n for another answer.",
    nearer: "nearer",
    farther: "farther",
    whole: "whole",
    toLeft: "Move the view to the left",
    toRight: "Move the view to the right",
    toTop: "Move the view up",
    toGround: "Move the view down",
    view: "View of the map",
    foldAgain: "fold all",
    inFocus: (title: string) => `In focus: ${title}.`,
    alone: (title: string) => `Shown alone: ${title}.`,
    only: "only this",
    withRest: "with the rest",
    everything: "leave the focus",
    save: "Save as SVG",
    outline: "As an outline",
    fileName: "map.svg",
    saved: (title: string) => `${title}: map`,
    sheet: "record sheet",
    focus: "focus",
    unfold: "unfold",
    fold: "fold",
    close: "close",
    notYet,
    boxes: "Boxes of the map, from the answers down",
    said: (one: {
      readonly kind: string;
      readonly text: string;
      readonly standing: Standing | null;
      readonly later: boolean;
      readonly below: number;
      readonly above: number;
      readonly attacks: number;
      readonly folded: string | null;
    }) =>
      [
        `${one.kind}: ${one.text.replace(/[.…]$/, "")}.`,
        one.later ? notYet : one.standing === null ? "" : `It ${verbs[one.standing]}.`,
        one.below > 0 ? `Under it: ${one.below}.` : "",
        one.above > 0 ? `Above it: ${one.above}.` : "",
        one.attacks > 0 ? `${counted(one.attacks, "attack", "attacks")} on it.` : "",
        one.folded === null ? "" : `Folded up: ${one.folded}.`,
      ]
        .filter((part) => part !== "")
        .join(" "),
    into: "To the map itself",
    keys: [
      ["Along the lines and the row", "Arrow keys"],
      ["First of the row", "Home"],
      ["Last of the row", "End"],
      ["To the attacks on it", "["],
      ["To what it attacks", "]"],
      ["Open the sheet", "Enter"],
      ["Fold and unfold", " "],
      ["Put in focus", "f"],
      ["Show alone", "o"],
      ["Nearer", "+"],
      ["Farther", "-"],
      ["The whole map", "0"],
      ["Leave the box", "Escape"],
    ],
    nothing: {
      up: "Nothing rests on it here.",
      down: "Nothing is under it here.",
      left: "It is the first of its row.",
      right: "It is the last of its row.",
      first: "It is the first of its row.",
      last: "It is the last of its row.",
      "attack on": "Nothing attacks it here.",
      "attack from": "It attacks nothing here.",
    },
    changedIn: (year: string) => `What changed in ${year}`,
    changedNothing: (year: string) => `No standing on this map changed in ${year}.`,
    replay: "replay",
    stop: "stop",
    nextYear: "next year",
    replaying: "Year by year",
    narrow:
      "A section through the ground needs room to the sides. On a narrow screen it shows one record with what it rests on, what rests on it and what attacks either.",
    narrowAnswers: "Show one answer in section",
    noQuestion: {
      text: "The map shows what the answers to a question rest on, down to the things in the ground. The corpus asks no question yet.",
      files: "In a file it is written so:",
      lines: taughtLines.questions,
    },
    noArgument: {
      text: "Nothing is put under these answers yet, so they hang in the air. Take one with the arrow keys: t argues for it, x against it, n for another answer.",
      files: "In a file, an argument says what it leans on and what follows from it:",
      lines: taughtArgument,
    },
  },
  arabicMap,
);

const verbs: Readonly<Record<Standing, string>> = {
  stands: "stands",
  open: "is open",
  falls: "falls",
  unsupported: "is unsupported",
};
