import { yearText } from "../../../base/date/year.ts";
import type { Rule } from "../rule.ts";
import { afterEvents } from "./after.ts";

export const alteredBeforeObserved: Rule = {
  id: "altered-before-observed",
  level: "note",
  title: "A thing was observed after a restoration, conservation or sampling of it.",
  doc: "What was seen may be the work of the restorer: cleaning removes traces, consolidants hide them. Look for an observation from before, or say what the treatment could not have changed.",
  find: (view) =>
    afterEvents(
      view,
      alteredBeforeObserved,
      ["observations"],
      ["restoration", "conservation", "sampling"],
      (thing) => [thing],
      (thing, event, names) => `${names} was seen on ${thing} after it was treated in ${yearText(event)}.`,
    ),
};
