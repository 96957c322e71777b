import { Lexer } from "yaml";

/**
 * Whether a merged text has every comment of both sides, those behind a value among them, as often as both leave it; what a
 * side took out may be gone.
 */
export function keepsComments(base: string, mine: string, theirs: string, merged: string): boolean {
  const [old, own, other] = [countsOf(base), countsOf(mine), countsOf(theirs)];
  const made = countsOf(merged);
  return [...new Set([...own.keys(), ...other.keys()])].every((comment) => {
    const [was, one, two] = [old.get(comment) ?? 0, own.get(comment) ?? 0, other.get(comment) ?? 0];
    const due = one >= was && two >= was ? Math.max(one, two) : one + two - was;
    return (made.get(comment) ?? 0) >= due;
  });
}

/** The lexer's sign that plain text follows. */
const plainFollows = "\u001f";

function countsOf(text: string): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  let before = "";
  for (const token of new Lexer().lex(text)) {
    const comment = token.startsWith("#") && before !== plainFollows ? token.trim() : "";
    if (comment !== "") counts.set(comment, (counts.get(comment) ?? 0) + 1);
    before = token;
  }
  return counts;
}
