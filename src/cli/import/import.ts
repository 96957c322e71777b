import { readFileSync, statSync } from "node:fs";
import { inEnglish } from "../../base/text/said/english.ts";
import { build } from "../../build.ts";
import type { SourceFile } from "../../build.ts";
import { textOf, NoCorpus, readCorpusFolder } from "../../host/corpus-folder.ts";
import { CannotWrite, writeChanges } from "../../host/edit-files.ts";
import { emptyMemo } from "../../host/evaluate.ts";
import { arrivedIn } from "../../read/bibliography/incoming/arrived.ts";
import type { Arrived } from "../../read/bibliography/incoming/arrived.ts";
import { formatOf } from "../../read/bibliography/incoming/formats.ts";
import { largestTable } from "../../read/source-file.ts";
import { importPlan, shelfFor } from "../../show/desk/import/plan.ts";
import { importTold } from "../../show/desk/import/told.ts";
import type { ImportTold } from "../../show/desk/import/told.ts";
import { Stop } from "../fault.ts";

/** What the user asked of an import. */
export interface Importing {
  readonly into?: string;
  readonly merge?: string;
  readonly json?: boolean;
}

/** Brings bibliographies into a corpus, all of them or none, and tells what became of each entry. */
export function imported(paths: readonly string[], { into, merge }: Importing): ImportTold {
  if (into === undefined)
    throw new Stop("Missing --into, expected the folder of the corpus: variorum import FILE --into CORPUS");
  const files = filesOf(into);
  const arrived = paths.map(arrivedAt);
  const { model, findings } = build(files, [], emptyMemo(new Map()), {});
  if (!model) {
    const [first] = findings;
    throw new Stop(
      `Unreadable corpus \`${into}\`, expected one that variorum check can read${first ? ` (${first.at?.file ?? ""})` : ""}`,
    );
  }
  const { graph } = model;
  const asked = { choices: new Map(), duplicates: merge === "missing" ? "merge" : "leave" } as const;
  const told = importTold(graph, importPlan(graph, shelfFor(graph, files), arrived, asked));
  if (told.problem !== null) throw new Stop(inEnglish(told.problem));
  if (told.changes.length > 0) written(into, told);
  return told;
}

function written(folder: string, { changes }: ImportTold): void {
  try {
    writeChanges(folder, changes);
  } catch (error) {
    if (error instanceof CannotWrite) throw new Stop(error.message);
    throw error;
  }
}

function filesOf(folder: string): readonly SourceFile[] {
  try {
    return readCorpusFolder(folder);
  } catch (error) {
    if (error instanceof NoCorpus) throw new Stop(error.message);
    throw error;
  }
}

function arrivedAt(path: string): Arrived {
  const { text, problem } = textAt(path);
  if (problem !== undefined) throw new Stop(`${path}: ${inEnglish(problem)}`);
  const format = formatOf(path, text);
  if (format === null)
    throw new Stop(`Unknown kind of file \`${path}\`, expected BibTeX, RIS or CSL-JSON: .bib, .ris or .json`);
  return arrivedIn({ path, text }, format);
}

function textAt(path: string): SourceFile {
  const about = statSync(path, { throwIfNoEntry: false });
  if (!about) throw new Stop(`Unknown file \`${path}\`, expected a bibliography`);
  if (!about.isFile()) throw new Stop(`Unexpected folder \`${path}\`, expected a file`);
  if (about.size > largestTable)
    throw new Stop(
      `Unexpected size of \`${path}\` of more than 64 MiB, expected it divided among several files`,
    );
  try {
    return textOf(path, readFileSync(path));
  } catch {
    throw new Stop(`Unreadable file \`${path}\`, expected one that may be read`);
  }
}
