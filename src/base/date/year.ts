import { plainText } from "../quantity/plain-text.ts";
import { coded, say } from "../text/said/said.ts";
import type { Text } from "../text/said/said.ts";

/** Why a text is no year or date, with the place in it, and the whole text mended where that is certain. */
export interface DateProblem {
  readonly message: Text;
  readonly start: number;
  readonly end: number;
  readonly replacement?: string;
}

const stated =
  /^(?:(a\.? ?d\.?|c\.? ?e\.?) ?)?(\d{1,6})(?: ?(b\.? ?c\.?(?: ?e\.?)?|a\.? ?d\.?|c\.? ?e\.?))?$/iu;

/**
 * Reads a year as texts have it: `1998`, `480 BC`, `480 BCE`, `AD 60`, `60 CE`. The result is astronomical
 * (AD y is y, 1 BC is 0, 480 BC is -479); there is no year 0 in texts, and a year below 0 has two meanings.
 */
export function parseYear(text: string): { readonly ok: number } | { readonly problem: DateProblem } {
  const plain = plainText(text).text.trim();
  const bad = (message: Text): { readonly problem: DateProblem } => ({
    problem: { message, start: 0, end: text.length },
  });
  const found = stated.exec(plain);
  if (found === null) {
    const below = /^[-–](\d{1,6})$/u.exec(plain);
    if (below !== null) {
      const digits = Number(below[1]);
      return bad(
        say`Unexpected year below 0 \`${text}\`, expected ${coded(`${digits} BC`)} or ${coded(`${digits + 1} BC`)}`,
      );
    }
    if (/\b(?:bp|b2k)\b/iu.test(plain))
      return bad(say`Unexpected years before present \`${text}\`, expected ${"AD"} or ${"BC"}`);
    return bad(
      say`Unreadable year \`${text}\`, expected one such as ${coded("1998")}, ${coded("480 BC")} or ${coded("AD 60")}`,
    );
  }
  const year = Number(found[2]);
  const before = found[3]?.toLowerCase().startsWith("b") === true;
  if (found[1] !== undefined && found[3] !== undefined) return bad(say`Unexpected second era in \`${text}\``);
  if (year === 0) return bad(say`Unexpected year 0, expected ${coded("1 BC")} or ${coded("AD 1")}`);
  return { ok: before ? 1 - year : year };
}

/** An astronomical year as texts have it: `1998`, `AD 60`, `480 BC`. */
export function yearText(astronomical: number): string {
  if (astronomical <= 0) return `${1 - astronomical} BC`;
  return astronomical < 1000 ? `AD ${astronomical}` : String(astronomical);
}
