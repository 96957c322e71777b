import type { Id } from "../../base/finding.ts";
import type { Quantity, QuantityKind } from "../../base/quantity.ts";
import type { Text } from "../../base/text/said/said.ts";
import type { ComputedNumber, LeftOut, NumberDeclaration, Plugin } from "../../plugin.ts";
import type { BearingOn } from "../bearing.ts";
import type { Outcome, Run } from "../run.ts";

/** A computed number with the SI symbol of what it is in (`1` for a pure number), and what its plug-in says it is. */
export interface DerivedNumber extends ComputedNumber {
  readonly unit: string;
  readonly kind: NumberDeclaration["kind"];
}

/** A derivation's state: its numbers with their units, or why there are none. */
export interface Derived {
  readonly id: Id;
  readonly status: "computed" | "refused" | "failed" | "withheld" | "pending";
  /** Short word of a refusal: `too-few`, `unit-from-these-data`. */
  readonly reason: string | null;
  readonly why: Text | null;
  readonly used: readonly Id[];
  readonly leftOut: readonly LeftOut[];
  readonly merged: readonly (readonly Id[])[];
  readonly numbers: Readonly<Record<string, DerivedNumber>>;
  readonly bearings: readonly BearingOn[];
  readonly warnings: readonly string[];
  readonly run: Run | null;
  readonly outcome: Outcome | null;
}

/** A derivation without a number, and why it has none. */
export function withoutNumbers(id: Id, status: Derived["status"], why: Text | null): Derived {
  return {
    id,
    status,
    reason: null,
    why,
    used: [],
    leftOut: [],
    merged: [],
    numbers: {},
    bearings: [],
    warnings: [],
    run: null,
    outcome: null,
  };
}

/** The unit of each kind of quantity in the SI; `1` for counts and pure numbers. */
export const siSymbols: Readonly<Record<QuantityKind, string>> = {
  length: "m",
  mass: "kg",
  angle: "rad",
  time: "s",
  area: "m²",
  volume: "m³",
  count: "1",
  number: "1",
};

/** The numbers of a run with the units they are in: that of the first thing measured, where the plug-in declares so. */
export function withUnits(
  plugin: Plugin,
  run: Run,
  numbers: Readonly<Record<string, ComputedNumber>>,
): Derived["numbers"] {
  const first = plugin.inputs.flatMap((input) => run.inputs[input.name] ?? [])[0];
  const own = first ? siSymbols[first.quantity.kind] : "1";
  const kinds = new Map(plugin.numbers.map((one) => [one.name, one.kind]));
  return Object.fromEntries(
    Object.entries(numbers).map(([name, number]): [string, DerivedNumber] => {
      const kind = kinds.get(name) ?? "number";
      return [name, { ...number, unit: kind === "input" ? own : "1", kind }];
    }),
  );
}

/** A computed number as a quantity that another derivation takes, its interval of 95 % read as a normal one. */
export function asQuantity(reference: string, number: DerivedNumber): Quantity {
  const kind = (Object.entries(siSymbols).find(([, symbol]) => symbol === number.unit)?.[0] ??
    "number") as QuantityKind;
  const { value, low, high } = number;
  return {
    text: reference,
    kind: number.unit === "1" ? "number" : kind,
    form: "value",
    unit: number.unit,
    unitSize: 1,
    value,
    low: low ?? value,
    high: high ?? value,
    u: low !== null && high !== null ? (high - low) / (2 * 1.959964) : 0,
    digit: 0,
    shared: [],
  };
}
