import {
  fieldsOf,
  formatNumber,
  membersOf,
  numberOf,
  row as inRow,
  say,
  textOf,
  type Computation,
  type Json,
  type Naming,
  type Pair,
  type Text,
} from "../../src/plugin.ts";
import type { Flag, Size } from "./fit/dimension.ts";
import type { Spread } from "./fit/spread.ts";

type Ends = readonly [number | null, number | null];

/** One dimension of socket and peg as the figure and the sentence read it, in SI. */
export interface Row {
  readonly name: Text;
  readonly outer: Size;
  readonly inner: Size;
  readonly spread: Spread;
  readonly ends: Ends;
  readonly interval: Ends;
  readonly chance: readonly [number, number];
  readonly flag: Flag;
  readonly certain: boolean;
  readonly possible: boolean;
  readonly side: "tight" | "loose";
}

/** A unit that sizes are shown in, and its size in SI. */
export interface Scale {
  readonly unit: string;
  readonly size: number;
}

/** The unit of the first size. */
export function shownIn(computation: Computation): Scale {
  const shown = fieldsOf(fieldsOf(computation.data)["shown"]);
  return { unit: textOf(shown["unit"]) || "m", size: numberOf(shown["size"]) || 1 };
}

/** The dimensions of a computation, named by dimension, by socket where there are several, or by both. */
export function rowsIn(computation: Computation, name: Naming): readonly Row[] {
  const rows = membersOf(fieldsOf(computation.data)["rows"]).map(fieldsOf);
  const single = new Set(rows.map((row) => textOf(row["dimension"]))).size === 1;
  return rows.map((row) => {
    const [own, other] = [textOf(row["dimension"]), textOf(row["pegDimension"])];
    const dimension = own === other ? own : say`${own} to ${other}`;
    const socket = name(textOf(row["socket"]));
    const alike = rows.filter((one) => one["dimension"] === row["dimension"]).length > 1;
    const [a = 0, b = 0] = numbersOf(row["widths"]);
    const [from = 0, to = 0] = numbersOf(row["chance"]);
    return {
      name: rows.length > 1 && single ? socket : alike ? say`${dimension} of ${socket}` : dimension,
      outer: sizeIn(row["outer"]),
      inner: sizeIn(row["inner"]),
      spread: { centre: numberOf(row["value"]), widths: [a, b], u: numberOf(row["u"]) },
      ends: endsIn(row["ends"]),
      interval: endsIn(row["interval"]),
      chance: [from, to],
      flag: flagIn(row["flag"]),
      certain: row["certain"] === true,
      possible: row["possible"] === true,
      side: row["side"] === "loose" ? "loose" : "tight",
    };
  });
}

/** The names of dimensions in a row. */
export function namesOf(rows: readonly Row[]): ReturnType<typeof inRow> {
  return inRow(
    rows.map((row) => row.name),
    "comma",
  );
}

/** A clearance with its sign and unit: `+0.3 cm`, `−0.1 to +0.4 cm`, `at least −6 mm`; of a value without its interval. */
export function clearanceWords({ spread, ends: [low, high] }: Row, { unit, size }: Scale): Text {
  const written = (end: number): string => `${signed(end, size)} ${unit}`;
  if (low === null) return high === null ? say`of any size` : say`at most ${written(high)}`;
  if (high === null) return say`at least ${written(low)}`;
  const range = spread.widths.some((width) => width > 0);
  return range ? say`${signed(low, size)} to ${written(high)}` : written(high);
}

/** A clearance with its sign, to three digits. */
export function signed(value: number, size: number): string {
  const words = formatNumber(value / size, 3);
  // What rounding has left of nothing is nothing.
  if (Math.abs(value / size) < 1e-12) return "0";
  return value > 0 ? `+${words}` : words;
}

function sizeIn(value: Json | undefined): Size {
  const size = fieldsOf(value);
  const open = size["open"];
  return {
    value: numberOf(size["value"]),
    width: numberOf(size["width"]),
    u: numberOf(size["u"]),
    open: open === "more" || open === "less" ? open : null,
  };
}

function flagIn(value: Json | undefined): Flag {
  const flag = textOf(value);
  return flag === "impossible" || flag === "unlikely" || flag === "fits" || flag === "undecidable"
    ? flag
    : "uncertain";
}

function endsIn(value: Json | undefined): Ends {
  const [low = null, high = null] = membersOf(value).map((end) => (typeof end === "number" ? end : null));
  return [low, high];
}

function numbersOf(value: Json | undefined): readonly number[] {
  return membersOf(value).map(numberOf);
}

/** The 95 % ends of a size, or of a range its own; null where it is a bound or exact. */
export function endsOfSize({ value, width, u, open }: Size): Pair | null {
  const reach = width / 2 + 1.96 * u;
  return open !== null || reach === 0 ? null : [value - reach, value + reach];
}
