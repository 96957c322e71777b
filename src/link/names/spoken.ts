import type { Id } from "../../base/finding.ts";

/** What the argument is called that a number, or a scholar's word, makes about a claim. */
export const spokenBy = (speaker: Id, claim: Id): Id => `${speaker}>${claim}`;

/** The number or the position that makes an argument; an argument with a record of its own is its own. */
export function speakerOf(argument: Id): Id {
  const at = argument.lastIndexOf(">");
  return at > 0 ? argument.slice(0, at) : argument;
}
