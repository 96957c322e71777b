import {
  fieldsOf,
  formatNumber,
  formatP,
  type Computation,
  type Naming,
  type Settings,
} from "../../src/plugin.ts";
import { claimedIn, pairsIn, type Row } from "./rows.ts";

/** What the review's methods section prints; the words for what p says are fixed. */
export function scalingSentence(
  computation: Computation,
  _settings: Settings,
  name: Naming,
  tells: "each" | "together" = "each",
): string {
  const rows = tells === "together" ? [] : pairsIn(computation, name);
  return [oneFactor(computation, rows), claimed(computation, rows)]
    .filter((sentence) => sentence !== "")
    .join(" ");
}

function oneFactor(computation: Computation, rows: readonly Row[]): string {
  const { numbers } = computation;
  const k = numbers["k"];
  const p = numbers["p"]?.value;
  const n = numbers["n"]?.value ?? 0;
  const ends = k && k.low !== null && k.high !== null ? ` (${shown(k.low)} to ${shown(k.high)})` : "";
  const factor = `${shown(k?.value ?? 0)}${ends}`;
  if (p === undefined) {
    return `One pair of dimensions gives a ratio of ${factor}; whether it is the scale of the whole cannot be decided.`;
  }
  const detectable = numbers["detectable"];
  const missed = detectable ? `; a departure of ${percent(detectable.value)} would hardly be missed` : "";
  const test = `Cochran's test: ${formatP(p)}${missed}`;
  if (p >= 0.05)
    return `${n} pairs of dimensions are compatible with one scale factor of ${factor} (${test}).`;
  const departing = rows.filter((row) => row.departs);
  const who =
    departing.length === 0 ? "" : `; furthest from it: ${departing.map((row) => row.name).join(", ")}`;
  const none = `${n} pairs of dimensions are not compatible with one scale factor, at best ${factor}${who} (${test}).`;
  return [none, extremes(rows), needed(computation)].filter((sentence) => sentence !== "").join(" ");
}

/** The smallest and the largest ratio. */
function extremes(rows: readonly Row[]): string {
  const inOrder = rows.toSorted((a, b) => a.ratio - b.ratio);
  const [least, most] = [inOrder[0], inOrder.at(-1)];
  if (least === undefined || most === undefined || least === most) return "";
  return `The ratios run from ${shown(least.ratio)} (${least.name}) to ${shown(most.ratio)} (${most.name}).`;
}

function needed({ data }: Computation): string {
  const share = fieldsOf(data)["toleranceNeeded"];
  if (typeof share !== "number") return "";
  return `One factor would need a tolerance of ${percent(share)}: so much the products of one maker would have to vary by nature.`;
}

/** What becomes of a factor that somebody named. */
function claimed(computation: Computation, rows: readonly Row[]): string {
  const held = claimedIn(computation);
  if (held === null || rows.length === 0) return "";
  const met = rows.filter((_, at) => held.meets[at] === true).map((row) => row.name);
  const place = held.lies === "between" ? "lies between the ratios" : `lies ${held.lies} every ratio`;
  const those =
    met.length === rows.length ? "all of them" : met.length === 0 ? "none of them" : `only ${met.join(", ")}`;
  return `The factor of ${shown(held.factor)} that is claimed ${place}; within twice its standard uncertainty it meets ${those}.`;
}

function percent(share: number): string {
  return `${formatNumber(100 * share, 2)} %`;
}

function shown(factor: number): string {
  return formatNumber(factor, 4);
}
