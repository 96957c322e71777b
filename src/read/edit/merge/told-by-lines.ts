import { saysSame } from "../written.ts";
import type { Written } from "../written.ts";
import type { FieldMerge, RecordMerge } from "./merge.ts";
import type { RecordRead } from "./reading.ts";

type Records = ReadonlyMap<string, RecordRead>;

/** Whether a merged text can be read, and names nothing twice that neither side did. */
export function isWhole(merged: Records | null, mine: Records, theirs: Records): boolean {
  return (
    merged !== null &&
    [...merged.keys()].every((key) => !/#\d+$/u.test(key) || mine.has(key) || theirs.has(key))
  );
}

/**
 * Whether lines say what became of everything that both sides changed. Of a record that one side took out and the other
 * changed they do where it was given another name, under which it has that change; else they brought it back where it was
 * moved, or gave the change to another. A value of one line they let one side have, where the other moved its field.
 */
export function isTold(merges: readonly RecordMerge[], merged: Records | null): boolean {
  return merges.every(({ key, became, base, mine, theirs, fields }) => {
    if (became !== "clash") return true;
    if (mine && theirs) {
      const made = merged?.get(key)?.fields ?? {};
      return fields.every((one) => one.became !== "clash" || !isOfOne(one, made[one.field] ?? null));
    }
    if (!base) return true;
    const taker = mine ? "theirs" : "mine";
    return (
      merged?.has(key) !== true &&
      merges.some((one) => !one.base && one[taker] !== null && isMostly(base, one[taker]))
    );
  });
}

function isOfOne({ mine, theirs }: FieldMerge, made: Written | null): boolean {
  return (made === null || typeof made === "string") && (saysSame(made, mine) || saysSame(made, theirs));
}

/** Whether most of what a record says but for its id is said by another. */
function isMostly(one: RecordRead, other: RecordRead | null): boolean {
  const names = Object.keys(one.fields).filter((name) => name !== "id");
  const same = names.filter((name) => saysSame(one.fields[name] ?? null, other?.fields[name] ?? null));
  return one.list === other?.list && 2 * same.length > names.length;
}

/**
 * Whether one record may have become two: both sides gave it another name, so that it is gone from both and each has
 * one that the other does not know.
 */
export function isDoubled(merges: readonly RecordMerge[]): boolean {
  return merges.some(({ base, mine, theirs }) => {
    const isNew = (side: "mine" | "theirs"): boolean =>
      merges.some(
        (one) => !one.base && (one.mine === null) !== (one.theirs === null) && one[side]?.list === base?.list,
      );
    return base !== null && !mine && !theirs && isNew("mine") && isNew("theirs");
  });
}
