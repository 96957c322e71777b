import type { Methods } from "./case.ts";

/** The methods of `unit-fit`. */
export const unitFit: Methods = {};
