import { Paragraph, Table, TableCell, TableRow } from "docx";
import { inEnglish } from "../../../base/text/said/english.ts";
import { plainWords } from "../../telling/set/set-text.ts";
import type { SetInlines, SetTable } from "../../telling/set/set-text.ts";
import { lineRuns } from "./line.ts";
import type { Bookmarked } from "./line.ts";
import { wayOfLine } from "../../telling/set/direction.ts";
import { tableStyleId, textWidth } from "./styles.ts";

/** A table of as many rows is not broken over pages; a longer one has two of them at least under its head. */
const mostTogether = 8;

/** A table whose head is repeated on every page and whose rows are not broken. */
export function tableOf({ head, rows, figures }: SetTable, bookmarked: Bookmarked): Table {
  const widths = widthsOf([head, ...rows]);
  const cells = (
    row: readonly SetInlines[],
    style: (place: number) => string,
    keepNext: boolean,
  ): TableCell[] =>
    widths.map(
      (size, place) =>
        new TableCell({
          width: { size, type: "dxa" },
          children: [cellOf(row[place] ?? [], { style: style(place), keepNext }, bookmarked)],
        }),
    );
  return new Table({
    style: tableStyleId,
    width: { size: textWidth, type: "dxa" },
    columnWidths: [...widths],
    layout: "fixed",
    tableLook: {
      firstRow: true,
      lastRow: false,
      firstColumn: false,
      lastColumn: false,
      noHBand: true,
      noVBand: true,
    },
    rows: [
      new TableRow({
        tableHeader: true,
        cantSplit: true,
        children: cells(head, (place) => (figures.includes(place) ? "TableHeadFigures" : "TableHead"), true),
      }),
      ...rows.map(
        (row, at) =>
          new TableRow({
            cantSplit: true,
            children: cells(
              row,
              (place) => (figures.includes(place) ? "TableFigures" : "TableText"),
              at < rows.length - 1 && (rows.length <= mostTogether || at === 0),
            ),
          }),
      ),
    ],
  });
}

function cellOf(
  of: SetInlines,
  { style, keepNext }: { readonly style: string; readonly keepNext: boolean },
  bookmarked: Bookmarked,
): Paragraph {
  const fromRight = wayOfLine(of) === "rtl";
  return new Paragraph({
    style,
    ...(keepNext ? { keepNext } : {}),
    children: lineRuns(of, bookmarked),
    ...(fromRight ? { bidirectional: true } : {}),
  });
}

/** A letter of the tables' size is about so wide, one of their bold heads in a broad face, and a cell's margin. */
const [letter, headLetter, margin] = [116, 140, 160];

/** Widths of the columns, in all that of the text: each its longest word at least where that goes, the rest shared by what they hold. The head is the first row. */
export function widthsOf(rows: readonly (readonly SetInlines[])[]): readonly number[] {
  const columns = Math.max(1, ...rows.map((row) => row.length));
  const texts = Array.from({ length: columns }, (_, place) =>
    rows.map((row) => plainWords(row[place] ?? [], inEnglish)),
  );
  const longest = (all: readonly string[]): number =>
    Math.min(18, Math.max(3, ...all.flatMap((one) => one.split(/\s+/)).map((word) => word.length)));
  const least = texts.map(
    ([head = "", ...body]) => margin + Math.max(headLetter * longest([head]), letter * longest(body)),
  );
  const wanted = texts.map(
    (all) => margin + letter * Math.min(140, Math.max(3, ...all.map((one) => one.length))),
  );
  const sum = (all: readonly number[]): number => all.reduce((one, other) => one + other, 0);
  const room = textWidth - sum(least);
  const more = wanted.map((one, place) => Math.max(0, one - (least[place] ?? 0)));
  const shares =
    room <= 0
      ? least.map((one) => (one * textWidth) / sum(least))
      : least.map(
          (one, place) => one + (sum(more) === 0 ? room / columns : (room * (more[place] ?? 0)) / sum(more)),
        );
  const whole = shares.map(Math.floor);
  return whole.map((one, place) => (place === 0 ? one + textWidth - sum(whole) : one));
}
