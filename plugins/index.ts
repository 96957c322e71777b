import type { Plugin } from "../src/plugin.ts";
import { chronology } from "./chronology/index.ts";
import { clearance } from "./clearance/index.ts";
import { counts } from "./counts/index.ts";
import { scaling } from "./scaling/index.ts";
import { silence } from "./silence/index.ts";
import { spacing } from "./spacing/index.ts";
import { unitFit } from "./unit-fit/index.ts";

/** The built-in plug-ins. */
export const plugins: readonly Plugin[] = [unitFit, scaling, spacing, clearance, silence, counts, chronology];
