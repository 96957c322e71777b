import { finding } from "../../base/finding.ts";
import type { Finding, Span } from "../../base/finding.ts";
import { count, say } from "../../base/text/said/said.ts";
import type { Text } from "../../base/text/said/said.ts";
import type { SourceFile } from "../source-file.ts";

/** Gathers the findings of one file of text. */
export interface Collector {
  readonly bad: (message: Text, at: Span, more?: More) => void;
  /** The same of a finding that is made already. */
  readonly keep: (one: Finding) => void;
  /** Whether the next finding would only be counted. */
  readonly isFull: () => boolean;
  readonly all: () => readonly Finding[];
}

type More = Partial<Pick<Finding, "rule" | "level" | "about" | "fix">>;

const mostFindings = 1000;

/** A collector that keeps the first thousand findings of a file and says in one more how many others there are. */
export function collector(): Collector {
  const kept: Finding[] = [];
  let others = 0;
  let firstOther: Finding | null = null;
  const keep = (one: Finding): void => {
    if (kept.length < mostFindings) return void kept.push(one);
    others++;
    firstOther ??= one;
  };
  return {
    keep,
    isFull: () => others > 0,
    bad: (message, at, more = {}) => keep(finding(more.rule ?? "bad-value", message, at, more)),
    all: () => {
      if (firstOther === null) return kept;
      return [
        ...kept,
        {
          ...firstOther,
          message: say`${firstOther.message}; and ${count(others - 1)} more findings in this file`,
          fix: null,
        },
      ];
    },
  };
}

/** The text from a place to the end of its line (or 200 characters on), for findings about something long. */
export function lineSpan(file: SourceFile, start: number): Span {
  const slice = file.text.slice(start, start + 200);
  const length = slice.search(/[\r\n]/);
  return { file: file.path, start, end: start + (length < 0 ? slice.length : length) };
}

/** A stretch of a text as a message can quote it: one line, at most 40 characters. */
export function quoted(text: string): string {
  const line = text.slice(0, 60).replace(/\s+/g, " ").trim();
  return line.length > 40 ? `${line.slice(0, 39)}…` : line;
}
