import type { ArabicCatalogue } from "../../../../../base/text/said/arabic.ts";
import { claimRulesSaid } from "./claims.ts";
import { derivationRulesSaid } from "./derivations.ts";
import { errorRulesSaid } from "./errors.ts";
import { historyRulesSaid } from "./history.ts";
import { measurementRulesSaid } from "./measurements.ts";
import { proseSaid } from "./prose.ts";
import { scholarRulesSaid } from "./scholars.ts";
import { sharedRulesSaid } from "./shared.ts";
import { sourceRulesSaid } from "./sources.ts";

/** Every sentence of the rules, and of what year a thing is. */
export const rulesSaid: ArabicCatalogue = {
  ...claimRulesSaid,
  ...derivationRulesSaid,
  ...errorRulesSaid,
  ...historyRulesSaid,
  ...measurementRulesSaid,
  ...proseSaid,
  ...scholarRulesSaid,
  ...sharedRulesSaid,
  ...sourceRulesSaid,
};
