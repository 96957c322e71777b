import type { Finding } from "../../../base/finding.ts";
import type { Text } from "../../../base/text/said/said.ts";
import type { Format } from "./formats.ts";

/** A stretch between the entries that were read: an entry that was not, or what is none. */
export interface Piece {
  readonly is: "entry" | "beside";
  readonly start: number;
  readonly end: number;
  /** What the reader said of it. */
  readonly why: readonly Text[];
}

/** Where in each format a new entry, or what would be one, begins. */
const heads = {
  bib: /^[ \t]{0,200}@[ \t]{0,20}[A-Za-z]{1,60}\s{0,200}[{(]/gm,
  ris: /^TY {1,2}-/gm,
  json: /\{\s{0,200}"(?:id|type)"\s{0,20}:/g,
} as const;

/** What may stand between entries and says nothing. */
const empty = {
  bib: /^[\s\uFEFF]*$/,
  ris: /^[\s\uFEFF]*$/,
  json: /^[\s\uFEFF,[\]}]*(?:\{\s*"items"\s*:\s*\[\s*)?$/,
} as const;

/**
 * The stretches between entries (in the order of their places) that say something. One that the reader found amiss, or that
 * begins as an entry does, was to be an entry. Abbreviations of BibTeX are among what is given: they go with the entries that use them.
 */
export function piecesBetween(
  text: string,
  format: Format,
  entries: readonly { readonly start: number; readonly end: number }[],
  findings: readonly Finding[],
): readonly Piece[] {
  const pieces: Piece[] = [];
  let from = 0;
  for (const { start, end } of [...entries, { start: text.length, end: text.length }]) {
    if (start > from) pieces.push(...partsOf(text, format, from, start, findings));
    from = Math.max(from, end);
  }
  return pieces;
}

function partsOf(
  text: string,
  format: Format,
  from: number,
  to: number,
  findings: readonly Finding[],
): readonly Piece[] {
  const gap = text.slice(from, to);
  if (empty[format].test(gap)) return [];
  const cuts = [...gap.matchAll(heads[format])].map(({ index }) => from + index);
  const starts = [...new Set([from, ...cuts])];
  return starts.flatMap((start, place): readonly Piece[] => {
    const end = starts[place + 1] ?? to;
    const part = text.slice(start, end);
    const lead = part.search(/[^\s\uFEFF,]/);
    if (lead < 0 || empty[format].test(part)) return [];
    const why = findings
      .filter((one) => one.level !== "note" && reaches(one, start, end, to === text.length && end === to))
      .map((one) => one.message);
    const begun = cuts.includes(start);
    const kind = /^\s*@\s*([A-Za-z]+)/.exec(part)?.[1]?.toLowerCase() ?? "";
    const none = format === "bib" && (!begun || kind === "comment" || kind === "preamble");
    const is = why.length > 0 || !none ? "entry" : "beside";
    return [{ is, start: start + lead, end: start + part.trimEnd().length, why }];
  });
}

/** A finding at the end of the file belongs to the last stretch. */
function reaches(one: Finding, start: number, end: number, last: boolean): boolean {
  const at = one.at?.start ?? 0;
  return at >= start && (at < end || (last && at >= end));
}
