import { yearWords } from "../../../base/date/year-words.ts";
import { say } from "../../../base/text/said/said.ts";
import type { Rule } from "../rule.ts";
import { wholesOf } from "../measurements/compare.ts";
import { afterEvents } from "./after.ts";

export const measuredAfterLoss: Rule = {
  id: "measured-after-loss",
  level: "warning",
  title: say`Something was observed or measured after the thing was lost.`,
  doc: say`Either the date is wrong, or it was taken from a drawing, a cast or a report: then say so in \`basis\`. A loss is of the whole thing named; the loss of a part is a record of that part.`,
  find: (view) =>
    afterEvents(
      view,
      measuredAfterLoss,
      ["observations", "measurements"],
      ["loss"],
      (thing) => wholesOf(thing, view.graph),
      (thing, event, names) =>
        say`${names} is dated after ${thing} was lost in ${yearWords(event)}, expected an earlier year or another basis.`,
    ),
};
