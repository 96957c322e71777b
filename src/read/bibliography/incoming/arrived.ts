import type { Finding, Span } from "../../../base/finding.ts";
import { linesIn } from "../../../base/text/lines/lines.ts";
import { say } from "../../../base/text/said/said.ts";
import type { Text } from "../../../base/text/said/said.ts";
import type { SourceFile } from "../../source-file.ts";
import { lexBibtex } from "../bibtex/lexer.ts";
import type { BibEntry } from "../bibtex/lexer.ts";
import type { Source } from "../source.ts";
import { abbreviationsIn } from "./abbreviations.ts";
import type { Abbreviation } from "./abbreviations.ts";
import { readAs } from "./formats.ts";
import type { Format } from "./formats.ts";
import { withKeys } from "./keyless.ts";
import { piecesBetween } from "./pieces.ts";
import type { Piece } from "./pieces.ts";

/** An entry of a file that is to come into a corpus. */
export interface Entry {
  readonly source: Source;
  /** The entry as it is written, from its head to its end. */
  readonly text: string;
  /** Where that begins in the file as it was read. */
  readonly start: number;
  readonly end: number;
  /** From 1. */
  readonly line: number;
  /** It has no key of its own: the one it is read by was made. */
  readonly keyless: boolean;
  readonly bib: BibEntry | null;
  /** What the reader found amiss in it; it is read all the same. */
  readonly remarks: readonly Text[];
}

/** A stretch of a file that is no entry that could be read: why, and its text. */
export interface Unread {
  readonly line: number;
  readonly why: readonly Text[];
  readonly text: string;
}

/** A file that is to come into a corpus, read by the readers of the corpus. */
export interface Arrived {
  readonly file: SourceFile;
  readonly format: Format;
  readonly entries: readonly Entry[];
  /** Entries of BibTeX that are no sources but lend their fields (`@xdata`). */
  readonly lenders: readonly BibEntry[];
  readonly abbreviations: readonly Abbreviation[];
  readonly failures: readonly Unread[];
  /** What stands between the entries and stays behind: remarks, `@comment`, `@preamble`. */
  readonly besides: readonly Unread[];
}

/** Reads a file that is to come into a corpus; what of it is no entry is kept with its line, so that nothing is lost unseen. */
export function arrivedIn(given: SourceFile, format: Format): Arrived {
  const { text, made } = withKeys(given.text, format);
  const file: SourceFile = { path: given.path, text };
  const lineOf = linesIn(new Map([[file.path, text]]));
  const { sources, findings } = readAs(format, file);
  const lexed = format === "bib" ? lexBibtex(file).entries : [];
  const bibAt = new Map(lexed.map((one) => [one.span.start, one]));
  const spans = (format === "bib" ? lexed : sources).map((one) => extentIn(text, format, one.span));
  const within = findingsBy(spans, findings);
  const entries = sources.map((source): Entry => {
    const { start, end } = extentIn(text, format, source.span);
    return {
      source,
      text: text.slice(start, end),
      start,
      end,
      line: lineOf(file.path, start).line,
      keyless:
        made.has(source.keySpan.start) || (format === "ris" && source.keySpan.end <= headEnd(text, start)),
      bib: bibAt.get(start) ?? null,
      remarks: (within.get(start) ?? []).map((one) => one.message),
    };
  });
  const unread = (piece: Piece): Unread => {
    const why = piece.why.length > 0 ? piece.why : [usual[piece.is]];
    return { line: lineOf(file.path, piece.start).line, why, text: text.slice(piece.start, piece.end) };
  };
  const abbreviations = format === "bib" ? abbreviationsIn(file, spans) : [];
  const taken = [...spans, ...abbreviations].toSorted((a, b) => a.start - b.start);
  const pieces = piecesBetween(text, format, taken, within.get(-1) ?? []);
  const failed = entries.filter((one) => unwanted.test(one.text));
  const good = entries.filter((one) => !unwanted.test(one.text));
  const odd = failed.map(({ line, text }): Unread => ({ line, why: [oddSigns], text }));
  return {
    file,
    format,
    entries: good,
    lenders: lexed.filter((one) => one.type === "xdata"),
    abbreviations,
    failures: [...pieces.filter((one) => one.is === "entry").map(unread), ...odd].toSorted(
      (a, b) => a.line - b.line,
    ),
    besides: pieces.filter((one) => one.is === "beside").map(unread),
  };
}

/** Where the first line of a record ends. */
function headEnd(text: string, start: number): number {
  const end = text.indexOf("\n", start);
  return end < 0 ? text.length : end;
}

const usual = {
  entry: say`Unreadable entry, expected its braces balanced and a comma between its fields`,
  beside: say`Text outside of the entries`,
} as const;

// oxlint-disable-next-line no-control-regex -- these are what is looked for
const unwanted = /[\u0000-\u0008\u000b\u000c\u000e-\u001f]/;
const oddSigns = say`Unexpected control character in the entry, expected text`;

/** Where an entry ends for a person: a record of RIS with its `ER`, which the reader leaves out. */
export function extentIn(text: string, format: Format, { start, end }: Pick<Span, "start" | "end">): Extent {
  if (format !== "ris") return { start, end };
  const close = /\s{0,1000}?\r?\nER {1,2}-[^\r\n]*/y;
  close.lastIndex = end;
  return { start, end: close.test(text) ? close.lastIndex : end };
}

/** Where an entry begins and ends in its file. */
export interface Extent {
  readonly start: number;
  readonly end: number;
}

/** Findings by the beginning of the entry that they are in; those in none under -1. */
function findingsBy(
  spans: readonly Extent[],
  findings: readonly Finding[],
): ReadonlyMap<number, readonly Finding[]> {
  const found = new Map<number, Finding[]>();
  const sorted = findings.toSorted((a, b) => (a.at?.start ?? 0) - (b.at?.start ?? 0));
  let next = 0;
  for (const one of sorted) {
    const at = one.at?.start ?? 0;
    while ((spans[next]?.end ?? Infinity) <= at) next++;
    const span = spans[next];
    const key = span !== undefined && span.start <= at ? span.start : -1;
    const list = found.get(key);
    if (list) list.push(one);
    else found.set(key, [one]);
  }
  return found;
}
