/** Tells in which line an offset of a file stands, and where that line begins; each text's lines are counted once. */
export function linesIn(
  texts: ReadonlyMap<string, string>,
): (file: string, offset: number) => { readonly line: number; readonly start: number } {
  const starts = new Map<string, readonly number[]>();
  return (file, offset) => {
    const lines = starts.get(file) ?? startsIn(texts.get(file) ?? "");
    starts.set(file, lines);
    const place = lastUpTo(lines, offset);
    return { line: place + 1, start: lines[place] ?? 0 };
  };
}

function startsIn(text: string): readonly number[] {
  const starts = [0];
  for (let at = text.indexOf("\n"); at >= 0; at = text.indexOf("\n", at + 1)) starts.push(at + 1);
  return starts;
}

/** The place of the last of ascending numbers that is not above a limit. */
function lastUpTo(numbers: readonly number[], limit: number): number {
  let low = 0;
  let high = numbers.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((numbers[middle] ?? 0) <= limit) low = middle;
    else high = middle - 1;
  }
  return low;
}
