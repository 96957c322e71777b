import { parseQuantity } from "../../../base/quantity/quantity-text.ts";
import type { QuantityContext } from "../../../base/quantity/quantity-text.ts";
import type { Graph } from "../../../link/graph.ts";
import { matched } from "./columns/matched.ts";
import type { Meaning } from "./columns/meaning.ts";
import { gridColumns, isOwnColumn, ordered, withRows, withTexts } from "./draft.ts";
import type { Cells, GridDraft, Place } from "./draft.ts";
import { figureWith, hasComma, pointed } from "./figure.ts";
import type { Block } from "./pasted.ts";

/** A column of a block, what it is taken for, and whether that should be looked at. */
export interface Coming {
  readonly head: string;
  readonly meaning: Meaning;
  readonly unsure: boolean;
}

/** A block of cells before it lands in the grid. */
export interface Landing {
  readonly block: Block;
  readonly at: Place;
  /** Its first line names the columns. */
  readonly head: boolean;
  readonly columns: readonly Coming[];
  /** What the comma is in its figures; null as long as nobody has said, and where none has one. */
  readonly decimal: "point" | "comma" | null;
  /** Figures with a comma, as they are written and as they are with the comma as decimal sign. */
  readonly commas: readonly (readonly [written: string, read: string])[];
}

/** How a block would land at a place: by its head line where it has one, else cell by cell. */
export function landingOf(graph: Graph, draft: GridDraft, at: Place, given: Block): Landing {
  const block = given.map((line) => line.map(inOneLine));
  const context = graph.settings.quantities;
  const [first = []] = block;
  const match = first.length > 1 && block.length > 1 ? matched(graph, first, "measurements") : [];
  const known = match.some(({ meaning, unsure }) => meaning.is !== "nothing" && !unsure);
  const head = known && first.every((cell) => !isFigure(cell, context));
  const columns = head
    ? match.map((one): Coming =>
        one.unsure && isOwn(one.meaning) ? { ...one, meaning: { is: "nothing" } } : one,
      )
    : byPlace(draft, at, first.length);
  const body = head ? block.slice(1) : block;
  const figures = body.flatMap((line) => line.filter((_, place) => isMeasured(columns[place])));
  const commas = toBeTold(figures, context);
  return { block, at, head, columns, decimal: null, commas };
}

/**
 * Figures of which the comma has to be told, with what it would make of them: where there is one, those of a point alone
 * too, which would part thousands (`12.345` is then 12345), and these first, since nobody looks for them.
 */
function toBeTold(
  figures: readonly string[],
  context: QuantityContext,
): readonly (readonly [written: string, read: string])[] {
  const all = [...new Set(figures)].map((one) => [one, pointed(one, context)] as const);
  const commas = all.filter(([one]) => hasComma(one));
  if (commas.length === 0) return [];
  const points = all.filter(([one, read]) => !hasComma(one) && read !== one);
  return [...points.slice(0, 2), ...commas].slice(0, 4);
}

/** What a block would land as with another choice of whether its first line is its head. */
export function withHead(graph: Graph, draft: GridDraft, landing: Landing, head: boolean): Landing {
  const [first = []] = landing.block;
  const columns = head
    ? matched(graph, first, "measurements").map(({ head: name, meaning, unsure }) => ({
        head: name,
        meaning,
        unsure,
      }))
    : byPlace(draft, landing.at, first.length);
  return { ...landing, head, columns };
}

/** Whether a block lands without a question: as many cells as there are columns, and no figure that could be read in two ways. */
export function landsAtOnce({ head, columns, commas }: Landing): boolean {
  return !head && commas.length === 0 && columns.every(({ meaning }) => meaning.is !== "nothing");
}

/** The grid with a block in it. What has a head makes rows of its own, one for each figure; the rest lies over the cells. */
export function landed(graph: Graph, draft: GridDraft, landing: Landing): GridDraft {
  const { block, at, head, columns, decimal } = landing;
  const context = graph.settings.quantities;
  const read = (cell: string, place: number): string =>
    decimal === "comma" && isMeasured(columns[place]) ? pointed(cell, context) : cell;
  const lines = block.map((line, place) => (head && place === 0 ? line : line.map(read)));
  if (
    !head &&
    columns.every(
      ({ meaning }, place) =>
        meaning.is === "field" && meaning.field === draft.columns[draft.columns.indexOf(at.column) + place],
    )
  )
    return withTexts(draft, at, lines);
  const rows = (head ? lines.slice(1) : lines).flatMap((line) => rowsOf(graph, columns, line));
  const met = [...new Set(rows.flatMap((row) => Object.keys(row)))];
  const wider = { ...draft, columns: ordered([...draft.columns, ...met]) };
  return withRows(wider, Math.max(at.row, 0), rows);
}

/** One line as rows: one for each dimension that it has a figure of, or one where it names its dimension itself. */
function rowsOf(graph: Graph, columns: readonly Coming[], line: readonly string[]): readonly Cells[] {
  const cells = columns.map(({ meaning }, place) => ({ meaning, text: (line[place] ?? "").trim() }));
  if (cells.every(({ text }) => text === "")) return [];
  const shared: Record<string, string> = {};
  for (const { meaning, text } of cells)
    if (meaning.is === "field" && text !== "" && meaning.field !== "value") shared[meaning.field] ??= text;
  const unit = cells.find(({ meaning }) => meaning.is === "unit")?.text ?? "";
  const errorOf = (dimension: string | null, unitThere: string | null): string | null => {
    const found = cells.find(
      ({ meaning, text }) => meaning.is === "uncertainty" && meaning.dimension === dimension && text !== "",
    );
    if (found?.meaning.is !== "uncertainty") return null;
    const { unit: own } = found.meaning;
    // In the unit of the figure itself it stands before that: `88 ± 0.5 cm`.
    return own === null || own === unitThere
      ? found.text
      : figureWith(found.text, { unit: own, u: null }, graph.settings.quantities);
  };
  const figure = (text: string, own: string | null, dimension: string | null): string => {
    const there = own ?? (unit === "" ? null : unit);
    const kind = dimension === null ? null : graph.dimensionKind(graph.dimensionName(dimension));
    return figureWith(text, { unit: there, u: errorOf(dimension, there) }, graph.settings.quantities, kind);
  };
  const wide = cells.flatMap(({ meaning, text }): readonly Cells[] =>
    meaning.is === "dimension" && text !== ""
      ? [{ ...shared, dimension: meaning.dimension, value: figure(text, meaning.unit, meaning.dimension) }]
      : [],
  );
  const value = cells.find(({ meaning }) => meaning.is === "field" && meaning.field === "value");
  const own = value?.meaning.is === "field" ? (value.meaning.unit ?? null) : null;
  const alone = value && value.text !== "" ? [{ ...shared, value: figure(value.text, own, null) }] : [];
  return wide.length + alone.length > 0 ? [...alone, ...wide] : [shared];
}

/** Columns from a place of the grid on, for cells without a head; those beyond its last column are left out. */
function byPlace(draft: GridDraft, at: Place, wide: number): readonly Coming[] {
  const from = draft.columns.indexOf(at.column);
  return Array.from({ length: wide }, (_, place): Coming => {
    const field = draft.columns[from + place];
    return {
      head: "",
      meaning: field === undefined ? { is: "nothing" } : { is: "field", field },
      unsure: false,
    };
  });
}

function isOwn(meaning: Meaning): boolean {
  return meaning.is === "field" && !gridColumns.includes(meaning.field) && isOwnColumn(meaning.field);
}

const quantities: readonly string[] = ["value", "readings", "to-nearest"];

/** Whether a column holds figures in which a comma can be a decimal sign. */
function isMeasured(coming: Coming | undefined): boolean {
  const meaning = coming?.meaning;
  if (meaning?.is === "field") return quantities.includes(meaning.field);
  return meaning?.is === "dimension" || meaning?.is === "uncertainty";
}

function isFigure(cell: string, context: QuantityContext): boolean {
  return /^\W*\d/u.test(cell) && ("ok" in parseQuantity(cell, context) || hasComma(cell));
}

function inOneLine(cell: string): string {
  return cell
    .replace(/[\u0000-\u001f\u007f\u0085\u2028\u2029]+/gu, " ")
    .replace(/\u00a0/gu, " ")
    .trim();
}
