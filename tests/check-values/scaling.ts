import type { Methods } from "./case.ts";

/** The methods of `scaling`. */
export const scaling: Methods = {};
