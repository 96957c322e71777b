import { say } from "../../../base/text/said/said.ts";
import type { Said } from "../../../base/text/said/said.ts";
import type { VisitAsked } from "./asked.ts";
import { filledIn } from "./filled/filled.ts";
import type { Filled } from "./filled/filled.ts";

/** A sheet that comes back filled in: what the visit was for, and what was written. */
export interface Returned {
  readonly asked: VisitAsked;
  readonly filled: Filled;
}

/** The most bytes of the file of a filled sheet: 4 MiB. */
export const largestReturned = 4 * 1024 * 1024;

/** How the file of a filled sheet begins. */
export const returnedHead = '{"variorum-visit":1,';

/** Whether a text is the file of a filled sheet. */
export function isReturned(text: string): boolean {
  return /^\ufeff?\s*\{\s*"variorum-visit"\s*:/.test(text);
}

/** A filled sheet as a file: one JSON document. */
export function returnedText({ asked, filled }: Returned): string {
  return `${returnedHead}\n"asked":${JSON.stringify(asked)},\n"filled":${JSON.stringify(filled, null, 1)}}\n`;
}

/** What is said of a file that no sheet would be saved as: of other content, or larger. */
export const unlikeSaved: Said = say`Unexpected content of a visit sheet, expected it as it was saved`;

/** Reads the file of a filled sheet, as the page or the paper on a laptop has written it. */
export function returnedIn(text: string): Returned | { readonly problem: Said } {
  if (text.length > largestReturned) return { problem: unlikeSaved };
  const whole = jsonIn(text.replace(/^\ufeff/, ""));
  if (typeof whole !== "object" || whole === null || !("variorum-visit" in whole))
    return { problem: say`Unexpected file, expected a visit sheet that was filled in and saved` };
  if (whole["variorum-visit"] !== 1)
    return { problem: say`Unexpected version of a visit sheet, expected ${"1"}` };
  const filled = "filled" in whole ? filledIn(whole.filled) : null;
  const asked = "asked" in whole ? askedIn(whole.asked) : null;
  if (!filled || !asked) return { problem: unlikeSaved };
  return { asked, filled };
}

function jsonIn(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}

function askedIn(value: unknown): VisitAsked | null {
  if (typeof value !== "object" || value === null) return null;
  const {
    examination = null,
    keeper = null,
    also = [],
  } = value as Partial<Record<keyof VisitAsked, unknown>>;
  const texts = Array.isArray(also) && also.every((one) => typeof one === "string");
  const named = [examination, keeper].filter((one) => typeof one === "string");
  if (!texts || named.length !== 1 || ![examination, keeper].includes(null)) return null;
  return { examination, keeper, also } as VisitAsked;
}
