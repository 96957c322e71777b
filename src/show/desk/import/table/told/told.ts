import type { Id } from "../../../../../base/finding.ts";
import type { FileChange } from "../../../../../base/text/edit.ts";
import type { Text } from "../../../../../base/text/said/said.ts";
import type { Graph } from "../../../../../link/graph.ts";
import { labelText } from "../../../../../link/names/label.ts";
import { withheldIn } from "../../../../withhold.ts";
import { meaningText } from "../../../grid/columns/meaning.ts";
import type { Meaning, TableList } from "../../../grid/columns/meaning.ts";
import { askedOf } from "../asked.ts";
import type { Asked, RowChoice, TableAsked } from "../asked.ts";
import type { ComingTable } from "../coming.ts";
import { tableChanges } from "../kept/changes.ts";
import { outcomeOf } from "../outcome.ts";
import type { RowDraft } from "../rows.ts";
import type { FieldDiffers } from "../things/merging.ts";

/** A column as it is shown: what it is taken for and why, with the first cells in it. */
export interface ColumnTold {
  readonly head: string;
  readonly meaning: Meaning;
  /** The meaning as an option of the command line writes it. */
  readonly text: string;
  readonly why: Text;
  readonly unsure: boolean;
  readonly cells: readonly string[];
}

/** A row that cannot come in, or a figure of one. */
export interface FailureTold {
  readonly line: number;
  /** The head of its column, where a row has several figures. */
  readonly head: string | null;
  readonly why: readonly Text[];
  /** The row as it stands in the file; empty where it names something withheld. */
  readonly text: string;
}

/** A row whose artefact is there already. */
export interface TwinTold {
  readonly row: number;
  readonly line: number;
  readonly id: Id;
  readonly label: Text;
  readonly name: string;
  readonly why: "id" | "number" | "name";
  readonly does: RowChoice["do"];
  readonly missing: readonly FieldDiffers[];
  readonly differing: readonly (FieldDiffers & { readonly taken: boolean })[];
}

/** A record that comes in, in few words. */
export interface FreshTold {
  readonly line: number;
  /** The artefact that was measured, or the new one. */
  readonly id: Id;
  readonly label: Text;
  readonly dimension: string | null;
  readonly value: string | null;
}

/** A table as it is shown before it comes in, and the changes of files that bring it in. */
export interface TableTold {
  readonly list: TableList;
  readonly wide: boolean;
  readonly columns: readonly ColumnTold[];
  readonly rows: number;
  /** How many figures are written with a comma, and how many with a point. */
  readonly commas: number;
  readonly points: number;
  readonly fresh: readonly FreshTold[];
  /** Measurements that are there already. */
  readonly there: readonly { readonly line: number; readonly id: Id; readonly label: Text }[];
  readonly twins: readonly TwinTold[];
  /** Lines of rows that are like something withheld. */
  readonly hidden: readonly number[];
  readonly failures: readonly FailureTold[];
  /** Cells without a figure. */
  readonly without: number;
  readonly files: readonly { readonly file: string; readonly isNew: boolean; readonly records: number }[];
  readonly changes: readonly FileChange[];
  readonly problem: Text | null;
}

/** How many rows are shown beside the columns. */
const firstRows = 4;

/** Tells what becomes of a table, and nothing of what is withheld. */
export function tableTold(
  graph: Graph,
  coming: ComingTable,
  given: TableAsked,
  files: ReadonlyMap<string, string>,
): TableTold {
  const asked = askedOf(graph, coming, given);
  const outcome = outcomeOf(asked);
  const made = tableChanges(asked, outcome, files);
  const isOpen = openIn(graph);
  const lineOf = (row: number): number => coming.lineAt(coming.rows[row]?.span.start ?? 0);
  return {
    list: asked.list,
    wide: asked.wide,
    columns: columnsTold(asked, isOpen),
    rows: coming.rows.length,
    ...signsIn(asked),
    fresh: outcome.fresh.map((draft) => freshTold(asked, draft, lineOf(draft.row))),
    there: outcome.there.map(({ draft, id }) => ({
      line: lineOf(draft.row),
      id,
      label: labelText(graph, id),
    })),
    twins: outcome.twins.map(({ draft, record, why, choice, missing, differing }): TwinTold => {
      const { name } = draft.values;
      return {
        row: draft.row,
        line: lineOf(draft.row),
        id: record.id,
        label: labelText(graph, record.id),
        name: typeof name === "string" ? name : "",
        why,
        does: choice.do,
        missing,
        differing: differing.map((one) => ({
          ...one,
          taken: choice.do === "merge" && choice.take.includes(one.name),
        })),
      };
    }),
    hidden: outcome.hidden.map(lineOf),
    failures: [
      ...coming.findings.map(({ message, at }) => ({
        line: at === null ? 1 : coming.lineAt(at.start),
        head: null,
        why: [message],
        text: at === null ? "" : masked(isOpen, coming.file.text.slice(at.start, at.end)),
      })),
      ...outcome.failed.map(({ row, column, why }) => ({
        line: lineOf(row),
        head: column === null ? null : (coming.head[column] ?? null),
        why,
        text: masked(isOpen, rowText(coming, row)),
      })),
    ].toSorted((a, b) => a.line - b.line),
    without: outcome.without,
    files: "problem" in made ? [] : made.files,
    changes: "problem" in made ? [] : made.changes,
    problem: "problem" in made ? made.problem : null,
  };
}

function columnsTold({ coming, columns }: Asked, isOpen: (text: string) => boolean): readonly ColumnTold[] {
  const rows = coming.rows.filter((_, row) => isOpen(rowText(coming, row))).slice(0, firstRows);
  return columns.map(({ head, meaning, why, unsure }, column) => ({
    head,
    meaning,
    text: meaningText(meaning),
    why,
    unsure,
    cells: rows.map(({ cells }) => cells[column]?.text.trim() ?? ""),
  }));
}

function freshTold({ graph, list }: Asked, { values }: RowDraft, line: number): FreshTold {
  const { id, of, name, dimension, value } = values;
  const text = (one: unknown): string | null => (typeof one === "string" ? one : null);
  if (list === "measurements") {
    const thing = text(of) ?? "";
    return {
      line,
      id: thing,
      label: labelText(graph, thing),
      dimension: text(dimension),
      value: text(value),
    };
  }
  const own = text(id) ?? "";
  const { numbers } = values;
  const [number] = numbers !== undefined && typeof numbers === "object" ? Object.values(numbers) : [];
  return { line, id: own, label: text(name) ?? text(number) ?? own, dimension: null, value: null };
}

/** How the figures of a table are written, as far as they have a decimal sign. */
function signsIn({ coming, columns }: Asked): { readonly commas: number; readonly points: number } {
  let [commas, points] = [0, 0];
  for (const { cells } of coming.rows)
    columns.forEach(({ meaning }, column) => {
      const figure =
        meaning.is === "dimension" ||
        meaning.is === "uncertainty" ||
        (meaning.is === "field" && meaning.field === "value");
      const text = figure ? (cells[column]?.text ?? "") : "";
      if (/\d,\d/u.test(text)) commas += 1;
      else if (/\d\.\d/u.test(text)) points += 1;
    });
  return { commas, points };
}

function rowText({ file, rows }: ComingTable, row: number): string {
  const span = rows[row]?.span;
  return span ? file.text.slice(span.start, span.end) : "";
}

/** Tells whether a text names nothing that is withheld: no id, name or number of it. */
function openIn(graph: Graph): (text: string) => boolean {
  const withheld = withheldIn(graph);
  const names = graph
    .list("artefacts")
    .filter(({ id }) => withheld(id))
    .flatMap(({ values }) => [...(values.numbers?.values() ?? []), values.name ?? []].flat());
  return (text) =>
    !text.split(/[\s,;\t"]+/u).some((word) => word !== "" && withheld(word)) &&
    !names.some((name) => text.includes(name));
}

/** Longest text of a row that is shown, in UTF-16 units. */
const longest = 1000;

function masked(isOpen: (text: string) => boolean, text: string): string {
  if (!isOpen(text)) return "";
  return text.length > longest ? `${text.slice(0, longest)} …` : text;
}
