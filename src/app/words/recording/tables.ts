import { counted } from "../../../base/text/counted.ts";
import { arabicTables } from "../arabic/recording/tables.ts";
import { told } from "../reader/told.ts";

const many = (n: number, one: string, more: string): string =>
  n === 1 ? `one ${one}` : `${counted(n)} ${more}`;
const upper = (text: string): string => text.replace(/^\p{L}/u, (letter) => letter.toUpperCase());

/** Words of a table that comes in: what its columns are, and what becomes of its rows. */
export const tableWords = told(
  {
    rowsAre: "The rows are",
    lists: { measurements: "measurements", artefacts: "artefacts" } as const,
    sign: "Figures are written with a",
    signs: { point: "point (18.2)", comma: "comma (18,2)" } as const,
    commas: (n: number) => `${upper(many(n, "figure has a comma", "figures have a comma"))}.`,
    all: "For every row that says nothing of it",
    columns: "Columns",
    columnsWhy:
      "A column that is kept as a field of your own begins with x-. Choose what a column is where it was taken for something else.",
    column: "Column",
    isA: "is",
    first: "first rows",
    meaningOf: (head: string) => `What the column ${head} is`,
    unitOf: (head: string) => `Unit of the figures of ${head} that have none`,
    unit: "in",
    unsure: "unsure",
    noHead: "(no head)",
    meanings: {
      fields: "Fields",
      dimensions: "Figures of a dimension",
      uncertainties: "What is ± of figures",
      registers: "Numbers of a register",
      own: "A field of your own",
      nothing: "left out",
      unit: "unit of the value",
      uncertainty: "± of the value",
      uncertaintyOf: (dimension: string) => `± of ${dimension}`,
      number: (register: string) => `number: ${register}`,
      ofBy: (register: string) => `artefact, by its number: ${register}`,
    },
    wide: "There is one column for each dimension: each figure becomes a measurement of its own.",
    counts: (added: number, merged: number, left: number, failed: number, without: number) =>
      [
        `${added} to be added`,
        ...(merged > 0 ? [`${merged} to be merged`] : []),
        ...(left > 0 ? [`${left} there already, left alone`] : []),
        ...(failed > 0 ? [`${failed} not brought in`] : []),
        ...(without > 0 ? [many(without, "cell without a figure", "cells without a figure")] : []),
      ].join(", "),
    failed: "Not brought in",
    failedWhy:
      "Choose another meaning for a column, or mend them in their file; the others can come in without them.",
    line: (n: number) => `line ${n}`,
    inColumn: (head: string) => `, column ${head}`,
    fresh: "To be added",
    twins: "There already",
    twinsWhy: "They are left alone unless you choose otherwise.",
    like: "like",
    why: { id: "the same id", number: "the same number", name: "the same name" } as const,
    hidden: (n: number) =>
      `${upper(many(n, "row is like something that the corpus withholds, and is left alone", "rows are like something that the corpus withholds, and are left alone"))}.`,
    waysOf: (name: string) => `What becomes of ${name}`,
    leave: "Leave what is there",
    merge: (missing: readonly string[]) =>
      missing.length === 0 ? "Merge, field by field" : `Merge: add ${missing.join(", ")}`,
    add: "Add as another artefact",
    nothingToMerge: "It says nothing that is not there.",
    keep: (field: string) => `${field}: keep what is there`,
    take: (field: string) => `${field}: take what comes in`,
    here: "there",
    theirs: "what comes in",
    missing: "added",
    more: (n: number) => `Show more (${n} not shown)`,
    as: "Keep them",
    ways: {
      records: "as records among the others",
      table: "as a table of the corpus, which corpus.yaml names",
    } as const,
    goes: (file: string, isNew: boolean, n: number) =>
      `${upper(many(n, "record goes", "records go"))} into ${file}${isNew ? ", a new file" : ""}.`,
    nothing: "There is nothing to add or merge.",
    save: (list: "measurements" | "artefacts", added: number, merged: number) =>
      [
        ...(added > 0
          ? [
              `Add ${list === "measurements" ? many(added, "measurement", "measurements") : many(added, "artefact", "artefacts")}`,
            ]
          : []),
        ...(merged > 0 ? [`${added > 0 ? "merge" : "Merge"} ${many(merged, "artefact", "artefacts")}`] : []),
      ].join(", "),
    saving: "Saving …",
    step: (file: string) => `Table brought in from ${file}`,
    done: (file: string, added: number, merged: number) =>
      `From ${file}: ${many(added, "record was added", "records were added")}${merged > 0 ? `, ${many(merged, "artefact was merged", "artefacts were merged")}` : ""}. It is one step, and can be undone.`,
  },
  arabicTables,
);
