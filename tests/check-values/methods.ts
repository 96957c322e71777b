import { argument } from "./argument.ts";
import type { Methods } from "./case.ts";
import { clearance } from "./clearance.ts";
import { counts } from "./counts.ts";
import { dates } from "./dates.ts";
import { independenceMethods } from "./independence.ts";
import { next } from "./next.ts";
import { references } from "./references.ts";
import { scaling } from "./scaling.ts";
import { silence } from "./silence.ts";
import { spacing } from "./spacing.ts";
import { stats } from "./stats.ts";
import { unitFit } from "./unit-fit.ts";
import { units } from "./units.ts";

/** Every computation that a case file can ask for; one that is not here fails the case as unknown. */
export const methods: Methods = {
  ...argument,
  ...counts,
  ...dates,
  ...independenceMethods,
  ...next,
  ...references,
  ...units,
  ...unitFit,
  ...scaling,
  ...silence,
  ...spacing,
  ...clearance,
  ...stats,
};
