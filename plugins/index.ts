import type { Plugin } from "../src/plugin.ts";

/** The built-in plug-ins. */
export const plugins: readonly Plugin[] = [];
