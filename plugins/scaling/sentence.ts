import {
  alike,
  count,
  fieldsOf,
  formatNumber,
  formatP,
  paragraph,
  row,
  say,
  type Computation,
  type Naming,
  type Said,
  type Settings,
  type Text,
} from "../../src/plugin.ts";
import { claimedIn, pairsIn, type Row } from "./rows.ts";

/** What the review's methods section prints; the words for what p says are fixed. */
export function scalingSentence(
  computation: Computation,
  _settings: Settings,
  name: Naming,
  tells: "each" | "together" = "each",
): Text {
  const rows = tells === "together" ? [] : pairsIn(computation, name);
  return paragraph([oneFactor(computation, rows), claimed(computation, rows)]);
}

function oneFactor(computation: Computation, rows: readonly Row[]): Text {
  const { numbers } = computation;
  const k = numbers["k"];
  const p = numbers["p"]?.value;
  const n = numbers["n"]?.value ?? 0;
  const best = shown(k?.value ?? 0);
  const factor = k && k.low !== null && k.high !== null ? interval(k.value, k.low, k.high) : best;
  if (p === undefined) {
    return say`One pair of dimensions gives a ratio of ${factor}; whether it is the scale of the whole cannot be decided.`;
  }
  const detectable = numbers["detectable"];
  const test = detectable
    ? say`Cochran's test: ${formatP(p)}; a departure of ${percent(detectable.value)} would hardly be missed`
    : say`Cochran's test: ${formatP(p)}`;
  if (p >= 0.05)
    return say`${count(n)} pairs of dimensions are compatible with one scale factor of ${factor} (${test}).`;
  const departing = rows.filter((one) => one.departs).map((one) => one.name);
  const none =
    departing.length === 0
      ? say`${count(n)} pairs of dimensions are not compatible with one scale factor, at best ${factor} (${test}).`
      : say`${count(n)} pairs of dimensions are not compatible with one scale factor, at best ${factor}; furthest from it: ${row(departing, "comma")} (${test}).`;
  return paragraph([none, extremes(rows), needed(computation)]);
}

function interval(...ends: readonly [number, number, number]): Said {
  const [value = "", low = "", high = ""] = alike(ends.map(shown));
  return say`${value} (${low} to ${high})`;
}

/** The smallest and the largest ratio. */
function extremes(rows: readonly Row[]): Said | null {
  const inOrder = rows.toSorted((a, b) => a.ratio - b.ratio);
  const [least, most] = [inOrder[0], inOrder.at(-1)];
  if (least === undefined || most === undefined || least === most) return null;
  return say`The ratios run from ${shown(least.ratio)} (${least.name}) to ${shown(most.ratio)} (${most.name}).`;
}

function needed({ data }: Computation): Said | null {
  const share = fieldsOf(data)["toleranceNeeded"];
  if (typeof share !== "number") return null;
  return say`One factor would need a tolerance of ${percent(share)}: so much the products of one maker would have to vary by nature.`;
}

/** What becomes of a factor that somebody named. */
function claimed(computation: Computation, rows: readonly Row[]): Said | null {
  const held = claimedIn(computation);
  if (held === null || rows.length === 0) return null;
  const factor = shown(held.factor);
  const met = rows.filter((_, at) => held.meets[at] === true).map((one) => one.name);
  const lies = placeOf(held.lies);
  if (met.length === rows.length)
    return say`The factor of ${factor} that is claimed ${lies}; within twice its standard uncertainty it meets all of them.`;
  return met.length === 0
    ? say`The factor of ${factor} that is claimed ${lies}; within twice its standard uncertainty it meets none of them.`
    : say`The factor of ${factor} that is claimed ${lies}; within twice its standard uncertainty it meets only ${row(met, "comma")}.`;
}

function placeOf(lies: string): Said {
  if (lies === "between") return say`lies between the ratios`;
  return lies === "above" ? say`lies above every ratio` : say`lies below every ratio`;
}

function percent(share: number): string {
  return `${formatNumber(100 * share, 2)} %`;
}

function shown(factor: number): string {
  return formatNumber(factor, 4);
}
