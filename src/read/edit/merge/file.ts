import { mergedText } from "../../../base/text/merge.ts";
import type { MergedText } from "../../../base/text/merge.ts";
import { clashesIn, mergedRecords } from "./merge.ts";
import type { RecordMerge } from "./merge.ts";
import { recordsIn } from "./reading.ts";
import type { RecordRead } from "./reading.ts";
import { resolvedText } from "./resolve.ts";

/**
 * Two versions of one file of a corpus that were made from a third, as one: line by line where that gives a file that
 * reads as well as they do, else record by record. Where neither can be, the places in which their lines clash.
 */
export function mergedFile(path: string, base: string, mine: string, theirs: string): MergedText {
  const lines = mergedText(base, mine, theirs);
  const [old, own, other] = [recordsIn(path, base), recordsIn(path, mine), recordsIn(path, theirs)];
  if (!old || !own || !other) return lines;
  const merges = mergedRecords(old, own, other);
  if ("text" in lines && isWhole(recordsIn(path, lines.text), own, other)) return lines;
  if (clashesIn(merges).length > 0 || isDoubled(merges)) return refused(lines, base, mine, theirs);
  const made = resolvedText({ path, base, mine, theirs }, merges, new Map());
  return "text" in made ? made : refused(lines, base, mine, theirs);
}

type Records = ReadonlyMap<string, RecordRead>;

/** Whether a merged text can be read, and names nothing twice that neither side did. */
function isWhole(merged: Records | null, mine: Records, theirs: Records): boolean {
  return (
    merged !== null &&
    [...merged.keys()].every((key) => !/#\d+$/u.test(key) || mine.has(key) || theirs.has(key))
  );
}

/**
 * Whether one record may have become two: both sides gave it another name, so that it is gone from both and each has
 * one that the other does not know.
 */
function isDoubled(merges: readonly RecordMerge[]): boolean {
  return merges.some(({ base, mine, theirs }) => {
    const isNew = (side: "mine" | "theirs"): boolean =>
      merges.some(
        (one) => !one.base && (one.mine === null) !== (one.theirs === null) && one[side]?.list === base?.list,
      );
    return base !== null && !mine && !theirs && isNew("mine") && isNew("theirs");
  });
}

function refused(lines: MergedText, base: string, mine: string, theirs: string): MergedText {
  return "conflicts" in lines ? lines : { conflicts: [{ line: 1, base, mine, theirs }] };
}
