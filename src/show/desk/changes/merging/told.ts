import type { FileChange } from "../../../../base/text/edit.ts";
import type { Text } from "../../../../base/text/said/said.ts";
import type { Answer } from "../../../../read/edit/merge/merge.ts";
import type { FieldRow } from "../../../pages/pieces.ts";

export type { Answer } from "../../../../read/edit/merge/merge.ts";

/** What a clash can be settled for: one reading, both, or own words in place of them. */
export type Choice = "mine" | "theirs" | "both" | "own";

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
  readonly choices: readonly Choice[];
  /** What own words in place of both readings begin with, as it is typed; null where there can be none. */
  readonly typed: string | null;
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
    /** The own words that it was made with, as an address has them. */
    readonly own: string;
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
export const letterOf: Readonly<Record<Choice, string>> = { mine: "m", theirs: "t", both: "b", own: "o" };

/** The answers to clashes as an address writes them; one that is none of its choices is no answer. */
export function answersIn(clashes: readonly MergeClash[], written: string): readonly (Choice | null)[] {
  return clashes.map(({ choices }, place) => choices.find((one) => letterOf[one] === written[place]) ?? null);
}

/** The same the other way round. */
export function answersWritten(answers: readonly (Choice | null)[]): string {
  return answers.map((one) => (one === null ? "-" : letterOf[one])).join("");
}

/** Own words by the place of their clash, as an address has them; what is none of that is none. */
export function ownIn(written: string): ReadonlyMap<number, string> {
  try {
    const all: unknown = JSON.parse(written);
    if (typeof all !== "object" || all === null || Array.isArray(all)) return new Map();
    return new Map(
      Object.entries(all).flatMap(([place, text]): (readonly [number, string])[] =>
        typeof text === "string" && /^\d{1,6}$/u.test(place) ? [[Number(place), text]] : [],
      ),
    );
  } catch {
    return new Map();
  }
}

/** The same the other way round; empty where there are none. */
export function ownWritten(own: ReadonlyMap<number, string>): string {
  return own.size === 0 ? "" : JSON.stringify(Object.fromEntries(own));
}

/** The answers of a merge; own words that are not there yet are those that they begin with. */
export function settledAnswers(
  clashes: readonly MergeClash[],
  choices: readonly (Choice | null)[],
  own: ReadonlyMap<number, string>,
): readonly (Answer | null)[] {
  return choices.map((one, place) =>
    one === "own" ? { own: own.get(place) ?? clashes[place]?.typed ?? "" } : one,
  );
}
