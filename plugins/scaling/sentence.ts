import { formatNumber, formatP, type Computation, type Naming, type Settings } from "../../src/plugin.ts";
import { pairsIn } from "./rows.ts";

/** What the review's methods section prints; the words for what p says are fixed. */
export function scalingSentence(computation: Computation, _settings: Settings, name: Naming): string {
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
  const missed = detectable
    ? `; a departure of ${formatNumber(100 * detectable.value, 2)} % would hardly be missed`
    : "";
  const test = `Cochran's test: ${formatP(p)}${missed}`;
  if (p >= 0.05)
    return `${n} pairs of dimensions are compatible with one scale factor of ${factor} (${test}).`;
  const departing = pairsIn(computation, name).filter((row) => row.departs);
  const who =
    departing.length === 0 ? "" : `; furthest from it: ${departing.map((row) => row.name).join(", ")}`;
  return `${n} pairs of dimensions are not compatible with one scale factor, at best ${factor}${who} (${test}).`;
}

function shown(factor: number): string {
  return formatNumber(factor, 4);
}
