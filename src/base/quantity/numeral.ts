import { readingsOf } from "./separators.ts";

/** A number as written, without its sign: the value, and the size of its last digit or of the fraction named. */
export interface Numeral {
  readonly value: number;
  readonly part: number;
  /** Digits alone: no point, no fraction, no exponent. */
  readonly whole: boolean;
  readonly start: number;
  readonly end: number;
}

/** A run of digits with separators that are not read, and where it stands. */
export interface UnreadNumber {
  readonly unread: "decimal-comma" | "digit-groups" | "unreadable";
  readonly start: number;
  readonly end: number;
}

/** The fractions that have a sign of their own. */
export const vulgar = "[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅐⅛⅜⅝⅞⅑⅒]";

const mixed = new RegExp(`(?:(\\d+) ?)?(${vulgar})`, "uy");
const written = /(?:(\d+) )?(\d+)\/(\d+)(?![\d.,/])/uy;
const grouped = new RegExp(`\\d{1,3}(?: \\d{3})+(?:[.,]\\d+)?(?![\\d/]| ?${vulgar})`, "uy");
const run = /(?:\d[\d.,]*\d|\d|\.\d+)(?:e[+-]?\d{1,3}(?!\d))?/iuy;

/** Reads the number that begins at `start` of a plain text; null when none does. */
export function readNumeral(text: string, start: number): Numeral | UnreadNumber | null {
  const char = matchAt(mixed, text, start);
  if (char !== null) {
    const [top = "", bottom = ""] = (char[2] ?? "").normalize("NFKD").split("\u2044");
    return fraction(char[1] ?? "0", top, bottom, start, start + char[0].length);
  }
  const slashed = matchAt(written, text, start);
  if (slashed !== null) {
    const end = start + slashed[0].length;
    return fraction(slashed[1] ?? "0", slashed[2] ?? "", slashed[3] ?? "", start, end);
  }
  const groups = matchAt(grouped, text, start);
  if (groups !== null) return { unread: "digit-groups", start, end: start + groups[0].length };
  const digits = matchAt(run, text, start);
  return digits === null ? null : decimal(digits[0], start);
}

/** Matches a sticky expression at one place of a text. */
export function matchAt(sticky: RegExp, text: string, at: number): RegExpExecArray | null {
  sticky.lastIndex = at;
  return sticky.exec(text);
}

function decimal(digits: string, start: number): Numeral | UnreadNumber {
  const end = start + digits.length;
  if (digits.includes(",")) return { unread: "decimal-comma", start, end };
  const [mantissa = "", exponent = "0"] = digits.toLowerCase().split("e");
  const [, places = "", ...more] = mantissa.split(".");
  if (more.length > 0)
    return { unread: readingsOf(mantissa).length > 0 ? "digit-groups" : "unreadable", start, end };
  const value = Number(digits);
  const part = Number(`1e${Number(exponent) - places.length}`);
  const readable = Number.isFinite(value) && part > 0 && part < Infinity;
  return readable
    ? { value, part, whole: /^\d+$/u.test(digits), start, end }
    : { unread: "unreadable", start, end };
}

function fraction(
  whole: string,
  top: string,
  bottom: string,
  start: number,
  end: number,
): Numeral | UnreadNumber {
  const value = Number(whole) + Number(top) / Number(bottom);
  const part = 1 / Number(bottom);
  const readable = Number.isFinite(value) && part > 0 && part < Infinity;
  return readable ? { value, part, whole: false, start, end } : { unread: "unreadable", start, end };
}
