import { mergedText } from "../../../base/text/merging/merge.ts";
import type { MergedText } from "../../../base/text/merging/merge.ts";
import { mergedVersions } from "./versions.ts";

/**
 * Two versions of one file of a corpus that were made from a third, as one. Where they cannot be, the places in which
 * their lines clash.
 */
export function mergedFile(path: string, base: string, mine: string, theirs: string): MergedText {
  const merged = mergedVersions(path, base, mine, theirs);
  if ("text" in merged) return merged;
  const lines = mergedText(base, mine, theirs);
  return "conflicts" in lines ? lines : { conflicts: [{ line: 1, base, mine, theirs }] };
}
