import { parseDocument } from "yaml";
import type { Document } from "yaml";
import { finding } from "../../base/finding.ts";
import type { Finding } from "../../base/finding.ts";
import { say } from "../../base/text/said/said.ts";
import type { Text } from "../../base/text/said/said.ts";
import { tooDeepAt } from "./nesting.ts";
import { plainTree } from "./plain/scan.ts";
import { masked, quoted, splitRound } from "./split.ts";
import type { Split } from "./split.ts";
import { syntaxMessage } from "./syntax.ts";
import type { MapNode, Node } from "./tree.ts";
import { walkOf } from "./walk.ts";
import type { Mend } from "./walk.ts";

/** What a YAML text gives: its map, and what could not be read. */
export interface YamlText {
  /** The file's one map; null when the text cannot be read. */
  readonly root: MapNode | null;
  readonly findings: readonly Finding[];
  /** Where values stand that YAML took apart: what they belong to is not to be read by half. */
  readonly split: readonly { readonly start: number; readonly end: number }[];
}

/** A text in which every line end of a carriage return alone, one of the three of YAML 1.2 (5.4), is a line feed in the same place. */
export function withLineFeeds(text: string): string {
  return text.includes("\r") ? text.replace(/\r(?!\n)/gu, "\n") : text;
}

/**
 * Reads one YAML 1.2 document whose scalars all stay text; what cannot be read is told with its place. A value that
 * only lacks quotes is passed over and the rest is read; `mend` says what to write for it.
 */
export function readYaml(file: string, asKept: string, mend?: Mend): YamlText {
  const text = withLineFeeds(asKept);
  const root = plainTree(text);
  return root ? { root, findings: [], split: [] } : readAnyYaml(file, text, mend);
}

/** The same by the reader of all of YAML, whatever the text is. */
export function readAnyYaml(
  file: string,
  asKept: string,
  mend: Mend = (_, whole) => quoted(whole),
): YamlText {
  const text = withLineFeeds(asKept);
  const deep = tooDeepAt(text);
  if (deep !== null) {
    return unreadable(
      file,
      say`Unexpected nesting of more than 64 levels, expected flatter records`,
      deep,
      deep + 1,
    );
  }
  const control = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f]/.exec(text);
  if (control) {
    const code = control[0].charCodeAt(0).toString(16).toUpperCase().padStart(4, "0");
    const message = say`Unexpected control character ${`U+${code}`}, expected printable text`;
    return unreadable(file, message, control.index, control.index + 1);
  }
  const { document, splits } = parsed(text);
  const unread = document.errors.map((error) =>
    finding("unreadable-file", syntaxMessage(error.code, error.message), {
      file,
      start: Math.min(error.pos[0], text.length),
      end: Math.min(Math.max(error.pos[1], error.pos[0] + 1), text.length),
    }),
  );
  const findings: Finding[] = splits.map(({ key, start, end, message }) => {
    const put = unread.length > 0 ? null : mend(key, text.slice(start, end));
    const edits = [{ file, start, end, text: put ?? "" }];
    const fix = put === null ? null : { label: say`Put the value in quotes`, edits };
    return finding("split-value", message, { file, start, end }, { fix });
  });
  if (unread.length > 0) return { root: null, findings: [...findings, ...unread], split: [] };
  const split: { readonly start: number; readonly end: number }[] = [...splits];
  if (!document.contents) return { root: { is: "map", entries: [], start: 0, end: 0 }, findings, split };
  const root: Node = walkOf({ file, text, yaml: document, findings, split, mend })(document.contents);
  if (root.is !== "map") {
    return unreadable(
      file,
      say`Unexpected list or text, expected a map of lists of records`,
      root.start,
      root.end,
    );
  }
  return { root, findings, split };
}

const mostRounds = 4;

/** The document, read again without the values at which reading stopped, as long as that leads any further. */
function parsed(text: string): { readonly document: Document; readonly splits: readonly Split[] } {
  const options = { schema: "failsafe", uniqueKeys: false, prettyErrors: false } as const;
  let splits: readonly Split[] = [];
  let document: Document = parseDocument(text, options);
  for (let round = 0; round < mostRounds && document.errors.length > 0; round++) {
    const met = document.errors.flatMap(({ pos }) => splitRound(text, Math.min(pos[0], text.length)) ?? []);
    const all = withoutOverlaps([...splits, ...met]);
    if (all.length === splits.length) break;
    splits = all;
    document = parseDocument(masked(text, splits), options);
  }
  return { document, splits };
}

/** In the order of their places, each once; of two that overlap the first. */
function withoutOverlaps(splits: readonly Split[]): readonly Split[] {
  const kept: Split[] = [];
  for (const one of splits.toSorted((a, b) => a.start - b.start || a.end - b.end)) {
    if (one.start >= (kept.at(-1)?.end ?? 0)) kept.push(one);
  }
  return kept;
}

function unreadable(file: string, message: Text, start: number, end: number): YamlText {
  return { root: null, findings: [finding("unreadable-file", message, { file, start, end })], split: [] };
}
