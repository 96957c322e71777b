import type { ArabicCatalogue } from "../../../../../base/text/said/arabic.ts";

/** What several rules say alike. */
export const sharedRulesSaid: ArabicCatalogue = {
  "{0} and {1} more": {
    one: "{0} وواحد آخر",
    two: "{0} واثنان آخران",
    few: "{0} و{1} أخرى",
    many: "{0} و{1} أخرى",
    other: "{0} و{1} أخرى",
  },
  "{0}; {1}": "{0}؛ {1}",
  "{0}; {1}.": "{0}؛ {1}.",
  "AD {0}": "{0} م",
  "{0} BC": "{0} ق.م",
};
