/** Words of a page by their places: from and to, in the text, and the line they are on. */
export interface Word {
  readonly start: number;
  readonly end: number;
  readonly line: number;
}

/** Words that are selected: from the one that stays to the one that moves, as places in a list of words. */
export interface Span {
  readonly fixed: number;
  readonly moved: number;
}

/** The words of a page, in order. */
export function wordsIn(text: string): readonly Word[] {
  const words: Word[] = [];
  let line = 0;
  let from = 0;
  for (const { 0: sign, index } of text.matchAll(/\n|[^\s]+/gu)) {
    if (sign === "\n") {
      line += words.length > from ? 1 : 0;
      from = words.length;
    } else words.push({ start: index, end: index + sign.length, line });
  }
  return words;
}

/** The words that an arrow key leads to; with `more`, the selection grows or shrinks at its moving end. Null for another key. */
export function movedBy(words: readonly Word[], span: Span, key: string, more: boolean): Span | null {
  const to = targetOf(words, span.moved, key);
  if (to === null) return null;
  const moved = Math.max(0, Math.min(words.length - 1, to));
  return { fixed: more ? span.fixed : moved, moved };
}

function targetOf(words: readonly Word[], from: number, key: string): number | null {
  switch (key) {
    case "ArrowRight":
      return from + 1;
    case "ArrowLeft":
      return from - 1;
    case "ArrowDown":
      return inLine(words, from, 1);
    case "ArrowUp":
      return inLine(words, from, -1);
    case "Home":
      return words.findIndex((one) => one.line === words[from]?.line);
    case "End":
      return words.findLastIndex((one) => one.line === words[from]?.line);
    default:
      return null;
  }
}

/** The word of the next line, or the one before, that is as far along it. */
function inLine(words: readonly Word[], from: number, step: 1 | -1): number {
  const line = words[from]?.line ?? 0;
  const first = words.findIndex((one) => one.line === line);
  const along = (words[from]?.start ?? 0) - (words[first]?.start ?? 0);
  const target = words.findIndex((one) => one.line === line + step);
  if (target < 0) return from;
  const begin = words[target]?.start ?? 0;
  const behind = words.findIndex(
    (one, at) => at > target && (one.line !== line + step || one.start - begin > along),
  );
  return behind < 0 ? words.length - 1 : behind - 1;
}
