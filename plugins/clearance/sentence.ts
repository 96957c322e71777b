import {
  fieldsOf,
  formatNumber,
  inEnglish,
  membersOf,
  numberOf,
  paragraph,
  say,
  type Computation,
  type ComputedNumber,
  type Naming,
  type Settings,
  type Text,
} from "../../src/plugin.ts";
import { clearanceWords, rowsIn, shownIn, signed, type Row, type Scale } from "./rows.ts";
import { crossed, verdict } from "./verdict.ts";

/** With more dimensions than this only those that do not surely fit are named. */
const MOST = 6;
/** A chance below this is only said to be below it. */
const SMALL = 0.001;

/** What the review's methods section prints; the words for what a chance says are fixed. */
export function clearanceSentence(
  computation: Computation,
  _settings: Settings,
  name: Naming,
  tells: "each" | "together" = "each",
): Text {
  const rows = rowsIn(computation, name);
  const several = numberOf(fieldsOf(computation.data)["joints"]) > 1;
  if (tells === "together") return byChance(computation.numbers["p-fit"]);
  return paragraph([
    verdict(rows, several),
    clearances(rows, computation),
    chance(computation, rows),
    others(computation),
  ]);
}

/** In words what the whole fit comes to, by its chance alone. */
function byChance(fit: ComputedNumber | undefined): Text {
  const [low, high] = [fit?.low ?? fit?.value ?? 0, fit?.high ?? fit?.value ?? 1];
  if (high >= SMALL && low <= 0.95) return say`Whether peg and socket fit together cannot be decided.`;
  return high < SMALL
    ? say`Peg and socket are not compatible (the chance is ${limits(low, high)}).`
    : say`Peg and socket are compatible (the chance is ${limits(low, high)}).`;
}

function clearances(all: readonly Row[], computation: Computation): Text | null {
  const scale = shownIn(computation);
  const rows = all.length > MOST ? all.filter(({ flag }) => flag !== "fits") : all;
  const [lead, ...more] = rows.map((row): Text => {
    const size = withInterval(row, scale);
    return all.length === 1 ? say`${size}, ${fitWords(row)}` : say`${row.name} ${size}, ${fitWords(row)}`;
  });
  if (lead === undefined) return null;
  return say`Clearance: ${more.reduce((before, next) => say`${before}; ${next}`, lead)}.`;
}

/** With the 95 % interval of a difference of values; the ends of a range are their own, but for errors that come on top. */
function withInterval(row: Row, scale: Scale): Text {
  const { spread, interval } = row;
  const [low, high] = interval;
  const words = clearanceWords(row, scale);
  if (low === null || high === null || spread.u === 0) return words;
  const [from, to] = [signed(low, scale.size), `${signed(high, scale.size)} ${scale.unit}`];
  return spread.widths.some((width) => width > 0)
    ? say`${words} (with errors ${from} to ${to})`
    : say`${words} (${from} to ${to})`;
}

function fitWords({ flag, side, spread, chance, possible, certain }: Row): Text {
  const ranges = spread.widths.some((width) => width > 0);
  if (flag === "fits" && (!ranges || certain)) return say`fits`;
  if (flag === "impossible") return side === "loose" ? say`too loose` : say`impossible`;
  if (flag === "undecidable") return say`left open by a bound`;
  // Whatever is likely within a range, its ends alone decide nothing.
  if (ranges && possible)
    return say`undecided (a chance of ${shownChance(chance[1])} if all of the range is equally likely)`;
  return flag === "unlikely"
    ? say`unlikely (a chance of ${shownChance(chance[1])})`
    : say`undecided (a chance of ${shownChance(chance[1])})`;
}

function chance({ numbers, data }: Computation, rows: readonly Row[]): Text | null {
  const fit = numbers["p-fit"];
  if (fit === undefined || rows.length === 0) return null;
  const product = limits(fit.low ?? fit.value, fit.high ?? fit.value);
  if (rows.length === 1) return say`The chance to fit is ${product}.`;
  const [low = 0, high = 1] = membersOf(fieldsOf(data)["bounds"]).map(numberOf);
  const whatever = limits(low, high);
  return isSame(whatever, product)
    ? say`The chance that all dimensions fit is ${product}, whatever the dependence of their errors.`
    : say`The chance that all dimensions fit is ${product} if their errors are independent, and ${whatever} whatever their dependence.`;
}

function limits(low: number, high: number): Text {
  const [from, to] = [shownChance(low), shownChance(high)];
  if (isSame(from, to) || (high > 0 && high < SMALL)) return to;
  return low > 0 && low < SMALL ? say`up to ${to}` : say`${from} to ${to}`;
}

function others({ data }: Computation): Text | null {
  const { tried, chance: mean } = fieldsOf(fieldsOf(data)["crosswise"]);
  if (tried === undefined || mean === undefined) return null;
  return crossed(shownChance(numberOf(mean)), numberOf(tried));
}

/** A chance to two digits, in words where it is near 0 or 1. */
function shownChance(value: number): Text {
  if (value === 0 || value === 1) return formatNumber(value);
  if (value < SMALL) return say`below ${String(SMALL)}`;
  return value > 0.999 ? say`above ${"0.999"}` : formatNumber(value, 2);
}

function isSame(one: Text, other: Text): boolean {
  return inEnglish(one) === inEnglish(other);
}
