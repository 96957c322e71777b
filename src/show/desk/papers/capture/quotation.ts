/** A selected text as a scholar would write it, and the words of which it cannot be told how they are written. */
export interface Quotation {
  readonly text: string;
  /** Divided at a line's end and written as one word, though the paper has them so nowhere else. */
  readonly joined: readonly string[];
  /** Divided at a line's end at a hyphen that may be their own, and has been kept. */
  readonly kept: readonly string[];
}

/** Ligatures and the forms that Arabic letters take in print. */
const forms = /[\uFB00-\uFB06\uFB13-\uFB17\uFB50-\uFDFF\uFE70-\uFEFC]/gu;
/** What stands for the rest of a word at the end of a line: hyphens, and the sign that readers of scans make of one. */
const divided =
  /([\p{L}\p{M}\p{N}'’‐-]*[\p{L}\p{M}\p{N}])([-\u2010\u00AD¬])[^\S\n]*\n\s*([\p{L}\p{M}\p{N}][\p{L}\p{M}\p{N}'’]*)/gu;
const unspaced = /[\p{sc=Han}\p{sc=Hiragana}\p{sc=Katakana}]/u;

/** A word that no line's end divides. */
const undivided =
  /(?<![\p{L}\p{M}\p{N}]|[-\u2010\u00AD¬][^\S\n]*\n\s*)[\p{L}\p{M}\p{N}]+(?:[-\u2010'’][\p{L}\p{M}\p{N}]+)*(?![\p{L}\p{M}\p{N}]|[-\u2010\u00AD¬][^\S\n]*\n)/gu;

/** The words of a paper, in lower case, that no line's end divides. */
export function wordsOf(pageTexts: readonly string[]): ReadonlySet<string> {
  const before = known.get(pageTexts);
  if (before !== undefined) return before;
  const words = new Set<string>();
  for (const page of pageTexts) for (const [word] of inForm(page).matchAll(undivided)) words.add(plain(word));
  known.set(pageTexts, words);
  return words;
}

const known = new WeakMap<readonly string[], ReadonlySet<string>>();

/**
 * A selected text as a scholar would write it: ligatures in their letters, white space as one space, words that a line's end
 * divides in one. Whether a hyphen there is the word's own is told by how the paper writes the word elsewhere; where it does
 * not, the hyphen is kept if both halves are words of the paper.
 */
export function quotation(selected: string, paper: ReadonlySet<string>): Quotation {
  const joined = new Set<string>();
  const kept = new Set<string>();
  const whole = inForm(selected).replace(divided, (_, first: string, sign: string, rest: string) => {
    const { word, sure } = inOne(first, sign, rest, paper);
    if (!sure) (word === first + rest ? joined : kept).add(word);
    return word;
  });
  const text = whole
    .replace(/\s*\n\s*/gu, (_, at: number, all: string) => lineEnd(all, at))
    .replace(/[\p{Cf}\p{Cs}\uFFFE\uFFFF]/gu, (sign) => (shaping.test(sign) ? sign : ""))
    .replace(/\s+/gu, " ")
    .trim();
  return { text, joined: [...joined], kept: [...kept] };
}

/** Signs that cannot be seen but by what they do to the letters beside them. */
const shaping = /[\u200C-\u200F]|\u061C/u;

function inForm(text: string): string {
  return text
    .replace(/\r\n?/gu, "\n")
    .replace(/[\p{Cc}]/gu, (sign) => (/\s/.test(sign) ? sign : ""))
    .replace(forms, (sign) => sign.normalize("NFKC"))
    .normalize("NFC");
}

function inOne(
  first: string,
  sign: string,
  rest: string,
  paper: ReadonlySet<string>,
): { readonly word: string; readonly sure: boolean } {
  const one = first + rest;
  const two = `${first}-${rest}`;
  if (sign === "\u00AD") return { word: one, sure: true };
  // Figures, and a name after a name, have a hyphen of their own.
  if (!/\p{L}\p{M}*$/u.test(first) || !/^\p{L}/u.test(rest)) return { word: two, sure: true };
  if (/^\p{Lu}/u.test(rest) && first !== first.toUpperCase()) return { word: two, sure: true };
  const has = (word: string): boolean => paper.has(plain(word));
  if (has(one) !== has(two)) return { word: has(one) ? one : two, sure: true };
  return has(two) || (has(first) && has(rest)) ? { word: two, sure: false } : { word: one, sure: false };
}

function plain(word: string): string {
  return word.toLowerCase().replace(/\u2010/gu, "-");
}

/** A line's end is a space, but after a dash that joins and where a script writes none. */
function lineEnd(all: string, at: number): string {
  const before = all.slice(0, at).at(-1) ?? "";
  const after = all.slice(at).trimStart()[0] ?? "";
  if (unspaced.test(before) && unspaced.test(after)) return "";
  return before === "–" && /\d/u.test(after) && /\d–$/u.test(all.slice(0, at)) ? "" : " ";
}
