import type { Edit } from "../../../../../base/finding.ts";
import { edited } from "../../../../../base/text/edit.ts";
import { cellIn } from "../../../../../read/edit/table/cells.ts";
import type { Written } from "../../../../../read/edit/written.ts";
import type { Row } from "../../../../../read/table/csv.ts";
import type { Meaning } from "../../../grid/columns/meaning.ts";
import type { Asked } from "../asked.ts";
import { exchanged, isBare, pointed } from "../figure.ts";
import type { RowDraft } from "../rows.ts";
import { signed } from "./sign.ts";

/** The file with its head, the cells that must say something else, and the rows that come in; all else as it was. */
export function rewritten(asked: Asked, drafts: readonly RowDraft[]): string {
  const { coming, columns, list } = asked;
  const { file, separator } = coming;
  const names = columns.map(({ meaning }) => headFor(meaning));
  const more = moreColumns(asked, names);
  const first = list === "artefacts" && !names.includes("id") ? ["id"] : [];
  const cells = (all: readonly string[]): string => all.join(separator);
  const put = (text: string): string => cellIn(text, separator, false);
  const [top] = coming.rows;
  const headEnd = top ? file.text.slice(0, top.span.start).replace(/[\r\n]+$/u, "").length : file.text.length;
  const start = file.text.charCodeAt(0) === 0xfeff ? 1 : 0;
  const head = [...first, ...names.flatMap((name) => name ?? []), ...more.map(({ name }) => name)];
  const edits: Edit[] = [{ file: file.path, start, end: headEnd, text: cells(head.map(put)) }];
  const byRow = new Map(drafts.map((one) => [one.row, one]));
  for (const [place, row] of coming.rows.entries()) {
    const draft = byRow.get(place);
    if (!draft) {
      edits.push({ file: file.path, ...wholeLine(file.text, row), text: "" });
      continue;
    }
    const said = [
      ...first.map((name) => put(String(draft.values[name] ?? ""))),
      ...columns.flatMap(({ meaning }, column) =>
        names[column] === null ? [] : [cellFor(asked, draft, meaning, row, column)],
      ),
      ...more.map(({ textFor }) => put(textFor(draft))),
    ];
    edits.push({ file: file.path, start: row.span.start, end: row.span.end, text: cells(said) });
  }
  return edited(file.text, edits);
}

function wholeLine(text: string, { span }: Row): { readonly start: number; readonly end: number } {
  const mark = /^(?:\r\n|\r|\n)/u.exec(text.slice(span.end, span.end + 2))?.[0].length ?? 0;
  return { start: span.start, end: span.end + mark };
}

/** The head of a column in a table of the corpus; null where the column does not stay. */
function headFor(meaning: Meaning): string | null {
  switch (meaning.is) {
    case "field":
      return meaning.field;
    case "number":
      return `numbers.${meaning.register}`;
    case "unit":
    case "uncertainty":
      return meaning.is;
    default:
      return null;
  }
}

interface MoreColumn {
  readonly name: string;
  readonly textFor: (draft: RowDraft) => string;
}

/** Columns that the table has not: the unit from the head of the values, and what all rows get. */
function moreColumns(asked: Asked, names: readonly (string | null)[]): readonly MoreColumn[] {
  const { columns, all, graph } = asked;
  const value = columns.findIndex(({ meaning }) => meaning.is === "field" && meaning.field === "value");
  const meaning = columns[value]?.meaning;
  const unit = meaning?.is === "field" ? meaning.unit : undefined;
  const given = Object.keys(all).filter((name) => !names.includes(name) && all[name]?.trim() !== "");
  return [
    ...(unit === undefined || names.includes("unit")
      ? []
      : [
          {
            name: "unit",
            textFor: ({ row }: RowDraft) => {
              const raw = asked.coming.rows[row]?.cells[value]?.text.trim() ?? "";
              const read = pointed(raw, asked.decimal, graph.settings.quantities);
              return "text" in read && isBare(read.text, graph.settings.quantities) ? unit : "";
            },
          },
        ]),
    ...given.map((name) => ({ name, textFor: ({ values }: RowDraft) => plain(values[name]) })),
  ];
}

const plain = (value: Written | undefined): string => (typeof value === "string" ? value : "");

/** A cell as it was written, unless it is to say something else. */
function cellFor(asked: Asked, draft: RowDraft, meaning: Meaning, row: Row, column: number): string {
  const { file, separator } = asked.coming;
  const cell = row.cells[column];
  if (!cell) return "";
  const raw = file.text.slice(cell.span.start, cell.span.end);
  const said = cell.text.trim();
  const wanted = wantedIn(asked, draft, meaning, said);
  return wanted === said ? raw : cellIn(wanted, separator, raw.startsWith('"'));
}

function wantedIn(asked: Asked, { values }: RowDraft, meaning: Meaning, said: string): string {
  const { decimal, graph } = asked;
  const isFigure = meaning.is === "uncertainty" || (meaning.is === "field" && meaning.field === "value");
  if (isFigure) {
    const bare = meaning.is === "uncertainty" ? said.replace(/^(?:±|\+\/?\s*[-−])\s*/u, "") : said;
    if (decimal === graph.settings.decimal) return bare;
    return exchanged(bare);
  }
  if (meaning.is !== "field" || meaning.field.startsWith("x-")) return said;
  const value = values[meaning.field];
  return typeof value === "string" ? signed(asked, meaning.field, value) : said;
}
