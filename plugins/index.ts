import type { Plugin } from "../src/plugin.ts";
import { scaling } from "./scaling/index.ts";
import { spacing } from "./spacing/index.ts";
import { unitFit } from "./unit-fit/index.ts";

/** The built-in plug-ins. */
export const plugins: readonly Plugin[] = [unitFit, scaling, spacing];
