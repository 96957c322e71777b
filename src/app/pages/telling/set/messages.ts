import type { SetText } from "../../../../write/telling/set/set-text.ts";
import type { Preview } from "../../../worker/planning/telling.ts";

/** To the thread that sets texts. */
export interface SettingAsked {
  readonly number: number;
  readonly preview: Preview;
}

/** From it: the text with its citations set, or why the style cannot do it. */
export type SettingTold = { readonly number: number } & (
  { readonly set: SetText } | { readonly trouble: string }
);
