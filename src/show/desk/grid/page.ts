import type { Text } from "../../../base/text/said/said.ts";
import type { Graph } from "../../../link/graph.ts";
import { choiceOf } from "../forms/offered/labels.ts";
import type { FormWanted } from "../forms/page.ts";
import { fieldsIn } from "../forms/layout.ts";
import { emptyGrid, fixedColumns, gridColumns } from "./draft.ts";
import type { GridDraft } from "./draft.ts";

/** A column that a grid may have. */
export interface GridColumn {
  readonly name: string;
  /** One line on what belongs there; null for the place in a source, which is part of another field. */
  readonly doc: Text | null;
  /** The words of which it takes one; empty where it takes any. */
  readonly choices: readonly string[];
  /** A grid always has it. */
  readonly fixed: boolean;
}

/** A grid as it is opened. */
export interface GridPage {
  /** What was known when it was asked for, and the grid that this begins. */
  readonly presets: FormWanted["presets"];
  readonly begun: GridDraft;
  readonly columns: readonly GridColumn[];
  /** What the thing and the source are called that were known. */
  readonly about: { readonly of: Text | null; readonly from: Text | null };
}

/** The grid in which measurements are entered, with what is known of them already. */
export function gridPage(graph: Graph, { presets }: Pick<FormWanted, "presets">): GridPage {
  const begun = emptyGrid(presets);
  const fields = fieldsIn("measurements");
  const labelled = (name: "of" | "from"): Text | null => {
    const id = (begun.every[name] ?? "").split(/\s/u)[0] ?? "";
    return id === "" ? null : (choiceOf(graph, id)?.label ?? null);
  };
  return {
    presets,
    begun,
    columns: gridColumns.map((name) => {
      const field = Object.hasOwn(fields, name) ? fields[name] : undefined;
      return {
        name,
        doc: field?.doc ?? null,
        choices: field?.type === "choice" ? field.of : field?.type === "flag" ? ["true", "false"] : [],
        fixed: fixedColumns.includes(name),
      };
    }),
    about: { of: labelled("of"), from: labelled("from") },
  };
}
