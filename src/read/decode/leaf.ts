import * as z from "zod";
import { parseEdtf } from "../../base/date/edtf.ts";
import { parseQuantity } from "../../base/quantity/quantity-text.ts";
import type { QuantityContext } from "../../base/quantity/quantity-text.ts";
import { parseYear } from "../../base/date/year.ts";
import { slipFor } from "../../base/text/slip.ts";
import type { Citation } from "../grammar/field.ts";

/** Extra facts of an issue: the rule, the stretch of the text it is about, and what would certainly mend it. */
export interface IssueFacts {
  readonly rule?: string;
  readonly start?: number;
  readonly end?: number;
  readonly replacement?: string;
}

const idPattern = /^[a-z0-9][a-z0-9-]*(\/[a-z0-9][a-z0-9-]*)*$/;

const text = z.string();

const flag = z
  .enum(["true", "false"], {
    error: (issue) =>
      typeof issue.input === "string"
        ? `Unexpected \`${issue.input}\`, expected true or false`
        : "Unexpected value, expected true or false",
  })
  .transform((t) => t === "true");

const number = z
  .string()
  .regex(/^[-−]?\d+(\.\d+)?( ?%)?$/, {
    error: (issue) => `Unexpected \`${String(issue.input)}\`, expected a number`,
  })
  .transform((t) => {
    const value = Number(t.replace("−", "-").replace(/ ?%$/, ""));
    return t.endsWith("%") ? value / 100 : value;
  });

/** A number within limits, both included. */
const within = (low: number, high: number, expected: string) =>
  z.string().transform((t, issues): number => {
    const read = number.safeParse(t);
    if (read.success && read.data >= low && read.data <= high) return read.data;
    issues.addIssue({ code: "custom", message: `Unexpected \`${t}\`, expected ${expected}` });
    return z.NEVER;
  });

const amount = within(0, Infinity, "a number, 0 or more");
const chance = within(0, 1, "a probability from 0 to 1");

const whole = z
  .string()
  .regex(/^\d{1,15}$/, { error: (issue) => `Unexpected \`${String(issue.input)}\`, expected a whole number` })
  .transform(Number);

const id = z.string().regex(idPattern, {
  error: (issue) => `Unexpected id \`${String(issue.input)}\`, expected a-z, 0-9 and - in parts joined by /`,
});

const ref = z.string().min(1, { error: "Missing id, expected the id of a record" });

/** `KEY` or `KEY locator`: the key ends at the first space. */
const citation = z
  .string()
  .regex(/^\S/, { error: "Missing key, expected the key of a source" })
  .transform((t): Citation => {
    const space = t.search(/\s/);
    return space < 0 ? { key: t, locator: null } : { key: t.slice(0, space), locator: t.slice(space).trim() };
  });

const year = z.string().transform((t, context): number => {
  const read = parseYear(t);
  if ("ok" in read) return read.ok;
  context.addIssue({ code: "custom", message: read.problem.message });
  return z.NEVER;
});

const date = z.string().transform((t, context): string => {
  const read = parseEdtf(t);
  if ("ok" in read) return t;
  context.addIssue({ code: "custom", message: read.problem.message });
  return z.NEVER;
});

/** A quantity read in a corpus's units. */
function quantityIn(context: QuantityContext) {
  return z.string().transform((t, issues) => {
    const read = parseQuantity(t, context);
    if ("ok" in read) return read.ok;
    const { code, message, start, end, replacement, otherwise } = read.problem;
    // A number with two readings, or an uncertainty below 0, is asked about and never guessed.
    const certain = replacement !== undefined && otherwise === undefined && code !== "negative-uncertainty";
    const facts: IssueFacts = { start, end, ...(certain ? { replacement } : {}) };
    issues.addIssue({ code: "custom", message, params: facts });
    return z.NEVER;
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
    const params: IssueFacts = replacement === null ? {} : { replacement };
    issues.addIssue({
      code: "custom",
      message: `Unexpected \`${t}\`, expected one of ${of.join(", ")}`,
      params,
    });
    return z.NEVER;
  });
}
