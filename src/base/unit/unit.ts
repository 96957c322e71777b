import type { Quantity, QuantityKind } from "../quantity.ts";

/** A unit of measure: its size in SI, how well that is known, and where it comes from. */
export interface Unit {
  readonly id: string;
  /** The name used in sentences: the symbol of a modern unit (`mm`), else the full name (`Roman foot`). */
  readonly name: string;
  /** Matched exactly, with case. */
  readonly symbols: readonly string[];
  /** Matched without regard to case, hyphens and plural. */
  readonly names: readonly string[];
  /** Names too loose to be read (`pes`, `deben`), which lead to this unit when somebody uses them. */
  readonly looseNames: readonly string[];
  readonly kind: QuantityKind;
  /** In metres, kilograms, radians, seconds; 1 for pure numbers. */
  readonly size: number;
  /** Standard uncertainty of the size, in the same unit. */
  readonly u: number;
  /** No range is published, and 1 % stands in for it. */
  readonly uAssumed: boolean;
  readonly source: string;
  readonly note: string | null;
  /** Defined by the corpus, not built in. */
  readonly own: boolean;
}

/** A unit of the corpus's own, from the quantity that `is` states; null when that is a bound or not above 0. */
export function ownUnit(id: string, also: readonly string[], is: Quantity, source: string): Unit | null {
  if (is.u === null || !(is.value > 0)) return null;
  const common = is.shared.map((error) => error.relative * is.value);
  const names = [id, ...also];
  return {
    id,
    name: id,
    symbols: names,
    names,
    looseNames: [],
    kind: is.kind,
    size: is.value,
    u: Math.hypot(is.u, ...common),
    uAssumed: false,
    source,
    note: null,
    own: true,
  };
}

/** `n` of a unit in SI, to 15 digits: 18.2 cm are 0.182 m, with no dust of binary fractions behind. */
export function toSI(n: number, unit: Pick<Unit, "size">): number {
  return tidy(n * unit.size);
}

/** A value in SI as a number of units, to 15 digits. */
export function fromSI(value: number, unit: Pick<Unit, "size">): number {
  return tidy(value / unit.size);
}

/** A number rounded to the 15 significant digits that a double always carries. */
export function tidy(value: number): number {
  return Number.isFinite(value) ? Number(value.toPrecision(15)) : value;
}
