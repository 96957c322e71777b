import type { SourceFile } from "../../../../build.ts";
import type { FileChange } from "../../../../base/text/edit.ts";
import type { Graph } from "../../../../link/graph.ts";
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

/** Through the door to the model: about an import, about one table of it, or about the change of one entry. */
export interface Question {
  readonly number: number;
  readonly import?: ImportAsked;
  readonly entry?: EntryAsked;
  readonly table?: TableQuestion;
}

/** Through the door from the model; null where the corpus cannot be read, or has no such entry. */
export interface Answer {
  readonly number: number;
  readonly told: ImportAnswer | EntryDraft | TableAnswer | null;
}

interface Corpus {
  readonly graph: Graph;
  readonly files: readonly SourceFile[];
}

/** Answers the pages that write bibliographies through a door, each question on the corpus as it is then. */
export function serveImport(port: MessagePort, corpus: () => Corpus | null): void {
  let arrived: readonly Read[] = [];
  let shelf: { readonly of: Graph; readonly shelf: Shelf } | null = null;
  port.onmessage = ({ data }: MessageEvent<Question>) => {
    const now = corpus();
    const answer: Answer = { number: data.number, told: now && answered(now, data) };
    port.postMessage(answer);
  };

  function answered(now: Corpus, { import: coming, entry, table }: Question): Answer["told"] {
    const texts = (): ReadonlyMap<string, string> => textsOf(now.files);
    if (entry) return entryDraft(now.graph, texts(), entry);
    if (table) {
      const read = arrived.find(({ name }) => name === table.name)?.table;
      if (!read) return null;
      const told = tablePage(now.graph, read, table.chosen, texts(), table.most);
      return table.changes ? told : { ...told, changes: [] };
    }
    if (!coming) return null;
    if (coming.files)
      arrived = coming.files.map((file) => arrived.find((one) => same(one, file)) ?? readIn(file));
    return toldOf(now, coming);
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
