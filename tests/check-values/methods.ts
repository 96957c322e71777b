import { argument } from "./argument.ts";
import type { Methods } from "./case.ts";
import { dates } from "./dates.ts";
import { scaling } from "./scaling.ts";
import { spacing } from "./spacing.ts";
import { stats } from "./stats.ts";
import { unitFit } from "./unit-fit.ts";
import { units } from "./units.ts";

/** Every computation that a case file can ask for; one that is not here fails the case as unknown. */
export const methods: Methods = {
  ...argument,
  ...dates,
  ...units,
  ...unitFit,
  ...scaling,
  ...spacing,
  ...stats,
};
