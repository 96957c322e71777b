import { readFileSync, statSync } from "node:fs";
import type { FileChange } from "../../base/text/edit.ts";
import { inEnglish } from "../../base/text/said/english.ts";
import { build } from "../../build.ts";
import type { SourceFile } from "../../build.ts";
import { textOf, NoCorpus, readCorpusFolder } from "../../host/corpus-folder.ts";
import { writeChanges } from "../../host/edit-files.ts";
import { emptyMemo } from "../../host/evaluate.ts";
import type { Graph } from "../../link/graph.ts";
import { largestTable } from "../../read/source-file.ts";
import { atDesk } from "../desk/at-desk.ts";
import { Stop } from "../fault.ts";

/** What the user asked of an import. */
export interface Importing {
  readonly into?: string;
  readonly merge?: string;
  readonly json?: boolean;
  readonly as?: string;
  readonly columns?: readonly string[];
  readonly decimal?: string;
  readonly all?: readonly string[];
  readonly keep?: string;
}

/** A corpus that something is to be brought into. */
export interface Goal {
  readonly folder: string;
  readonly graph: Graph;
  readonly files: readonly SourceFile[];
}

/** The corpus that an import goes into. */
export function goalOf(into: string | undefined): Goal {
  if (into === undefined)
    throw new Stop("Missing --into, expected the folder of the corpus: variorum import FILE --into CORPUS");
  const files = filesOf(into);
  const { model, findings } = build(files, [], emptyMemo(new Map()), {});
  if (model) return { folder: into, graph: model.graph, files };
  const [first] = findings;
  throw new Stop(
    `Unreadable corpus \`${into}\`, expected one that variorum check can read${first ? ` (${first.at?.file ?? ""})` : ""}`,
  );
}

function filesOf(folder: string): readonly SourceFile[] {
  try {
    return readCorpusFolder(folder);
  } catch (error) {
    if (error instanceof NoCorpus) throw new Stop(error.message);
    throw error;
  }
}

/** Writes changes as one step of the desk, which it can take back; where no desk can be kept, without a history. */
export function written(folder: string, step: string, changes: readonly FileChange[]): void {
  if (changes.length === 0) return;
  atDesk(folder, (desk) => {
    if (desk.state().readOnly === null) desk.edit(step, changes);
    else writeChanges(folder, changes);
  });
}

/** A file that is to come in, as text. */
export function comingFile(path: string): SourceFile {
  const file = textAt(path);
  if (file.problem !== undefined) throw new Stop(`${path}: ${inEnglish(file.problem)}`);
  return file;
}

function textAt(path: string): SourceFile {
  const about = statSync(path, { throwIfNoEntry: false });
  if (!about) throw new Stop(`Unknown file \`${path}\`, expected a bibliography or a table`);
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
