import type { ReferenceOf } from "../../../../show/pages/sheet.ts";
import type { Runs } from "../../../../write/references/runs.ts";

/** To the thread that writes references. */
export interface ReferenceAsked {
  readonly number: number;
  readonly reference: ReferenceOf;
}

/** From it: the reference, or why the style cannot write it. */
export type ReferenceTold = { readonly number: number } & (
  { readonly runs: Runs } | { readonly trouble: string }
);
