import type { QuantityKind } from "../../base/quantity.ts";
import { formatIn, formatNumber } from "../../base/quantity/quantity-print.ts";
import type { Json } from "../../base/json.ts";
import { fieldsOf, membersOf } from "../../base/json.ts";
import { siSymbols } from "../../derive/derive.ts";
import type { Derived } from "../../derive/derive.ts";
import type { DerivationRecord } from "../../link/graph.ts";
import type { Plugin } from "../../plugin.ts";

/** A computed number by its name, its value and its interval as one reads them, and what it is. */
export interface NumberLine {
  readonly name: string;
  readonly value: string;
  /** `0.741 to 0.749`; an end that is not to be had is `…`; null where there is no interval. */
  readonly interval: string | null;
  readonly doc: string;
}

/** All numbers of a derivation, in the order in which its plug-in declares them, sizes in the unit its first input was written in. */
export function numberLines(derived: Derived, plugin: Plugin | undefined): readonly NumberLine[] {
  const first = plugin?.inputs.flatMap(({ name }) => derived.run?.inputs[name] ?? [])[0]?.quantity;
  return (plugin?.numbers ?? []).flatMap(({ name, kind, doc }) => {
    const number = derived.numbers[name];
    if (number === undefined) return [];
    const written =
      kind === "input" && first !== undefined ? { name: first.unit, size: first.unitSize } : none;
    const amount = (value: number | null): string =>
      value === null ? "…" : formatIn(value, written, kind === "probability" ? digitsOfP(value) : 4);
    const { value, low, high } = number;
    const interval = low === null && high === null ? null : `${amount(low)} to ${amount(high)}`;
    return [{ name, value: amount(value), interval, doc }];
  });
}

const none = { name: "1", size: 1 } as const;

/** Two digits; four where two would bring a p onto a round limit that it lies beside. */
function digitsOfP(p: number): number {
  return Number(p.toPrecision(1)) === Number(p.toPrecision(2)) ? 4 : 2;
}

/** A size in the unit of the SI with its standard uncertainty, to the same digit: `0.743 ± 0.006 m`. */
export function siWords(value: number, u: number | null, kind: QuantityKind): string {
  const unit = siSymbols[kind] === "1" ? "" : ` ${siSymbols[kind]}`;
  if (u === null || u === 0) return `${formatNumber(value, 6)}${unit}`;
  const error = formatNumber(u, 2);
  const decimals = /^\d+\.(\d+)$/.exec(error)?.[1]?.length ?? 0;
  const plain = decimals > 0 && Math.abs(value) < 1e9;
  return `${plain ? value.toFixed(decimals).replace("-", "−") : formatNumber(value, 6)} ± ${error}${unit}`;
}

/** The names of the numbers that matter most: those its claims are asked by, else its first with an interval, else its first p. */
export function mainNames(
  record: DerivationRecord,
  derived: Derived,
  plugin: Plugin | undefined,
): readonly string[] {
  const asked = (record.values["bears-on"] ?? []).flatMap((entry) =>
    [entry.supports, entry.disputes].flatMap((condition) => namesIn(condition)),
  );
  const given = [...new Set(asked)].filter((name) => derived.numbers[name] !== undefined);
  if (given.length > 0) return given;
  const names = (plugin?.numbers ?? []).filter(({ name }) => derived.numbers[name] !== undefined);
  const sized = names.find(({ name }) => derived.numbers[name]?.low !== null);
  const first = sized ?? names.find(({ kind }) => kind === "probability") ?? names[0];
  return first === undefined ? [] : [first.name];
}

/** The names of the numbers that a condition compares. */
export function namesIn(condition: Json | undefined): readonly string[] {
  return mapsIn(condition).flatMap((map) => Object.keys(map));
}

/** A condition as maps of which one must hold. */
export function mapsIn(condition: Json | undefined): readonly { readonly [key: string]: Json }[] {
  if (condition === undefined) return [];
  const members = membersOf(condition);
  return (members.length > 0 ? members : [condition]).map(fieldsOf);
}
