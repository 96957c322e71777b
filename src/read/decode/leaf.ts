import { parseEdtf } from "../../base/date/edtf.ts";
import { parseQuantity } from "../../base/quantity/quantity-text.ts";
import type { Quantity } from "../../base/quantity.ts";
import type { QuantityContext } from "../../base/quantity/quantity-text.ts";
import { parseYear } from "../../base/date/year.ts";
import { count, row, say } from "../../base/text/said/said.ts";
import type { Said, Text } from "../../base/text/said/said.ts";
import { slipFor } from "../../base/text/slip.ts";
import type { Citation } from "../grammar/field.ts";
import { citationMet, keptAsMet, quantityMet, wordMet } from "./met.ts";

/** What more is known of a text that cannot be read: the rule, the stretch of it that is meant, and what would certainly mend it. */
export interface Facts {
  readonly rule?: string;
  readonly start?: number;
  readonly end?: number;
  readonly replacement?: string;
}

/** Is told what is wrong with a text; gives null, which no text means. */
export type Fail = (said: Text, facts?: Facts) => null;

/** The meaning of a text; null after telling why it has none. */
export type Leaf<T> = (text: string, fail: Fail) => T | null;

const idPattern = /^[a-z0-9][a-z0-9-]*(\/[a-z0-9][a-z0-9-]*)*$/;

const text: Leaf<string> = (t) => wordMet(t);

const flag: Leaf<boolean> = (t, fail) => {
  if (t === "true" || t === "false") return t === "true";
  return fail(say`Unexpected \`${t}\`, expected ${"true"} or ${"false"}`);
};

/** The number that a text is, a share of 100 with it; null where it is none. */
function numberIn(t: string): number | null {
  if (!/^[-−]?\d+(\.\d+)?( ?%)?$/.test(t)) return null;
  const value = Number(t.replace("−", "-").replace(/ ?%$/, ""));
  return t.endsWith("%") ? value / 100 : value;
}

const number: Leaf<number> = (t, fail) => numberIn(t) ?? fail(say`Unexpected \`${t}\`, expected a number`);

/** A number within limits, both included. */
const within =
  (low: number, high: number, expected: Said): Leaf<number> =>
  (t, fail) => {
    const read = numberIn(t);
    if (read !== null && read >= low && read <= high) return read;
    return fail(say`Unexpected \`${t}\`, expected ${expected}`);
  };

const amount = within(0, Infinity, say`a number, 0 or more`);
const chance = within(0, 1, say`a probability from 0 to 1`);

const whole: Leaf<number> = (t, fail) =>
  /^\d{1,15}$/.test(t) ? Number(t) : fail(say`Unexpected \`${t}\`, expected a whole number`);

const id: Leaf<string> = (t, fail) =>
  idPattern.test(t)
    ? wordMet(t)
    : fail(say`Unexpected id \`${t}\`, expected ${"a-z"}, ${"0-9"} and - in parts joined by /`);

/** Letters are compared whole, in whichever way a file writes them (Unicode NFC or NFD). */
const ref: Leaf<string> = (t, fail) =>
  t === "" ? fail(say`Missing id, expected the id of a record`) : wordMet(t).normalize("NFC");

const citation: Leaf<Citation> = (t, fail) =>
  citationMet(t, citationIn) ?? fail(say`Missing key, expected the key of a source`);

/** `KEY` or `KEY locator`: the key ends at the first space. */
function citationIn(t: string): Citation | null {
  const space = t.search(/\s/);
  if (space === 0 || t === "") return null;
  const key = wordMet(space < 0 ? t : t.slice(0, space)).normalize("NFC");
  return { key, locator: space < 0 ? null : wordMet(t.slice(space).trim()) };
}

/** Nearly all years that are written. */
const plainYear = /^[1-9]\d{0,3}$/;

const year: Leaf<number> = (t, fail) => {
  if (plainYear.test(t)) return Number(t);
  const read = parseYear(t);
  return "ok" in read ? read.ok : fail(read.problem.message);
};

const date: Leaf<string> = (t, fail) => {
  const read = parseEdtf(t);
  return "ok" in read ? wordMet(t) : fail(read.problem.message);
};

/** A quantity read in a corpus's units. */
function quantityIn(context: QuantityContext): Leaf<Quantity> {
  return (written, fail) => {
    const t = wordMet(written);
    const known = quantityMet(context, t);
    if (known) return known;
    const read = parseQuantity(t, context);
    if ("ok" in read) return keptAsMet(context, t, read.ok);
    const { code, message, start, end, replacement, otherwise } = read.problem;
    // A number with two readings, or an uncertainty below 0, is asked about and never guessed.
    const certain = replacement !== undefined && otherwise === undefined && code !== "negative-uncertainty";
    return fail(message, { start, end, ...(certain ? { replacement } : {}) });
  };
}

/** How each plain type is read: a text as written in, its meaning out. */
export function leavesIn(context: QuantityContext) {
  return {
    text,
    flag,
    number,
    amount,
    chance,
    whole,
    id,
    ref,
    citation,
    year,
    date,
    quantity: quantityIn(context),
  };
}

/** The ways of reading all plain types in one context. */
export type Leaves = ReturnType<typeof leavesIn>;

/** How a choice is read. */
export function choiceOf(of: readonly string[]): Leaf<string> {
  return (t, fail) => {
    const place = of.indexOf(t);
    if (place >= 0) return of[place] ?? null;
    const replacement = slipFor(t, of);
    const expected = say`Unexpected \`${t}\`, expected one of ${row(of, "comma")}`;
    return fail(expected, replacement === null ? {} : { replacement });
  };
}

/** Why a text has more letters than may be; null where it has not. */
export function tooLong(text: string, most: number | undefined): Said | null {
  if (most === undefined) return null;
  const letters = [...text].length;
  if (letters <= most) return null;
  return say`Unexpected length of ${count(letters)} letters, expected at most ${String(most)}`;
}
