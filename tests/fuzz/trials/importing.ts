import { edited } from "../../../src/base/text/edit.ts";
import { build } from "../../../src/build.ts";
import type { Model } from "../../../src/build.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";
import { importChanges } from "../../../src/read/bibliography/incoming/changes.ts";
import { formatOf } from "../../../src/read/bibliography/incoming/formats.ts";
import { readBibliography } from "../../../src/read/bibliography/read.ts";
import type { SourceFile } from "../../../src/read/source-file.ts";
import { comingTable, isTable } from "../../../src/show/desk/import/table/coming.ts";
import { tableTold } from "../../../src/show/desk/import/table/told/told.ts";
import { corpusWith, planOf } from "../../laws/importing/import-cases.ts";
import type { Faults } from "./corpus.ts";

/** Longest text that is brought in: a larger one takes as much longer. */
const short = 200_000;

const corpus = corpusWith({
  "sources.bib": "@book{hale-1896,\n  title = {Of posts},\n  author = {Hale, Josiah},\n  year = {1896},\n}\n",
});
const things: ReadonlyMap<string, string> = new Map(
  Object.entries({
    "corpus.yaml": "title: Pits\ndimensions: { diameter: { kind: length }, depth: { kind: length } }\n",
    "records.yaml": "artefacts:\n  - { id: pit-1, name: The deep pit }\n  - { id: a, name: A }\n",
  }),
);
let known: Model | null = null;

function model(): Model {
  known ??= build(
    [...things].map(([path, text]) => ({ path, text })),
    [],
    emptyMemo(),
  ).model;
  if (!known) throw new Error("Missing model, expected a corpus that can be read");
  return known;
}

/** Brings a bibliography or a table into a small corpus: the edits can be made, and what comes of them can be read. */
export function importFaults(file: SourceFile, place: number): Faults {
  if (file.problem !== undefined || file.text.length > short) return [];
  const faults: string[] = [];
  if (isTable(file)) {
    tableTold(
      model().graph,
      comingTable(file),
      {
        list: place % 3 === 0 ? null : place % 3 === 1 ? "artefacts" : "measurements",
        meanings: new Map(),
        decimal: place % 2 === 0 ? "point" : "comma",
        all: {},
        as: place % 5 === 0 ? "table" : "records",
        choices: new Map(),
        duplicates: "leave",
      },
      things,
    );
    return faults;
  }
  if (formatOf(file.path, file.text) === null) return faults;
  const told = { duplicates: place % 2 === 0 ? "leave" : "merge" } as const;
  const made = importChanges(planOf(corpus, { [file.path]: file.text }, told));
  if ("problem" in made) return faults;
  for (const { file: path, edits } of made.changes) {
    const text = edited(corpus[path] ?? "", edits);
    if (/\.(?:bib|ris|json)$/u.test(path)) readBibliography({ path, text });
  }
  return faults;
}
