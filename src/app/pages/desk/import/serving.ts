import type { SourceFile } from "../../../../build.ts";
import type { FileChange } from "../../../../base/text/edit.ts";
import type { Graph } from "../../../../link/graph.ts";
import { answerThrough } from "../../../model/door/serving.ts";
import { arrivedIn } from "../../../../read/bibliography/incoming/arrived.ts";
import type { Arrived } from "../../../../read/bibliography/incoming/arrived.ts";
import { formatOf } from "../../../../read/bibliography/incoming/formats.ts";
import type { Choice } from "../../../../read/bibliography/incoming/plan.ts";
import type { Shelf } from "../../../../read/bibliography/incoming/shelf.ts";
import { textsOf } from "../../../../read/source-file.ts";
import { entryDraft } from "../../../../show/desk/import/entry.ts";
import type { EntryDraft } from "../../../../show/desk/import/entry.ts";
import { importPage } from "../../../../show/desk/import/page.ts";
import type { ImportPage } from "../../../../show/desk/import/page.ts";
import { importPlan, shelfFor } from "../../../../show/desk/import/plan.ts";
import { comingTable, isTable } from "../../../../show/desk/import/table/coming.ts";
import type { ComingTable } from "../../../../show/desk/import/table/coming.ts";
import { tablePage } from "../../../../show/desk/import/table/told/page.ts";
import type { TableChoices } from "../../../../show/desk/import/table/told/page.ts";
import { importTold } from "../../../../show/desk/import/told.ts";

/** A file that is to come in, as the browser read it. */
export interface Given {
  readonly name: string;
  readonly text: string;
}

/** What the page of an import asks of the model; its files are handed over once, by `files`. */
export interface ImportAsked {
  readonly files?: readonly Given[];
  readonly choices: readonly (readonly [place: number, choice: Choice])[];
  readonly duplicates: "leave" | "merge";
  /** How many entries of each list are shown. */
  readonly most: number;
  /** Whether the changes of files are wanted, to be saved. */
  readonly changes: boolean;
}

/** A file by its name, with how many entries were read in it, or rows; both null where it is neither bibliography nor table. */
export interface FileTold {
  readonly name: string;
  readonly entries: number | null;
  readonly rows: number | null;
}

/** What an import comes to. */
export interface ImportAnswer {
  readonly files: readonly FileTold[];
  readonly page: ImportPage;
  readonly changes: readonly FileChange[];
}

/** What the page of an import asks about one table among the files that it handed over. */
export interface TableQuestion {
  readonly name: string;
  readonly chosen: TableChoices;
  readonly most: number;
  readonly changes: boolean;
}

/** What a table comes to. */
export type TableAnswer = ReturnType<typeof tablePage>;

/** What the form of an entry asks. */
export type EntryAsked = Parameters<typeof entryDraft>[2];

/** What is asked about an import, about one table of it, or about the change of one entry, and what is answered. */
export interface ImportQuestions {
  readonly import: (asked: ImportAsked) => ImportAnswer;
  /** Null where the corpus has no such entry. */
  readonly entry: (asked: EntryAsked) => EntryDraft | null;
  /** Null where there is no such table. */
  readonly table: (asked: TableQuestion) => TableAnswer | null;
}

interface Corpus {
  readonly graph: Graph;
  readonly files: readonly SourceFile[];
}

/** Answers the pages that write bibliographies through a door. */
export function serveImport(port: MessagePort, corpus: () => Corpus | null): void {
  let arrived: readonly Read[] = [];
  let shelf: { readonly of: Graph; readonly shelf: Shelf } | null = null;
  answerThrough<ImportQuestions>(port, () => {
    const now = corpus();
    return (
      now && {
        import: (asked) => importOf(now, asked),
        entry: (asked) => entryDraft(now.graph, textsOf(now.files), asked),
        table: (asked) => tableOf(now, asked),
      }
    );
  });

  function importOf(now: Corpus, asked: ImportAsked): ImportAnswer {
    if (asked.files)
      arrived = asked.files.map((file) => arrived.find((one) => same(one, file)) ?? readIn(file));
    return toldOf(now, asked);
  }

  function tableOf(
    { graph, files }: Corpus,
    { name, chosen, most, changes }: TableQuestion,
  ): TableAnswer | null {
    const read = arrived.find((one) => one.name === name)?.table;
    if (!read) return null;
    const told = tablePage(graph, read, chosen, textsOf(files), most);
    return changes ? told : { ...told, changes: [] };
  }

  function toldOf(
    { graph, files }: Corpus,
    { choices, duplicates, most, changes }: ImportAsked,
  ): ImportAnswer {
    if (shelf?.of !== graph) shelf = { of: graph, shelf: shelfFor(graph, files) };
    const all = arrived.flatMap(({ read }) => read ?? []);
    const told = importTold(
      graph,
      importPlan(graph, shelf.shelf, all, { choices: new Map(choices), duplicates }),
    );
    return {
      files: arrived.map(({ name, read, table }) => ({
        name,
        entries: read ? read.entries.length : null,
        rows: table ? table.rows.length : null,
      })),
      page: importPage(told, most),
      changes: changes ? told.changes : [],
    };
  }
}

function same(a: Given, b: Given): boolean {
  return a.name === b.name && a.text === b.text;
}

interface Read extends Given {
  readonly read: Arrived | null;
  readonly table: ComingTable | null;
}

function readIn({ name, text }: Given): Read {
  const file = { path: name, text };
  if (isTable(file)) return { name, text, read: null, table: comingTable(file) };
  const format = formatOf(name, text);
  return { name, text, read: format && arrivedIn(file, format), table: null };
}
