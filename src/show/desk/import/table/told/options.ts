import type { Graph } from "../../../../../link/graph.ts";
import { registersIn } from "../../../grid/columns/artefact.ts";
import { dimensionNames, fieldsOf, meaningText } from "../../../grid/columns/meaning.ts";
import type { Meaning, TableList } from "../../../grid/columns/meaning.ts";
import { numberKey } from "../../../grid/columns/number.ts";
import { unitInHead } from "../../../grid/columns/unit-in-head.ts";
import type { ColumnMatch } from "../../../grid/columns/matched.ts";

/** A meaning that a column can be given, without its unit, and the name by which it is told from the others. */
export interface MeaningOption {
  readonly key: string;
  readonly meaning: Meaning;
}

/** Registers that most collections have. */
const usualRegisters = ["inventory", "excavation", "publication"];

/** What the columns of a table can be: fields, dimensions of the corpus and those that heads name, numbers of registers. */
export function meaningOptions(
  graph: Graph,
  list: TableList,
  columns: readonly ColumnMatch[],
): readonly MeaningOption[] {
  const registers = [...new Set([...usualRegisters, ...registersIn(graph)])];
  const fields = fieldsOf(list).map((field): Meaning => ({ is: "field", field }));
  const own = columns.flatMap(({ head }): readonly Meaning[] => {
    const name = numberKey(head).replaceAll(" ", "-");
    return name === "" ? [] : [{ is: "field", field: `x-${name}` }];
  });
  const meant = columns.map(({ meaning }) => bare(meaning));
  const all: readonly Meaning[] =
    list === "artefacts"
      ? [...fields, ...registers.map((register): Meaning => ({ is: "number", register })), ...own]
      : [
          ...fields,
          ...registers.map((register): Meaning => ({ is: "field", field: "of", register })),
          { is: "unit" },
          { is: "uncertainty", dimension: null, unit: null },
          ...dimensionsFor(graph, columns).flatMap((dimension): readonly Meaning[] => [
            { is: "dimension", dimension, unit: null },
            { is: "uncertainty", dimension, unit: null },
          ]),
          ...own,
        ];
  const keyed = [...all, ...meant, { is: "nothing" } as const].map(
    (meaning) => [meaningText(meaning), meaning] as const,
  );
  return [...new Map(keyed)].map(([key, meaning]) => ({ key, meaning }));
}

/** A meaning without its unit. */
export function bare(meaning: Meaning): Meaning {
  if (meaning.is === "dimension" || meaning.is === "uncertainty") return { ...meaning, unit: null };
  if (meaning.is !== "field" || meaning.unit === undefined) return meaning;
  const { unit: _, ...others } = meaning;
  return others;
}

function dimensionsFor(graph: Graph, columns: readonly ColumnMatch[]): readonly string[] {
  const known = dimensionNames(graph);
  const heads = columns.flatMap(({ head, meaning }) => {
    const { name } = unitInHead(head, graph.settings.quantities.units);
    const said = meaning.is === "dimension" ? meaning.dimension : graph.dimensionName(name);
    return /\p{L}/u.test(said) ? [said] : [];
  });
  return [...new Set([...known, ...heads])];
}
