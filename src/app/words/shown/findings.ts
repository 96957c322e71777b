import { arabicRules } from "../arabic/shown/findings.ts";
import { told } from "../reader/told.ts";

/** What a rule is called in a heading, by its name in the settings. */
export const ruleName: (rule: string) => string = told(
  (rule: string) => rule.replace(/-/g, " "),
  (rule: string) => (Object.hasOwn(arabicRules, rule) ? arabicRules[rule] : undefined) ?? rule,
);
