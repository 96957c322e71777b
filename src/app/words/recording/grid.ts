import { counted } from "../../../base/text/counted.ts";
import { arabicGrid } from "../arabic/recording/grid.ts";
import { told } from "../reader/told.ts";

const many = (n: number, one: string, more: string): string =>
  n === 1 ? `one ${one}` : `${counted(n)} ${more}`;
const upper = (text: string): string => text.replace(/^\p{L}/u, (letter) => letter.toUpperCase());

/** Words of the grid in which measurements are recorded. */
export const gridWords = told(
  {
    title: "Record measurements",
    titleOf: (thing: string) => `Record measurements of ${thing}`,
    titleFrom: (source: string) => `Record measurements from ${source}`,
    lead: "One measurement in a row, as it is printed or read. Nothing is written before you save.",
    readOnly: (why: string) => `Nothing can be saved in this corpus: ${why}`,
    restored: "This is your draft from before.",
    begun: "Grids that were begun and not saved:",
    begunRows: (n: number) => upper(many(n, "row", "rows")),
    grid: "Measurements",
    columns: "Columns",
    ownColumns: (names: string) => `Fields of your own: ${names}.`,
    every: "every row",
    everyLong: "What holds for every row that leaves its own cell empty",
    everyValue: "cm, or cm ± 0.1",
    row: (n: number) => `Row ${n}`,
    rowIn: (n: number) => `row ${n}`,
    recorded: "recorded",
    readAs: "read as",
    beside: "beside the others",
    thing: "artefact",
    place: "place in it",
    edit: (column: string, row: string) => `${column}, ${row}`,
    showRecorded: (n: number) => `Show what is recorded of ${many(n, "thing", "things")} named here`,
    recordedTooMany: "Of more than five things only what is recorded of the present row's is shown.",
    nothingRecorded: "Nothing is recorded of it yet.",
    isNew: "new",
    cannot: "cannot be read",
    differs: "differs",
    agrees: (n: number) => (n === 1 ? "agrees with 1" : `agrees with ${n}`),
    twin: "there already",
    alone: "the first",
    hint: "Arrow keys and Tab move, typing writes over a cell, F2 changes it, Enter goes on below. F8 takes what is offered. Escape, then Tab, leaves the grid.",
    hintPaste:
      "Cells copied from a spreadsheet, a web page or a text can be pasted, with or without a line of headings.",

    understood: "understood as",
    written: "Written as",
    inSI: "in SI",
    write: (text: string) => `Write ${text}`,
    make: (name: string) => `Make a new artefact called ${name}`,
    makeNot: (name: string) => `Do not make an artefact called ${name}`,
    willMake: (name: string) => `A new artefact called ${name} will be made.`,
    against: (who: string, figure: string, by: string, allowed: string) =>
      `Differs from ${figure} (${who}) by ${by}; both uncertainties and honest repetition allow ${allowed}.`,
    againstRow: (row: string, figure: string, by: string, allowed: string) =>
      `Differs from ${figure} in ${row} by ${by}; both uncertainties and honest repetition allow ${allowed}.`,
    bothStay: "Both can be saved; they stay evidence until an argument chooses.",
    agreesWith: (n: number) =>
      n === 1 ? "Agrees with one other reading." : `Agrees with ${counted(n)} other readings.`,
    twinOf: (who: string) => `The same figure from the same source is recorded already (${who}).`,
    twinRow: (row: string) => `The same figure from the same source stands in ${row}.`,
    enters: "It would enter",
    leaves: "It would be left out of",
    leftOut: (name: string, why: string) => `${name} (${why})`,
    entersNone: "No derivation would take it in.",
    nothingHere: "Nothing stands in this row yet.",

    takenOut: "Take out the rows",
    putIn: "Put in a row",
    fillDown: "Fill down",
    clear: "Clear the cells",
    takeOffer: "Take what is offered",
    undo: "Take back in the grid",
    redo: "Do again in the grid",
    changeCell: "Change the cell",
    move: "Go on and back",
    saveKey: "Save the good rows",

    counts: (good: number, bad: number) =>
      [
        ...(good > 0 || bad === 0 ? [`${upper(many(good, "row", "rows"))} can be saved`] : []),
        ...(bad > 0
          ? [
              `${good > 0 ? many(bad, "row has", "rows have") : upper(many(bad, "row has", "rows have"))} to be mended first`,
            ]
          : []),
      ].join(", "),
    none: "There is no row yet",
    save: (n: number) => (n === 0 ? "Save" : `Save ${many(n, "measurement", "measurements")}`),
    saving: "Saving …",
    saved: (n: number, left: number) =>
      `${upper(many(n, "measurement was", "measurements were"))} saved. It is one step, and can be undone.${
        left === 0 ? "" : ` ${upper(many(left, "row stays", "rows stay"))} here to be mended.`
      }`,
    firstBad: "To the first row to be mended",
    drop: "Throw the grid away",
    dropped: "The grid was emptied.",
    changedUnder: "The corpus was changed meanwhile; look at the rows again and save once more.",

    landing: "Before it is put in",
    landingRows: (rows: number, columns: number) =>
      `${many(rows, "line", "lines")} of ${many(columns, "cell", "cells")}`,
    headLine: "The first line is the headings",
    becomes: (head: string) => `What ${head} becomes`,
    becomesNth: (n: number) => `What column ${n} becomes`,
    becomesHead: "Heading",
    becomesIs: "Becomes",
    becomesUnit: "Unit of bare figures",
    becomesFirst: "As it stands there",
    unitOf: (head: string) => `Unit of bare figures in ${head}`,
    leaveOut: "left out",
    lookAt: "look at this",
    fieldIs: (field: string) => field,
    dimensionIs: (dimension: string) => `figures of ${dimension}`,
    newDimension: (dimension: string) => `figures of ${dimension}, a new dimension`,
    uncertaintyIs: (dimension: string | null) =>
      dimension === null ? "± of the value" : `± of the figures of ${dimension}`,
    unitIs: "unit of the value",
    numberIs: (register: string) => `${register} number`,
    commaAsked: "Say first what the comma is.",
    commas: "These figures have a comma:",
    commaDecimal: "The comma is the decimal sign",
    commaStays: "Leave them as they are, to be looked at one by one",
    asRead: (written: string, read: string) => `${written} as ${read}`,
    put: "Put it in",
    leave: "Leave it",
    landed: (rows: number) => `${upper(many(rows, "row was", "rows were"))} put in.`,
    noClip: "There is nothing to put in.",
  },
  arabicGrid,
);
