import type { Understood } from "../../../../../show/desk/workbench/settings.ts";
import { workbenchWords as words } from "../../../../words/desk/workbench.ts";
import { inReadersWords } from "../../../../words/reader/said.ts";

/** How a text is read, or what is wrong with it, in words; empty where there is nothing to tell. */
export function understoodWords({ as, problem }: Understood): string {
  if (problem !== null) return inReadersWords(problem);
  return as === null ? "" : `${words.read} ${as}`;
}
