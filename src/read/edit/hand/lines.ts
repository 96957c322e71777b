/** Where the line of an offset begins, behind a byte-order mark. */
export function lineStart(text: string, offset: number): number {
  const start = offset === 0 ? 0 : text.lastIndexOf("\n", offset - 1) + 1;
  return start === 0 && text.charCodeAt(0) === 0xfeff ? Math.min(1, Math.max(offset, 1)) : start;
}

/** Where the line of an offset ends, before its line end. */
export function lineEnd(text: string, offset: number): number {
  const next = text.indexOf("\n", offset);
  if (next < 0) return text.length;
  return next > offset && text[next - 1] === "\r" ? next - 1 : next;
}

/** Where the next line begins; the end of the text behind the last. */
export function lineAfter(text: string, offset: number): number {
  const next = text.indexOf("\n", offset);
  return next < 0 ? text.length : next + 1;
}

/** How far an offset stands from the beginning of its line. */
export function columnOf(text: string, offset: number): number {
  return offset - lineStart(text, offset);
}

/** The line end that stands behind the line of an offset, or else behind the line before it. */
export function lineEndAt(text: string, offset: number): string {
  const next = text.indexOf("\n", offset);
  const mark = next < 0 ? text.lastIndexOf("\n") : next;
  return mark > 0 && text[mark - 1] === "\r" ? "\r\n" : "\n";
}

/** Whether nothing but spaces stands before an offset in its line. */
export function leadsLine(text: string, offset: number): boolean {
  return /^[ \t]*$/u.test(text.slice(lineStart(text, offset), offset));
}

/** Whether nothing but a comment stands behind an offset in its line. */
export function closesLine(text: string, offset: number): boolean {
  return /^[ \t]*(?:$|#)/u.test(text.slice(offset, lineEnd(text, offset)));
}

/** Whether the line that begins at a place is blank. */
export function isBlankAt(text: string, start: number): boolean {
  return text.slice(start, lineEnd(text, start)).trim() === "";
}

/** Whether a blank line stands between two places. */
export function hasBlankBetween(text: string, from: number, to: number): boolean {
  return /\n[ \t]*\r?\n/u.test(text.slice(from, to));
}
