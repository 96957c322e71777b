/** A letter; figures and stops of these scripts are none. */
const rightToLeft = String.raw`(?=\p{L})[\p{Script=Arabic}\p{Script=Hebrew}\p{Script=Syriac}\p{Script=Thaana}]`;
/** The left-to-right mark (U+200E). */
const mark = "\u200E";
const after = new RegExp(
  `(${rightToLeft}\\p{M}*)(?=[^\\p{L}\\p{M}${mark}]*\\p{N})(?![^\\p{L}]*${rightToLeft})`,
  "gu",
);
const ends = new RegExp(`${rightToLeft}\\p{M}*[^\\p{L}\\p{N}${mark}]*$`, "u");
const begins = /^[^\p{L}\p{N}]*\p{N}/u;

/**
 * Puts a mark between words that run from right to left and figures that follow them in a line that runs from left to right:
 * without it the year of such a name is set before the name (Unicode Standard Annex 9, rules W2 and N1).
 */
export function parted<Part extends { readonly text: string }>(parts: readonly Part[]): readonly Part[] {
  return parts.map((one, place) => {
    const text = one.text.replace(after, `$1${mark}`);
    const next = parts
      .slice(place + 1)
      .map((other) => other.text)
      .join("");
    return { ...one, text: ends.test(text) && begins.test(next) ? `${text}${mark}` : text };
  });
}
