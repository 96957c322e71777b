import { yearWords } from "../../../base/date/year-words.ts";
import { say } from "../../../base/text/said/said.ts";
import type { Rule } from "../rule.ts";
import { afterEvents } from "./after.ts";

export const alteredBeforeObserved: Rule = {
  id: "altered-before-observed",
  level: "note",
  title: say`A thing was observed after a restoration, conservation or sampling of it.`,
  doc: say`What was seen may be the work of the restorer: cleaning removes traces, consolidants hide them. Look for an observation from before, or say what the treatment could not have changed.`,
  find: (view) =>
    afterEvents(
      view,
      alteredBeforeObserved,
      ["observations"],
      ["restoration", "conservation", "sampling"],
      (thing) => [thing],
      (thing, event, names) =>
        say`${names} was seen on ${thing} after it was treated in ${yearWords(event)}.`,
    ),
};
