import {
  fieldsOf,
  formatNumber,
  membersOf,
  numberOf,
  type Computation,
  type ComputedNumber,
  type Naming,
  type Settings,
} from "../../src/plugin.ts";
import { clearanceWords, rowsIn, shownIn, signed, type Row, type Scale } from "./rows.ts";

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
): string {
  const rows = rowsIn(computation, name);
  const several = numberOf(fieldsOf(computation.data)["joints"]) > 1;
  if (tells === "together") return byChance(computation.numbers["p-fit"]);
  return [
    verdict(rows, several),
    clearances(rows, computation),
    chance(computation, rows),
    others(computation),
  ]
    .filter((sentence) => sentence !== "")
    .join(" ");
}

/** In words what the whole fit comes to, by its chance alone. */
function byChance(fit: ComputedNumber | undefined): string {
  const [low, high] = [fit?.low ?? fit?.value ?? 0, fit?.high ?? fit?.value ?? 1];
  if (high >= SMALL && low <= 0.95) return "Whether peg and socket fit together cannot be decided.";
  return `Peg and socket are ${high < SMALL ? "not " : ""}compatible (the chance is ${limits(low, high)}).`;
}

function verdict(rows: readonly Row[], several: boolean): string {
  const [pegs, sockets] = several ? ["The pegs", "their sockets"] : ["The peg", "the socket"];
  const are = several ? "are" : "is";
  const pairs = several ? "pairs of dimensions" : "dimensions";
  const all = rows.length === 1 ? "" : ` in all ${rows.length} ${pairs}`;
  const out = rows.filter(({ flag }) => flag === "impossible");
  if (out.length > 0) {
    const where = rows.length === 1 ? "" : ` in ${out.length} of ${rows.length} ${pairs}`;
    return `${pegs} ${are} not compatible with ${sockets}${where}.`;
  }
  if (rows.every(({ flag }) => flag === "fits")) return `${pegs} ${are} compatible with ${sockets}${all}.`;
  return `Whether ${pegs.toLowerCase()} ${several ? "go" : "goes"} into ${sockets} cannot be decided.`;
}

function clearances(all: readonly Row[], computation: Computation): string {
  const scale = shownIn(computation);
  const rows = all.length > MOST ? all.filter(({ flag }) => flag !== "fits") : all;
  if (rows.length === 0) return "";
  const said = rows.map((row) => {
    const named = all.length === 1 ? "" : `${row.name} `;
    return `${named}${clearanceWords(row, scale)}${intervalWords(row, scale)}, ${fitWords(row)}`;
  });
  return `Clearance: ${said.join("; ")}.`;
}

/** The 95 % interval of a difference of values; the ends of a range are their own, but for errors that come on top. */
function intervalWords({ spread, interval: [low, high] }: Row, { unit, size }: Scale): string {
  if (low === null || high === null || spread.u === 0) return "";
  const ends = `${signed(low, size)} to ${signed(high, size)} ${unit}`;
  return spread.widths.some((width) => width > 0) ? ` (with errors ${ends})` : ` (${ends})`;
}

function fitWords({ flag, side, spread, chance, possible, certain }: Row): string {
  const ranges = spread.widths.some((width) => width > 0);
  if (flag === "fits" && (!ranges || certain)) return "fits";
  if (flag === "impossible") return side === "loose" ? "too loose" : "impossible";
  if (flag === "undecidable") return "left open by a bound";
  // Whatever is likely within a range, its ends alone decide nothing.
  if (ranges && possible)
    return `undecided (a chance of ${shownChance(chance[1])} if all of the range is equally likely)`;
  return flag === "unlikely"
    ? `unlikely (a chance of ${shownChance(chance[1])})`
    : `undecided (a chance of ${shownChance(chance[1])})`;
}

function chance({ numbers, data }: Computation, rows: readonly Row[]): string {
  const fit = numbers["p-fit"];
  if (fit === undefined || rows.length === 0) return "";
  const product = limits(fit.low ?? fit.value, fit.high ?? fit.value);
  if (rows.length === 1) return `The chance to fit is ${product}.`;
  const [low = 0, high = 1] = membersOf(fieldsOf(data)["bounds"]).map(numberOf);
  const whatever = limits(low, high);
  return whatever === product
    ? `The chance that all dimensions fit is ${product}, whatever the dependence of their errors.`
    : `The chance that all dimensions fit is ${product} if their errors are independent, and ${whatever} whatever their dependence.`;
}

function limits(low: number, high: number): string {
  const [from, to] = [shownChance(low), shownChance(high)];
  if (from === to || (high > 0 && high < SMALL)) return to;
  return low > 0 && low < SMALL ? `up to ${to}` : `${from} to ${to}`;
}

function others({ data }: Computation): string {
  const { tried, chance: mean } = fieldsOf(fieldsOf(data)["crosswise"]);
  if (tried === undefined || mean === undefined) return "";
  const crossings = numberOf(tried);
  return `With a peg of another of these sockets the chance would be ${shownChance(numberOf(mean))} on average (${crossings} ${crossings === 1 ? "crossing" : "crossings"}).`;
}

/** A chance to two digits, never a bare 0 or 1 unless it is one. */
function shownChance(value: number): string {
  if (value === 0 || value === 1) return formatNumber(value);
  if (value < SMALL) return `below ${SMALL}`;
  return value > 0.999 ? "above 0.999" : formatNumber(value, 2);
}
