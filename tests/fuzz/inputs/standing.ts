import type { SourceFile } from "../../../src/read/source-file.ts";
import type { Format } from "./input.ts";

/** How a file of each format is called that stands in no corpus of its own. */
export const pathFor: Readonly<Record<Format, string>> = {
  settings: "corpus.yaml",
  records: "records.yaml",
  bibtex: "sources.bib",
  ris: "sources.ris",
  "csl-json": "sources.json",
  table: "survey.csv",
  style: "own.csl",
  paper: "papers/vane-1968.pdf",
  prose: "review/introduction.md",
};

/** The least settings under which it is read; none beside settings. */
export function besides(format: Format, isOfThings: boolean): readonly SourceFile[] {
  const path = pathFor[format];
  const naming: Readonly<Partial<Record<Format, string>>> = {
    bibtex: `bibliography: ${path}\n`,
    ris: `bibliography: ${path}\n`,
    "csl-json": `bibliography: ${path}\n`,
    table: `${isOfThings ? "artefact" : "measurement"}-tables: ${path}\n`,
    style: `citation-style: ${path}\n`,
  };
  const dimensions = "dimensions: { diameter: { kind: length }, depth: { kind: length } }\n";
  const text = `format: 1\ntitle: Pits\nlanguage: en\n${dimensions}${naming[format] ?? ""}`;
  return format === "settings" ? [] : [{ path: "corpus.yaml", text }];
}
