import type { FileChange } from "../../../../base/text/edit.ts";
import type { Text } from "../../../../base/text/said/said.ts";
import type { Answer } from "../../../../read/edit/merge/merge.ts";
import type { FieldRow } from "../../../pages/pieces.ts";

export type { Answer } from "../../../../read/edit/merge/merge.ts";

/** A record or part of one, as a heading names it. */
export interface Named {
  readonly kind: string;
  readonly text: Text;
}

/** Something that the two versions of a file say differently, and what it can be settled for. */
export interface MergeClash extends Named {
  /** Null where it is a record as a whole, or a stretch of lines. */
  readonly field: string | null;
  /** What stood there before, where that is known; empty where there was nothing. */
  readonly base: readonly FieldRow[] | null;
  readonly mine: readonly FieldRow[];
  readonly theirs: readonly FieldRow[];
  readonly choices: readonly Answer[];
  /** Whether the readings are lines as they are typed. */
  readonly asTyped: boolean;
}

/** What was put together by itself: whose it is, and what that side did. */
export interface MergedAlone extends Named {
  readonly side: "mine" | "theirs" | "both";
  readonly how: "added" | "changed" | "taken";
  /** Names of fields, where single ones changed. */
  readonly fields: readonly string[];
}

/** The merge of a file in which two versions stand between conflict marks. */
export interface MergePage {
  readonly file: string;
  /** Null where the file has no conflict marks. */
  readonly marked: {
    /** What version control calls the sides; empty where it says nothing. */
    readonly names: { readonly mine: string; readonly theirs: string };
    readonly by: "record" | "lines";
    /** Whether both versions can be read record by record. */
    readonly byRecord: boolean;
    readonly clashes: readonly MergeClash[];
    /** The answers that it was made with: a letter for each clash, `-` where there is none. */
    readonly answered: string;
    readonly alone: readonly MergedAlone[];
    /** The change that writes the merged file; null until every clash is answered. */
    readonly change: FileChange | null;
    /** Why it cannot be written as it is answered. */
    readonly problem: Text | null;
    /** Whether lines are not shown, since the file names something withheld. */
    readonly withheld: boolean;
  } | null;
}

/** How an answer is written in an address. */
export const letterOf: Readonly<Record<Answer, string>> = { mine: "m", theirs: "t", both: "b" };

/** The answers to clashes as an address writes them; one that is none of its choices is no answer. */
export function answersIn(clashes: readonly MergeClash[], written: string): readonly (Answer | null)[] {
  return clashes.map(({ choices }, place) => choices.find((one) => letterOf[one] === written[place]) ?? null);
}

/** The same the other way round. */
export function answersWritten(answers: readonly (Answer | null)[]): string {
  return answers.map((one) => (one === null ? "-" : letterOf[one])).join("");
}
