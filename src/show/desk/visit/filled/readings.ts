import {
  formatNumber,
  formatWithU,
  placesOf,
  twoPlacesOf,
} from "../../../../base/quantity/quantity-print.ts";
import { parseQuantity } from "../../../../base/quantity/quantity-text.ts";
import type { QuantityContext, QuantityProblem } from "../../../../base/quantity/quantity-text.ts";
import type { Quantity, QuantityKind } from "../../../../base/quantity.ts";
import { kindWords } from "../../../../base/unit/kind-words.ts";
import { coded, say } from "../../../../base/text/said/said.ts";
import type { Text } from "../../../../base/text/said/said.ts";
import { repeated } from "../repeat.ts";
import type { Repeated } from "../repeat.ts";

/** What is wrong with a reading (by its place; null for what stands beside them), and what would mend it. */
export interface ReadingTrouble {
  readonly at: number | null;
  readonly message: Text;
  readonly fix: string | null;
}

/** Readings of one dimension as they are written into a file, and what they come to. */
export interface ReadingsTold {
  readonly troubles: readonly ReadingTrouble[];
  /** Every reading with its unit. */
  readonly readings: readonly string[];
  /** The value as it is written: the mean ± half of what holds it with 95 %, or a single reading as it is; null while there is none. */
  readonly value: string | null;
  readonly quantity: Quantity | null;
  /** What the instrument was read to, as it is written; empty where nobody says, or not of this kind. */
  readonly nearest: string;
  /** In the unit of the readings; null for fewer than two. */
  readonly summary: Summary | null;
}

/** Repeated readings summed up, each figure with its unit as text. */
export interface Summary {
  readonly n: number;
  readonly mean: string;
  readonly spread: string;
  readonly ofMean: string;
  readonly u: string;
  readonly half: string;
  readonly t: string;
}

/** How a row's readings are read. */
export interface ReadAs {
  readonly context: QuantityContext;
  readonly kind: QuantityKind | null;
  readonly unit: string;
  /** What the instrument was read to, with its unit; empty where the readings' last digits tell it. */
  readonly nearest: string;
  /** It is said for this row alone: one for the whole sheet holds for what is of its kind, a caliper's not for a balance. */
  readonly own?: boolean;
}

const nothing = { readings: [], value: null, quantity: null, nearest: "", summary: null } as const;

/** Readings as they were typed, with their mean and its uncertainty, or what is wrong with them. */
export function readingsTold(typed: readonly string[], as: ReadAs): ReadingsTold {
  const troubles: ReadingTrouble[] = [];
  const read = typed.flatMap((text, at) => {
    if (text.trim() === "") return [];
    const one = readingOf(text.trim(), as);
    if ("ok" in one) return [one];
    troubles.push({ at, ...one });
    return [];
  });
  const measured = { ...as, kind: as.kind ?? read[0]?.ok.kind ?? null };
  const said = isOfKind(measured) ? as.nearest.trim() : "";
  const nearest = said === "" ? null : nearestOf(measured);
  if (nearest && "message" in nearest) troubles.push({ at: null, ...nearest });
  const whole = troubles.length === 0 ? togetherTrouble(read.map((one) => one.ok)) : null;
  if (whole) troubles.push({ at: null, message: whole, fix: null });
  const [first] = read;
  if (troubles.length > 0 || !first) return { ...nothing, troubles };
  const readings = read.map((one) => one.written);
  if (read.length === 1)
    return { troubles, readings, value: first.written, quantity: first.ok, nearest: said, summary: null };
  const size = first.ok.unitSize;
  const step = nearest && "ok" in nearest ? nearest.ok.value : Math.max(...read.map((one) => one.ok.digit));
  const sums = repeated(
    read.map((one) => one.ok.value / size),
    step / size,
  );
  const told = valueOf(sums, first, as);
  if ("code" in told) return { ...nothing, troubles: [{ at: null, message: told.message, fix: null }] };
  return { troubles, readings, ...told, nearest: said, summary: summaryOf(sums, first.unit) };
}

type Read = { readonly ok: Quantity; readonly written: string; readonly unit: string };
type Bad = { readonly message: Text; readonly fix: string | null };

/** A reading, with the row's unit where it has none of its own. */
function readingOf(text: string, { context, kind, unit }: ReadAs): Read | Bad {
  const due = kind === null ? context : { ...context, kind };
  const isBare = /\p{N}/u.test(text) && !/[\p{L}°′″'"%]/u.test(withoutWords(text));
  const written = isBare && unit !== "" ? withUnit(text, unit) : text;
  const read = parseQuantity(written, due);
  if ("problem" in read) {
    const { message, replacement, otherwise } = read.problem;
    return { message, fix: otherwise === undefined ? (replacement ?? null) : null };
  }
  const own = written.replace(/^[^\p{L}°′″%]*/u, "");
  // Of several units (`5 ft 4 in`) the first is what its sums are in.
  const single = /^[^\d]*$/u.test(own) && "ok" in parseQuantity(withUnit("1", own), due);
  return { ok: read.ok, written, unit: isBare ? unit : single ? own : read.ok.unit };
}

/** A figure without the words that stand before one: `about`, `at least`. */
function withoutWords(text: string): string {
  return text.replace(/^[\p{L}\s.]+(?=\p{N})/u, "");
}

function withUnit(figure: string, unit: string): string {
  return unit === "" ? figure : `${figure}${unit === "°" ? "" : " "}${unit}`;
}

function isOfKind({ context, kind, nearest, own = true }: ReadAs): boolean {
  const read = own || kind === null ? null : parseQuantity(nearest, { ...context, kind });
  if (read === null || "ok" in read) return true;
  return read.problem.code !== "wrong-kind" && read.problem.code !== "missing-unit";
}

/** What the instrument was read to: a plain size above 0. */
function nearestOf({ context, kind, nearest }: ReadAs): { readonly ok: Quantity } | Bad {
  const read = parseQuantity(nearest, kind === null ? context : { ...context, kind });
  if ("problem" in read) return { message: read.problem.message, fix: read.problem.replacement ?? null };
  if (read.ok.form === "value" && read.ok.value > 0) return read;
  return {
    message: say`Unexpected \`${nearest.trim()}\`, expected a step above 0 such as ${coded("0.1 mm")}`,
    fix: null,
  };
}

/** Why readings cannot be summed up together; null where they can. */
function togetherTrouble(read: readonly Quantity[]): Text | null {
  const [first] = read;
  if (!first || read.length < 2) return null;
  const other = read.find((one) => one.kind !== first.kind);
  if (other)
    return say`Unexpected ${kindWords[other.kind]} \`${other.text}\` beside \`${first.text}\`, expected readings of one kind`;
  const unfit = read.find(
    (one) => one.form !== "value" || one.unit !== first.unit || /±|\+\/?-/u.test(one.text),
  );
  if (unfit)
    return say`Unexpected reading \`${unfit.text}\` among several, expected plain values in one unit: a bound, a range or what has its own ± stands alone`;
  const values = read.map((one) => one.value);
  if (first.kind === "angle" && Math.max(...values) - Math.min(...values) > Math.PI)
    return say`Unexpected angles more than half a turn apart, expected those on both sides of north counted on: ${"359°"}, ${"361°"}`;
  const counts = first.kind === "count" ? new Set(read.map((one) => one.value)).size : 1;
  return counts > 1 ? say`Unexpected counts that differ, expected the same: count again` : null;
}

function valueOf(
  sums: Repeated,
  { ok, unit, written }: Read,
  { context, kind }: ReadAs,
): Pick<ReadingsTold, "value" | "quantity"> | QuantityProblem {
  const figures = formatWithU(sums.mean, sums.stated, twoPlacesOf(sums.stated)).replaceAll("−", "-");
  const sign = context.plusMinus === "expanded" ? " (1 s)" : "";
  const joined = unit === "°" ? figures.replace(" ± ", "° ± ") : figures;
  const value = ok.kind === "count" || sums.u === 0 ? written : `${withUnit(joined, unit)}${sign}`;
  const read = parseQuantity(value, kind === null ? context : { ...context, kind });
  return "ok" in read ? { value, quantity: read.ok } : read.problem;
}

function summaryOf(sums: Repeated, unit: string): Summary {
  const places = placesOf(sums.u);
  const plain = (value: number | null): string => withUnit(formatNumber(value ?? 0, 2), unit);
  return {
    n: sums.n,
    mean: withUnit(formatWithU(sums.mean, null, places), unit),
    spread: plain(sums.spread),
    ofMean: plain(sums.ofMean),
    u: plain(sums.u),
    half: plain(sums.half),
    t: formatNumber(sums.t ?? 0, 3),
  };
}
