import {
  fieldsOf,
  numberOf,
  paragraph,
  say,
  textOf,
  type Computation,
  type Text,
} from "../../../src/plugin.ts";
import { factorsWords, reachWords, type Meeting } from "./ranges.ts";

/** Whether two rows of which only the reach is known meet, as they are and enlarged, and with which factors. */
export function meeting(met: Meeting, { data }: Computation): Text {
  const shown = fieldsOf(fieldsOf(data)["shown"]);
  const size = numberOf(shown["size"]) || 1;
  const unit = textOf(shown["unit"]);
  const own = reachWords(met.own, size, 3, unit);
  const other = reachWords(met.other, size, 3, unit);
  return paragraph([
    met.meet ? say`Gaps of ${own} and of ${other} meet.` : say`Gaps of ${own} and of ${other} do not meet.`,
    isEnlarged(met) ? enlarged(met, reachWords(met.enlarged, size, 3, unit)) : null,
    say`They meet ${factorsWords(met.needed)}.`,
  ]);
}

function enlarged({ factors, meetEnlarged }: Meeting, reach: Text): Text {
  const by = reachWords(factors, 1, 4);
  if (meetEnlarged === "all") return say`Enlarged by ${by}, to ${reach}, they meet.`;
  return meetEnlarged === "some"
    ? say`Enlarged by ${by}, to ${reach}, they meet with some of these factors only.`
    : say`Enlarged by ${by}, to ${reach}, they do not meet.`;
}

/** The same where no single gap may be told. */
export function whetherMet(met: Meeting): Text {
  if (!isEnlarged(met))
    return met.meet ? say`The ranges of the two rows meet.` : say`The ranges of the two rows do not meet.`;
  if (met.meetEnlarged === "all") return say`The ranges of the two rows meet, the first enlarged.`;
  return met.meetEnlarged === "some"
    ? say`The ranges of the two rows meet with some of the factors, the first enlarged.`
    : say`The ranges of the two rows do not meet, the first enlarged.`;
}

function isEnlarged({ factors }: Meeting): boolean {
  return factors[0] !== 1 || factors[1] !== 1;
}
