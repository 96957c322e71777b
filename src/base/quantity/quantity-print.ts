import { SMALLEST_P } from "../numeric/index.ts";
import type { Quantity, QuantityKind } from "../quantity.ts";
import { fromSI, type Unit } from "../unit/unit.ts";

/** Above this a probability is only said to be above it. */
const NEARLY_ONE = 0.999;

type Step = readonly [from: number, size: number, unit: string];

const steps: Readonly<Record<QuantityKind, readonly Step[]>> = {
  length: [
    [1000, 1000, " km"],
    [1, 1, " m"],
    [0.01, 0.01, " cm"],
    [0.0001, 0.001, " mm"],
    [0, 1e-6, " µm"],
  ],
  mass: [
    [1000, 1000, " t"],
    [1, 1, " kg"],
    [0.001, 0.001, " g"],
    [0, 1e-6, " mg"],
  ],
  angle: [[0, Math.PI / 180, "°"]],
  time: [
    [31557600, 31557600, " years"],
    [86400, 86400, " days"],
    [3600, 3600, " h"],
    [60, 60, " min"],
    [0, 1, " s"],
  ],
  area: [
    [10000, 10000, " ha"],
    [1, 1, " m²"],
    [0, 1e-4, " cm²"],
  ],
  volume: [
    [1, 1, " m³"],
    [0.001, 0.001, " l"],
    [0, 1e-6, " cm³"],
  ],
  count: [[0, 1, ""]],
  number: [[0, 1, ""]],
};

/** A value in SI for a sentence, in the unit that suits its magnitude, to four digits unless told otherwise. */
export function formatSI(value: number, kind: QuantityKind, significant = 4): string {
  const scale = steps[kind];
  const [, size, unit] = scale.find(([from]) => Math.abs(value) >= from) ?? [0, 1, ""];
  const [, plainSize, plainUnit] =
    value === 0 ? (scale.find(([from]) => from <= 1) ?? [0, size, unit]) : [0, size, unit];
  return formatNumber(fromSI(value, { size: plainSize }), significant) + plainUnit;
}

/** A value in SI as so many of a unit, named as its table has it: `3.4 Roman foot`. */
export function formatIn(value: number, unit: Pick<Unit, "name" | "size">, significant = 4): string {
  const number = formatNumber(fromSI(value, unit), significant);
  if (unit.name === "1" || unit.name === "") return number;
  return number + (/^[°′″]/u.test(unit.name) ? "" : " ") + unit.name;
}

/**
 * A probability, to two digits unless told otherwise: never 0 or 1 unless it is exactly that. One at or below what can be
 * told from 0 is only said to be below it, one above 0.999 to be above that.
 */
export function formatProbability(p: number, significant = 2): string {
  if (p === 0 || p === 1) return formatNumber(p);
  if (p > 0 && p <= SMALLEST_P) return `< ${formatNumber(SMALLEST_P)}`;
  if (p > NEARLY_ONE && p < 1) return `> ${NEARLY_ONE}`;
  return formatNumber(p, p > 0.99 && p < 1 ? Math.max(3, significant) : significant);
}

/**
 * A computed number: four digits unless told otherwise, never 0 or 1 where it is the p of a test or a chance that is not. The
 * p of a test is never 0: what came out so is only too small for a number.
 */
export function formatComputed(value: number, kind: string, significant = 4): string {
  if (kind === "probability" && value === 0) return formatProbability(SMALLEST_P);
  const likely = kind === "probability" || kind === "chance";
  return likely ? formatProbability(value, significant) : formatNumber(value, significant);
}

/** A p for a sentence, to two digits: `p = 0.012`, `p < 10⁻⁹`. */
export function formatP(p: number): string {
  const said = formatProbability(p <= 0 ? SMALLEST_P : p);
  return /^[<>]/u.test(said) ? `p ${said}` : `p = ${said}`;
}

/**
 * A value with its standard uncertainty, both in the same unit: the uncertainty to one digit, to two where it begins with 1,
 * the value to the same place (GUM 7.2.6 asks for two at most). Without an uncertainty the value alone, to `places`.
 */
export function formatWithU(value: number, u: number | null, places = placesOf(u ?? 0)): string {
  const said = formatTo(value, places);
  return u === null || u === 0 ? said : `${said} ± ${formatTo(u, places)}`;
}

/** Decimal places of an uncertainty's last digit worth printing; below 0, tens and hundreds; null where all are. */
export function placesOf(u: number): number | null {
  if (!(u > 0)) return null;
  const [mantissa = "", power = "0"] = u.toExponential(1).split("e");
  return -Number(power) + (mantissa.startsWith("1") ? 1 : 0);
}

/** Decimal places of an uncertainty's second digit (GUM 7.2.6): what is computed with again is not rounded to one. */
export function twoPlacesOf(u: number): number | null {
  return u > 0 ? 1 - Number(u.toExponential(1).split("e")[1] ?? "0") : null;
}

function formatTo(value: number, places: number | null): string {
  if (places === null) return formatNumber(value, 12);
  const step = 10 ** -places;
  const text =
    places > 0
      ? Math.abs(value).toFixed(Math.min(places, 12))
      : String(Math.round(Math.abs(value) / step) * step);
  return value < 0 && Number(text) !== 0 ? `−${text}` : text;
}

/**
 * Numbers that are read together, as they are printed: of one magnitude they have as many decimals as each other, so that an
 * interval is `2.008 (1.980 to 2.036)`; others stay as they are.
 */
export function alike(printed: readonly string[]): readonly string[] {
  const numbers = printed.map((one) => /^(−?\d+)(?:\.(\d+))?(?![\d.,×])(?! ×)/u.exec(one));
  const sizes = numbers.map((one) => (one ? Math.abs(Number(one[0].replace("−", "-"))) : 0));
  if (Math.min(...sizes) === 0 || Math.max(...sizes) >= 10 * Math.min(...sizes)) return printed;
  const places = Math.max(...numbers.map((one) => one?.[2]?.length ?? 0));
  if (places === 0) return printed;
  return printed.map((one, at) => {
    const [whole = "", before = "", decimals = ""] = numbers[at] ?? [];
    return `${before}.${decimals.padEnd(places, "0")}${one.slice(whole.length)}`;
  });
}

/** The unit a quantity was written in, with its size in SI: what figures and sentences about it are in. */
export function writtenUnit(quantity: Quantity | undefined): {
  readonly unit: string;
  readonly size: number;
} {
  return { unit: quantity?.unit ?? "1", size: quantity?.unitSize ?? 1 };
}

const superscripts = "⁰¹²³⁴⁵⁶⁷⁸⁹";

/** A number for a sentence: a real minus, no trailing zeros, powers of ten only far from 1, no locale. */
export function formatNumber(value: number, significant = 4): string {
  if (Number.isNaN(value)) return "not a number";
  if (!Number.isFinite(value)) return value > 0 ? "∞" : "−∞";
  if (value === 0) return "0";
  const [mantissa = "", power = "0"] = Math.abs(value)
    .toExponential(significant - 1)
    .split("e");
  const exponent = Number(power);
  const sign = value < 0 ? "−" : "";
  if (exponent < -5 || exponent > 14) return `${sign}${bare(mantissa)} × 10${raised(exponent)}`;
  const rounded = Number(`${mantissa}e${exponent}`);
  return sign + bare(rounded.toFixed(Math.max(0, significant - 1 - exponent)));
}

function bare(digits: string): string {
  return digits.includes(".") ? digits.replace(/\.?0+$/u, "") : digits;
}

function raised(exponent: number): string {
  const digits = [...String(Math.abs(exponent))].map((digit) => superscripts.charAt(Number(digit)));
  return (exponent < 0 ? "⁻" : "") + digits.join("");
}
