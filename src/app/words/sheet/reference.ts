import { arabicReference } from "../arabic/sheet/reference.ts";
import { told } from "../reader/told.ts";

/** Words of how a source is cited, on its sheet. */
export const referenceWords = told(
  {
    title: "Reference",
    writing: "Writing the reference …",
    style: (name: string) => `Citation style: ${name}`,
    trouble: (said: string) => `The citation style cannot write it: ${said}`,
    nothing: "The citation style prints nothing of this source.",
    tooLong: "it takes too long",
  },
  arabicReference,
);
