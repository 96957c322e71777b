import { storable } from "../../../base/text/steering.ts";

/**
 * Words as they are: what CommonMark, its tables and notes, or the Markdown of pandoc would read as signs of theirs is kept
 * from it. Every ASCII punctuation mark may be escaped (CommonMark 0.31.2, 2.4).
 */
export function escaped(text: string): string {
  return storable(text)
    .replace(/[ \t\r\n\f\v]+/g, " ")
    .replace(/[\\`*_[\]<>#|~^$@{}]|&(?=#?\w+;)/g, "\\$&")
    .replace(/-(?=-)/g, "\\-")
    .replace(/:(?=[\w+-]+:)/g, "\\:")
    .replace(/\.(?=\.\.)/g, "\\.");
}

/** What begins a line of its own: no list, heading, rule, definition or caption begins with it. */
export function begun(line: string): string {
  return line
    .replace(/^ +/, "")
    .replace(/^[-+=:%]/, "\\$&")
    .replace(/^\((?=[\w@#]{1,9}\))/, "\\(")
    .replace(/^(\d{1,9}|[A-Za-z]|[ivxlcdmIVXLCDM]{1,8}|#)([.)])(?=\s|$)/, "$1\\$2")
    .replace(/^([Tt]able):/, "$1\\:");
}

/** A line where no new one may begin: what it ends with cannot break it. */
export function ended(line: string): string {
  return line.replace(/ +$/, "");
}
