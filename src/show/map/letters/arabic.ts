/** Which form a letter takes in a joined run: alone 0, at its end 1, at its start 2, in its middle 3. */
export type Form = 0 | 1 | 2 | 3;

// Joining types by Unicode's ArabicShaping: hamza joins to nothing, these only to the letter before.
const joinsBefore = /^[\u0622-\u0625\u0627\u0629\u062f-\u0632\u0648\u0649\u0671\u0698]$/;
const joinsBoth =
  /^[\u0626\u0628\u062a-\u062e\u0633-\u063f\u0640-\u0647\u064a\u067e\u0686\u06a9\u06af\u06cc]$/;
const passedOver = /^\p{M}$/u;

/** The forms of the letters of a text; of a letter that is not Arabic, 0. */
export function joinedForms(letters: readonly string[]): readonly Form[] {
  const next = (from: number, step: 1 | -1): string => {
    let at = from + step;
    while (passedOver.test(letters[at] ?? "")) at += step;
    return letters[at] ?? "";
  };
  return letters.map((letter, at): Form => {
    const both = joinsBoth.test(letter);
    const before = (both || joinsBefore.test(letter)) && joinsBoth.test(next(at, -1));
    const after = both && (joinsBoth.test(next(at, 1)) || joinsBefore.test(next(at, 1)));
    return before ? (after ? 3 : 1) : after ? 2 : 0;
  });
}
