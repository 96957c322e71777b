import type { Methods } from "./case.ts";

/** The methods of `spacing`. */
export const spacing: Methods = {};
