import type { Text } from "./text/said/said.ts";

/** A name of a record, a scholar's source or anything else that the corpus can refer to. */
export type Id = string;

/** A stretch of one file's text, in UTF-16 code units: `start` inclusive, `end` exclusive. */
export interface Span {
  readonly file: string;
  readonly start: number;
  readonly end: number;
}

/** One replacement in the text of a file; offsets are UTF-16 code units of the text it was made for. */
export interface Edit {
  readonly file: string;
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/**
 * A change that would certainly mend a finding, with the words offered to the user. Where it is one of several ways
 * open to the scholar it is a choice, and done only when it is asked for by its rule.
 */
export interface Fix {
  readonly label: Text;
  readonly edits: readonly Edit[];
  readonly choice?: true;
}

/** How much a finding weighs; errors stay errors. */
export type Level = "error" | "warning" | "note";

/** Something the user should know about the corpus: a rule, its level, the records it is about and the place. */
export interface Finding {
  readonly rule: string;
  readonly level: Level;
  readonly about: readonly Id[];
  readonly message: Text;
  readonly at: Span | null;
  /** Further places of the same cause. */
  readonly also?: readonly Span[];
  readonly fix: Fix | null;
  /** The scholar's reason for living with it, from `accept` in the settings. */
  readonly accepted: string | null;
}

/** A finding without acceptance; the level is `error` unless stated. */
export function finding(
  rule: string,
  message: Text,
  at: Span | null,
  more: Partial<Pick<Finding, "level" | "about" | "fix">> = {},
): Finding {
  return {
    rule,
    message,
    at,
    level: more.level ?? "error",
    about: more.about ?? [],
    fix: more.fix ?? null,
    accepted: null,
  };
}
