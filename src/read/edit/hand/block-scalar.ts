import type { Style } from "../site/site.ts";

/** A block scalar: its head and its lines, indented, without line ends. */
export interface BlockScalar {
  readonly head: string;
  readonly body: readonly string[];
}

/**
 * A text over lines of its own below its key, or null where it has to stand in quotes. `indent` is the column of its
 * lines, `step` how far that is from the column of its key or dash.
 */
export function blockScalar(text: string, style: Style, indent: number, step: number): BlockScalar | null {
  if (/[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u2028\u2029\ufeff\ufffe\uffff]/u.test(text)) return null;
  if (/[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/.test(text)) return null;
  // Line ends kept at the end would take in the blank lines that part records.
  if (text.trim() === "" || text.endsWith("\n\n")) return null;
  const lines = (text.endsWith("\n") ? text.slice(0, -1) : text).split("\n");
  const chomp = text.endsWith("\n") ? "" : "-";
  const put = (content: readonly string[]): readonly string[] =>
    content.map((line) => (line === "" ? "" : `${" ".repeat(indent)}${line}`));
  if (style === "folded" && lines.every((line) => line === "" || /^\S(?:.*\S)?$/u.test(line)))
    return { head: `>${chomp}`, body: put(foldedLines(lines, Math.max(40, width - indent))) };
  const explicit = /^\n*[ \t]/u.test(text) ? String(step) : "";
  return { head: `|${explicit}${chomp}`, body: put(lines) };
}

/** Columns of a line of prose that is broken by hand. */
const width = 100;

/** Paragraphs broken into lines at single spaces; a line end of the text is a blank line more. */
function foldedLines(paragraphs: readonly string[], most: number): readonly string[] {
  return paragraphs.flatMap((paragraph, place) => [
    ...(place === 0 ? [] : [""]),
    ...(paragraph === "" ? [] : brokenAt(paragraph, most)),
  ]);
}

/** A line of prose as several, each at most so long where a single space allows it. */
export function brokenAt(line: string, most: number): readonly string[] {
  const lines: string[] = [];
  let rest = line;
  while (rest.length > most) {
    const places = [...rest.matchAll(/(?<=\S) (?=\S)/gu)].map(({ index }) => index);
    const place = places.filter((one) => one <= most).at(-1) ?? places[0];
    if (place === undefined) break;
    lines.push(rest.slice(0, place));
    rest = rest.slice(place + 1);
  }
  return [...lines, rest];
}
