import type { Quantity } from "../../../../base/quantity.ts";
import { parseQuantity } from "../../../../base/quantity/quantity-text.ts";
import type { Id } from "../../../../base/finding.ts";
import type { Text } from "../../../../base/text/said/said.ts";
import { folded } from "../../../../link/dimension.ts";
import type { Graph } from "../../../../link/graph.ts";
import type { Written, WrittenMap } from "../../../../read/edit/written.ts";
import { withheldIn } from "../../../withhold.ts";
import type { Asked } from "./asked.ts";
import { figureOf, isBare, isNoFigure, withoutUnit } from "./figure.ts";
import type { Parts } from "./figure.ts";
import { cellAt, fieldsAt } from "./rows.ts";
import type { RowDraft } from "./rows.ts";

/** The measurements of a table, row by row, and how many cells have no figure. */
export function measuredIn(asked: Asked): {
  readonly drafts: readonly RowDraft[];
  readonly without: number;
} {
  const drafts: RowDraft[] = [];
  let without = 0;
  const columns = figureColumns(asked);
  for (let row = 0; row < asked.coming.rows.length; row++) {
    const { values, troubles } = fieldsAt(asked, row, (field) => field === "value");
    for (const one of columns) {
      const parts = partsAt(asked, row, one);
      if (isNoFigure(parts.value) && isNoFigure(parts.error) && (asked.wide || parts.value !== "")) {
        without += 1;
        continue;
      }
      const draft = draftOf(asked, parts, one.dimension, values, troubles);
      drafts.push({ ...draft, row, column: asked.wide ? one.value : null });
    }
  }
  return { drafts, without };
}

interface FigureColumn {
  readonly value: number;
  readonly error: number | null;
  readonly unit: number | null;
  /** Null where a column of its own says it. */
  readonly dimension: string | null;
  readonly ownUnit: string | null;
  readonly errorUnit: string | null;
}

/** Where figures stand: one column for each dimension of a wide table, or the one of the value. */
function figureColumns({ columns, wide }: Asked): readonly FigureColumn[] {
  const errorOf = (dimension: string | null): Pick<FigureColumn, "error" | "errorUnit"> => {
    const place = columns.findIndex(
      ({ meaning }) => meaning.is === "uncertainty" && meaning.dimension === dimension,
    );
    const meaning = columns[place]?.meaning;
    return {
      error: place < 0 ? null : place,
      errorUnit: meaning?.is === "uncertainty" ? meaning.unit : null,
    };
  };
  if (wide)
    return columns.flatMap(({ meaning }, value) =>
      meaning.is === "dimension"
        ? [
            {
              value,
              unit: null,
              dimension: meaning.dimension,
              ownUnit: meaning.unit,
              ...errorOf(meaning.dimension),
            },
          ]
        : [],
    );
  const value = columns.findIndex(({ meaning }) => meaning.is === "field" && meaning.field === "value");
  const meaning = columns[value]?.meaning;
  const unit = columns.findIndex((one) => one.meaning.is === "unit");
  const ownUnit = meaning?.is === "field" ? (meaning.unit ?? null) : null;
  return [{ value, unit: unit < 0 ? null : unit, dimension: null, ownUnit, ...errorOf(null) }];
}

function partsAt(asked: Asked, row: number, column: FigureColumn): Parts {
  const unit = column.unit === null ? "" : cellAt(asked, row, column.unit);
  return {
    value: cellAt(asked, row, column.value),
    error: column.error === null ? "" : cellAt(asked, row, column.error),
    unit: unit === "" ? column.ownUnit : unit,
    errorUnit: column.errorUnit,
  };
}

function draftOf(
  { decimal, graph }: Asked,
  parts: Parts,
  dimension: string | null,
  given: Readonly<Record<string, Written>>,
  troubles: readonly Text[],
): Pick<RowDraft, "values" | "troubles"> {
  const context = graph.settings.quantities;
  const figure = figureOf({ ...parts, error: isNoFigure(parts.error) ? "" : parts.error }, decimal, context);
  const { of, dimension: said, ...others } = given;
  const name = dimension ?? said;
  const values: WrittenMap = {
    ...(of === undefined ? {} : { of }),
    ...(name === undefined ? {} : { dimension: name }),
    ...("text" in figure && figure.text !== "" ? { value: figure.text } : {}),
    ...others,
  };
  const problem = "problem" in figure ? figure.problem : unitMissing(graph, figure.text, name);
  return { values, troubles: problem === null ? troubles : [...troubles, problem] };
}

/** A bare figure of a dimension that has a unit. */
function unitMissing(graph: Graph, text: string, dimension: Written | undefined): Text | null {
  if (typeof dimension !== "string" || text === "" || !isBare(text, graph.settings.quantities)) return null;
  const kind = graph.dimensionKind(graph.dimensionName(dimension));
  return kind === null || kind === "count" || kind === "number" ? null : withoutUnit(text);
}

/** The measurement of the corpus that says the same of the same thing by the same source; null where none does. */
export function thereAlready(graph: Graph): (values: WrittenMap) => Id | null {
  const withheld = withheldIn(graph);
  const all = new Map<string, Id>();
  for (const { id, values } of graph.list("measurements")) {
    if (withheld(id)) continue;
    const from = (values.from ?? []).map((one) => one.key);
    const key = keyOf(graph, values.of, values, from);
    if (!all.has(key)) all.set(key, id);
  }
  return ({ of, dimension, between, value, from, coverage }) => {
    if (typeof of !== "string" || typeof dimension !== "string" || typeof value !== "string") return null;
    const covers = coverage === "1" ? 1 : coverage === "2" ? 2 : null;
    const context = graph.settings.quantities;
    const read = parseQuantity(value, covers === null ? context : { ...context, coverage: covers });
    if (!("ok" in read)) return null;
    const cited = (typeof from === "string" ? [from] : Array.isArray(from) ? from : []).map(
      (one) => String(one).split(/\s/u)[0] ?? "",
    );
    const what = { dimension, value: read.ok, ...(typeof between === "string" ? { between } : {}) };
    return all.get(keyOf(graph, of, what, cited)) ?? null;
  };
}

function keyOf(
  graph: Graph,
  of: Id,
  what: { readonly dimension: string; readonly between?: string; readonly value: Quantity },
  from: readonly Id[],
): string {
  const name = folded(graph.dimensionName(what.dimension));
  const { value, u, form, kind } = what.value;
  // Between other landmarks it is another thing, however like the figure.
  return JSON.stringify([of, name, what.between ?? "", form, kind, value, u, from]);
}
