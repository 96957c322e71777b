/** The pieces of a text in which it is made smaller: first lines, then signs. */
const manners: readonly ((text: string) => readonly string[])[] = [
  (text) => text.split(/(?<=\n)/u),
  (text) => text.split(/(?<=[\s,;{}[\]()<>"'])/u),
  (text) => [...text],
];

/**
 * A text that is as small as it gets while it still is what it was looked at for: ever smaller runs of lines, then of words
 * and of signs, are left out (Zeller & Hildebrandt 2002, "Simplifying and Isolating Failure-Inducing Input", from memory).
 */
export async function smaller(
  text: string,
  isStill: (text: string) => Promise<boolean>,
  mostTries = 600,
): Promise<string> {
  let tries = 0;
  let now = text;
  for (const piecesOf of manners) {
    let pieces = piecesOf(now);
    for (let size = Math.ceil(pieces.length / 2); size >= 1 && tries < mostTries;) {
      const before = pieces.length;
      for (let at = 0; at < pieces.length && tries < mostTries;) {
        const without = pieces.toSpliced(at, size);
        tries++;
        if (without.length > 0 && (await isStill(without.join("")))) pieces = without;
        else at += size;
      }
      if (size === 1 && pieces.length === before) break;
      size = size === 1 ? 1 : Math.ceil(size / 2);
    }
    now = pieces.join("");
  }
  return now;
}
