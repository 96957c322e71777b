import { SMALLEST_P } from "../../base/numeric/index.ts";
import { alike, formatComputed, formatIn, writtenUnit } from "../../base/quantity/quantity-print.ts";
import { say } from "../../base/text/said/said.ts";
import type { Text } from "../../base/text/said/said.ts";
import type { Json } from "../../base/json.ts";
import { fieldsOf, membersOf } from "../../base/json.ts";
import type { Derived } from "../../derive/derived/derived.ts";
import { labelText, withoutStop } from "../../link/names/label.ts";
import type { DerivationRecord, Graph } from "../../link/graph.ts";
import type { NumberDeclaration, Plugin } from "../../plugin.ts";

/** A computed number by its name, its value and its interval as one reads them, and what it is. */
export interface NumberLine {
  readonly name: string;
  readonly value: string;
  /** `0.741 to 0.749`; an end that is not to be had is `…`; null where there is no interval. */
  readonly interval: Text | null;
  readonly doc: Text;
}

/** All numbers of a derivation, in the order in which its plug-in declares them, sizes in the unit its first input was written in. */
export function numberLines(derived: Derived, plugin: Plugin | undefined): readonly NumberLine[] {
  const first = plugin?.inputs.flatMap(({ name }) => derived.run?.inputs[name] ?? [])[0]?.quantity;
  return (plugin?.numbers ?? []).flatMap(({ name, kind, doc }) => {
    const number = numberIn(derived, name);
    if (number === undefined) return [];
    const { unit, size } = writtenUnit(kind === "input" ? first : undefined);
    const written = { name: unit, size };
    const amount = (value: number | null): string => {
      if (value === null) return "…";
      const digits = digitsOf(kind, value);
      return kind === "input" ? formatIn(value, written, digits) : formatComputed(value, kind, digits);
    };
    const { value, low, high } = number;
    const isBare = low === null && high === null;
    const [said = "", from = "", to = ""] = isBare ? [amount(value)] : alike([value, low, high].map(amount));
    const below = kind === "number" && value === SMALLEST_P ? "< " : "";
    return [{ name, value: below + said, interval: isBare ? null : say`${from} to ${to}`, doc }];
  });
}

/** All of a count; of a p two, and four where two would bring it onto a round limit that it lies beside; of all else four. */
function digitsOf(kind: NumberDeclaration["kind"], value: number): number {
  if (kind === "count") return 15;
  if (kind !== "probability") return 4;
  return Number(value.toPrecision(1)) === Number(value.toPrecision(2)) ? 4 : 2;
}

/** What a derivation is called: its own words whole, else its method's. */
export function titleOf(graph: Graph, { id, values }: DerivationRecord): Text {
  return values.text === undefined ? labelText(graph, id) : withoutStop(values.text);
}

/** A number with its interval, where it has one: `0.743 m (0.741 m to 0.745 m)`. */
export function valueWords({ value, interval }: NumberLine): Text {
  return interval === null ? value : say`${value} (${interval})`;
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
  const given = [...new Set(asked)].filter((name) => numberIn(derived, name) !== undefined);
  if (given.length > 0) return given;
  const names = (plugin?.numbers ?? []).filter(({ name }) => numberIn(derived, name) !== undefined);
  const sized = names.find(({ name }) => numberIn(derived, name)?.low !== null);
  const first = sized ?? names.find(({ kind }) => kind === "probability") ?? names[0];
  return first === undefined ? [] : [first.name];
}

/** A number by a name that may be anybody's, `constructor` among them. */
function numberIn({ numbers }: Derived, name: string): Derived["numbers"][string] | undefined {
  return Object.hasOwn(numbers, name) ? numbers[name] : undefined;
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
