import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import type { SourceFile } from "../../../src/read/source-file.ts";
import { smallPdf } from "../../browser/small-pdf.ts";
import { corpusOf } from "../../make-corpus/corpus.ts";
import type { Format } from "./input.ts";
import { packedPaper } from "./packed-paper.ts";

/** A small corpus whose files are changed one at a time, the others standing beside it. */
export type Corpus = readonly SourceFile[];

/** What inputs begin as. */
export interface Seeds {
  /** Whole small corpora. */
  readonly corpora: readonly Corpus[];
  /** Texts of each format as they stand alone, most of them too long to be taken whole; a paper has one byte to a letter. */
  readonly texts: Readonly<Record<Format, readonly string[]>>;
}

const readable = /\.(?:ya?ml|bib|ris|json|csv|csl|md)$/u;

/** The seeds in the project's own folder. */
export function seedsIn(root: string): Seeds {
  const below = (folder: string): Corpus => filesBelow(join(root, folder));
  const demo = below("demo-corpus");
  const rules = readdirSync(join(root, "tests/corpora/rules")).flatMap((rule) =>
    ["fires", "near-twin"].map((twin) => below(`tests/corpora/rules/${rule}/${twin}`)),
  );
  const fixes = readdirSync(join(root, "tests/corpora/fixes")).map((name) =>
    below(`tests/corpora/fixes/${name}/before`),
  );
  const others = ["lost", "planted", "walk", "erechtheion"].map((name) => below(`tests/corpora/${name}`));
  const corpora = [...rules, ...fixes, ...others].filter((files) =>
    files.some(({ path }) => path === "corpus.yaml"),
  );
  const byHand = below("tests/corpora/hand-written");
  const made = corpusOf({ records: 60, seed: 3 });
  const all = [...demo, ...corpora.flat(), ...byHand, ...made];
  const textsOf = (wanted: (path: string) => boolean): readonly string[] =>
    all.filter(({ path, text }) => wanted(path) && text !== "").map(({ text }) => text);
  return {
    corpora: [...corpora, made],
    texts: {
      settings: textsOf((path) => path === "corpus.yaml"),
      records: textsOf((path) => /\.ya?ml$/u.test(path) && path !== "corpus.yaml"),
      bibtex: [
        ...textsOf((path) => path.endsWith(".bib")),
        ...filesBelow(join(root, "tests/published")).flatMap(({ path, text }) =>
          path.endsWith(".bib") ? [text] : [],
        ),
      ],
      ris: [...textsOf((path) => path.endsWith(".ris")), ris],
      "csl-json": [...textsOf((path) => path.endsWith(".json")), json],
      table: textsOf((path) => path.endsWith(".csv")),
      style: filesBelow(join(root, "src/write/references/styles"))
        .map(({ text }) => text)
        .filter((text) => text.length < 20_000),
      paper: papers.map((bytes) => Buffer.from(bytes).toString("latin1")),
      prose: textsOf((path) => path.endsWith(".md")),
    },
  };
}

/** The files of a folder that can be read as something, by their paths in it and in the order of those. */
export function filesBelow(folder: string): Corpus {
  return readdirSync(folder, { recursive: true, encoding: "utf8" })
    .map((path) => path.replaceAll("\\", "/"))
    .filter((path) => readable.test(path) && !path.includes("node_modules"))
    .sort()
    .map((path) => ({ path, text: readFileSync(join(folder, path), "utf8") }));
}

const ris = `TY  - JOUR
ID  - vane-1968
AU  - Vane, Iris
AU  - Pell, J., Jr.
TI  - The pits of the long row
T2  - Measure and Ground
PY  - 1968/03/02/
VL  - 12
IS  - 3
SP  - 101
EP  - 117
DO  - 10.1000/pits.12
UR  - https://example.org/pits
KW  - pits
N2  - Two pits were cut twice.
ER  - 

TY  - CHAP
AU  - Hale, Josiah
A2  - Ольга Иванова
TI  - Of posts
BT  - Rings
PB  - Umber
CY  - Thorne
PY  - 1896
SN  - 978-0-00-000000-2
ER  - 
`;

const json = JSON.stringify(
  [
    {
      id: "hale-1896",
      type: "chapter",
      title: "Of posts",
      "container-title": "Rings",
      author: [{ family: "Hale", given: "Josiah", suffix: "Jr." }, { literal: "The Society" }],
      editor: [{ family: "Berg", "non-dropping-particle": "van den" }],
      issued: { "date-parts": [[1896, 4], [1897]], circa: true },
      page: "1-9",
      DOI: "10.1000/posts",
      language: "en-GB",
    },
    {
      id: "a-2",
      type: "book",
      title: "<i>Zeilen</i>",
      issued: { raw: "c. 480 BC" },
      keyword: "a, b",
      custom: { x: [1] },
    },
  ],
  null,
  1,
);

const lines = [
  "The pits of the long row, 1968.",
  "A post stood here; its foot was 31 cm deep.",
  "βάθος ٣٫٥ حجر",
];
const papers = [
  smallPdf([{ lines }, { lines: lines.slice(1), rotate: 90 }]),
  smallPdf([{ lines: [] }, { lines }], { printed: 101 }),
  smallPdf([{ lines: lines.slice(0, 2) }]),
  packedPaper("A post stood here"),
];
