import type { QuantityKind } from "../quantity.ts";
import type { UnitTable } from "../unit/unit-table.ts";

/** What the settings of the corpus and the field say about how a quantity is to be read. */
export interface QuantityContext {
  readonly units: UnitTable;
  /** What "about" adds at least, as a share of the value: 0.025 is 2.5 %. */
  readonly approximate: number;
  /** What ± means where neither the text nor `coverage` says it: 1 s or 2 s. */
  readonly plusMinus: "standard" | "expanded";
  /** The record's own word on ±, over `plusMinus`; `(1 s)` or `(2 s)` in the text is over both. */
  readonly coverage?: 1 | 2;
  /** The kind that is due; left out, any will do. */
  readonly kind?: QuantityKind;
  /** The decimal sign, `.` unless a table writes `,`. */
  readonly decimal?: "point" | "comma";
}
