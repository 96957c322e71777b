import {
  fieldsOf,
  membersOf,
  numberOf,
  say,
  textOf,
  type Computation,
  type Json,
  type Naming,
  type Text,
} from "../../src/plugin.ts";

/** A pair of dimensions as the figure and the sentence read it: sizes in SI, standard uncertainties. */
export interface Row {
  readonly name: Text;
  readonly larger: number;
  readonly uLarger: number;
  readonly smaller: number;
  readonly uSmaller: number;
  readonly ratio: number;
  /** Standard uncertainty of the log ratio, the tolerance in it. */
  readonly u: number;
  readonly departs: boolean;
}

/** The dimension that all rows are of; null where there are several. */
export function oneDimension(computation: Computation): string | null {
  const names = new Set(rowsIn(computation).map((row) => textOf(row["dimension"])));
  return names.size === 1 ? ([...names][0] ?? null) : null;
}

/** The rows of a computation's plot data, named by dimension, by artefact where all are one dimension, or by both. */
export function pairsIn(computation: Computation, name: Naming): readonly Row[] {
  const rows = rowsIn(computation);
  const single = rows.length > 1 && oneDimension(computation) !== null;
  return rows.map((row) => {
    const dimension = textOf(row["dimension"]);
    const artefact = name(textOf(row["artefact"]));
    const alike = rows.filter((other) => other["dimension"] === row["dimension"]).length > 1;
    return {
      name: single ? artefact : alike ? say`${dimension} of ${artefact}` : dimension,
      larger: numberOf(row["larger"]),
      uLarger: numberOf(row["uLarger"]),
      smaller: numberOf(row["smaller"]),
      uSmaller: numberOf(row["uSmaller"]),
      ratio: numberOf(row["ratio"]),
      u: numberOf(row["u"]),
      departs: row["departs"] === true,
    };
  });
}

/** A factor that was claimed: where it lies beside the ratios, and the places of the rows that it meets; null where none was. */
export function claimedIn({ data }: Computation): {
  readonly factor: number;
  readonly lies: string;
  readonly meets: readonly boolean[];
} | null {
  const claimed = fieldsOf(fieldsOf(data)["claimed"]);
  if (claimed["factor"] === undefined) return null;
  const meets = membersOf(claimed["meets"]).map((one) => one === true);
  return { factor: numberOf(claimed["factor"]), lies: textOf(claimed["lies"]), meets };
}

function rowsIn(computation: Computation): readonly { readonly [key: string]: Json }[] {
  return membersOf(fieldsOf(computation.data)["rows"]).map(fieldsOf);
}
