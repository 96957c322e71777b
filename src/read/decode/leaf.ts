import * as z from "zod";
import { parseEdtf } from "../../base/date/edtf.ts";
import { parseQuantity } from "../../base/quantity/quantity-text.ts";
import type { QuantityContext } from "../../base/quantity/quantity-text.ts";
import { parseYear } from "../../base/date/year.ts";
import { inEnglish } from "../../base/text/said/english.ts";
import { row, say } from "../../base/text/said/said.ts";
import type { Said, Text } from "../../base/text/said/said.ts";
import { slipFor } from "../../base/text/slip.ts";
import type { Citation } from "../grammar/field.ts";

/** Extra facts of an issue: the rule, the stretch of the text it is about, and what would certainly mend it. */
export interface IssueFacts {
  readonly rule?: string;
  readonly start?: number;
  readonly end?: number;
  readonly replacement?: string;
  /** What is wrong; the issue's message is its English. */
  readonly said?: Text;
}

const idPattern = /^[a-z0-9][a-z0-9-]*(\/[a-z0-9][a-z0-9-]*)*$/;

/** What a failed check said, as it can be put into another language. */
export function saidBy(issue: { readonly message: string; readonly params?: IssueFacts | undefined }): Text {
  return issue.params?.said ?? issue.message;
}

/** Fails a check with what is wrong with its text. */
function fail(issues: z.core.$RefinementCtx, said: Text, facts: IssueFacts = {}): never {
  issues.addIssue({ code: "custom", message: inEnglish(said), params: { ...facts, said } });
  return z.NEVER;
}

const text = z.string();

const flag = z.string().transform((t, issues): boolean => {
  if (t === "true" || t === "false") return t === "true";
  return fail(issues, say`Unexpected \`${t}\`, expected ${"true"} or ${"false"}`);
});

/** The number that a text is, a share of 100 with it; null where it is none. */
function numberIn(t: string): number | null {
  if (!/^[-−]?\d+(\.\d+)?( ?%)?$/.test(t)) return null;
  const value = Number(t.replace("−", "-").replace(/ ?%$/, ""));
  return t.endsWith("%") ? value / 100 : value;
}

const number = z.string().transform((t, issues): number => {
  return numberIn(t) ?? fail(issues, say`Unexpected \`${t}\`, expected a number`);
});

/** A number within limits, both included. */
const within = (low: number, high: number, expected: Said) =>
  z.string().transform((t, issues): number => {
    const read = numberIn(t);
    if (read !== null && read >= low && read <= high) return read;
    return fail(issues, say`Unexpected \`${t}\`, expected ${expected}`);
  });

const amount = within(0, Infinity, say`a number, 0 or more`);
const chance = within(0, 1, say`a probability from 0 to 1`);

const whole = z.string().transform((t, issues): number => {
  if (/^\d{1,15}$/.test(t)) return Number(t);
  return fail(issues, say`Unexpected \`${t}\`, expected a whole number`);
});

const id = z.string().transform((t, issues): string => {
  if (idPattern.test(t)) return t;
  return fail(issues, say`Unexpected id \`${t}\`, expected ${"a-z"}, ${"0-9"} and - in parts joined by /`);
});

const ref = z.string().transform((t, issues): string => {
  return t === "" ? fail(issues, say`Missing id, expected the id of a record`) : t;
});

/** `KEY` or `KEY locator`: the key ends at the first space. */
const citation = z.string().transform((t, issues): Citation => {
  if (!/^\S/.test(t)) return fail(issues, say`Missing key, expected the key of a source`);
  const space = t.search(/\s/);
  return space < 0 ? { key: t, locator: null } : { key: t.slice(0, space), locator: t.slice(space).trim() };
});

const year = z.string().transform((t, issues): number => {
  const read = parseYear(t);
  return "ok" in read ? read.ok : fail(issues, read.problem.message);
});

const date = z.string().transform((t, issues): string => {
  const read = parseEdtf(t);
  return "ok" in read ? t : fail(issues, read.problem.message);
});

/** A quantity read in a corpus's units. */
function quantityIn(context: QuantityContext) {
  return z.string().transform((t, issues) => {
    const read = parseQuantity(t, context);
    if ("ok" in read) return read.ok;
    const { code, message, start, end, replacement, otherwise } = read.problem;
    // A number with two readings, or an uncertainty below 0, is asked about and never guessed.
    const certain = replacement !== undefined && otherwise === undefined && code !== "negative-uncertainty";
    return fail(issues, message, { start, end, ...(certain ? { replacement } : {}) });
  });
}

/** The zod schema of each plain type: a text as written in, its meaning out. */
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

/** The schemas of all plain types in one context. */
export type Leaves = ReturnType<typeof leavesIn>;

/** The zod schema of a choice. */
export function choiceOf(of: readonly string[]) {
  return z.string().transform((t, issues) => {
    if (of.includes(t)) return t;
    const replacement = slipFor(t, of);
    const expected = say`Unexpected \`${t}\`, expected one of ${row(of, "comma")}`;
    return fail(issues, expected, replacement === null ? {} : { replacement });
  });
}
