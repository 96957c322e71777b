import type { Finding, Fix, Id, Level } from "../../base/finding.ts";
import type { Graph } from "../../link/graph.ts";
import { labelText } from "../../link/names/label.ts";
import { hunksIn } from "../../base/text/lines/hunk.ts";
import type { Hunk } from "../../base/text/lines/hunk.ts";
import type { Text } from "../../base/text/said/said.ts";
import { placesIn } from "../../base/text/lines/place.ts";
import { ownerOfFile } from "../../read/settings/companions/files.ts";
import { quotedBy } from "../report/quoted.ts";
import { shownFindings, shownTexts } from "../withhold.ts";

/** A finding for a page: its words, what it is about, where it stands. */
export interface FindingLine {
  readonly rule: string;
  readonly level: Level;
  readonly message: Text;
  readonly about: readonly { readonly id: Id; readonly text: Text }[];
  readonly at: { readonly file: string; readonly line: number } | null;
  /** Whether it stands in a file of a companion corpus, where nothing is mended from here. */
  readonly elsewhere: boolean;
  readonly mend: Change | null;
  readonly accepted: string | null;
}

/** What would mend a finding: its words, the lines as they are and as they would be, and the command that does it. */
export interface Change {
  readonly label: Text;
  /** One of several ways open to the scholar. */
  readonly choice: boolean;
  readonly lines: readonly ChangedLine[];
  readonly command: string;
}

/** A line of a file: what of it differs stands between what stays. */
export interface ChangedLine {
  readonly file: string;
  readonly line: number;
  readonly as: "it is" | "it would be";
  readonly head: string;
  readonly changed: string;
  readonly tail: string;
}

/** Findings in words; records that are not there are left out of what they are about. */
export function findingLines(
  graph: Graph | null,
  findings: readonly Finding[],
  texts: ReadonlyMap<string, string>,
): readonly FindingLine[] {
  const place = placesIn(texts);
  const fixable = findings.some((one) => one.fix !== null);
  const hunksOf = hunksIn(graph && fixable ? shownTexts(graph, texts, quotedBy(findings)) : texts);
  return shownFindings(graph, findings).map((one) => {
    const at = one.at ? place(one.at) : null;
    const known = one.about.filter((id) => graph?.records.has(id) || graph?.sources.has(id));
    return {
      rule: one.rule,
      level: one.level,
      message: one.message,
      about: known.map((id) => ({ id, text: graph ? labelText(graph, id) : id })),
      at: at ? { file: at.file, line: at.line } : null,
      elsewhere: at !== null && graph !== null && ownerOfFile(graph.companions, at.file) !== null,
      mend: one.fix && one.accepted === null ? changeOf(one.rule, one.fix, hunksOf(one.fix.edits)) : null,
      accepted: one.accepted,
    };
  });
}

function changeOf(rule: string, { label, choice }: Fix, hunks: readonly Hunk[]): Change {
  const lines = hunks.flatMap((hunk) => [
    ...linesOf(hunk, "it is", hunk.before, hunk.after),
    ...linesOf(hunk, "it would be", hunk.after, hunk.before),
  ]);
  const command = `variorum check --fix --write${choice === true ? ` --rule ${rule}` : ""}`;
  return { label, choice: choice === true, lines, command };
}

/** Lines with what differs from others parted off: from the first letter that does to the last, over all of them. */
function linesOf(
  { file, line }: Hunk,
  as: ChangedLine["as"],
  those: readonly string[],
  others: readonly string[],
): readonly ChangedLine[] {
  const [mine, theirs] = [[...those.join("\n")], [...others.join("\n")]];
  let from = 0;
  while (from < mine.length && mine[from] === theirs[from]) from++;
  let same = 0;
  const most = Math.min(mine.length, theirs.length) - from;
  while (same < most && mine[mine.length - 1 - same] === theirs[theirs.length - 1 - same]) same++;
  const to = mine.length - same;
  let at = 0;
  return those.map((text, n) => {
    const letters = [...text];
    const [head, tail] = [from - at, to - at].map((place) => Math.max(0, Math.min(letters.length, place)));
    at += letters.length + 1;
    const part = (start?: number, end?: number): string => letters.slice(start, end).join("");
    return { file, line: line + n, as, head: part(0, head), changed: part(head, tail), tail: part(tail) };
  });
}
