/** A word in a text: its place in UTF-16 units, and the word as it is compared. */
export interface Token {
  readonly start: number;
  readonly end: number;
  readonly folded: string;
}

/** Longest word that is told from others; longer ones are cut. */
const longest = 64;

/** Letters that lose their marks only by agreement, and forms of one letter: Latin, Greek, Arabic. */
const alike: Readonly<Record<string, string>> = {
  ß: "ss",
  æ: "ae",
  œ: "oe",
  ø: "o",
  ł: "l",
  đ: "d",
  ð: "d",
  þ: "th",
  ı: "i",
  ς: "σ",
  ٱ: "ا",
  ى: "ي",
  ی: "ي",
  ې: "ي",
  ک: "ك",
  ة: "ه",
  ە: "ه",
  ـ: "",
};
const alikes = new RegExp(`[${Object.keys(alike).join("")}]`, "gu");
const plain = /^[a-z0-9]*$/;

/**
 * A word as it is compared: without case, marks and punctuation, one form for each letter (final sigma; Arabic alef, yeh and
 * teh marbuta, no tatweel or harakat) and Arabic digits as 0 to 9. Folding what is folded changes nothing.
 */
export function folded(word: string): string {
  const lower = word.toLowerCase();
  if (plain.test(lower)) return lower;
  return lower
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .normalize("NFD")
    .replace(/[^\p{L}\p{N}]/gu, "")
    .replace(alikes, (letter) => alike[letter] ?? letter)
    .replace(/[٠-٩۰-۹]/g, (digit) => String(digit.charCodeAt(0) & 15));
}

/** Words as a list is narrowed by them: without case and accents, all else as it is. */
export function plainWords(text: string): string {
  return text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();
}

/** One sign each where a script writes no spaces; elsewhere letters, figures and their marks in a row; `’s` at an end is no word. */
const words =
  /[\p{sc=Han}\p{sc=Hiragana}\p{sc=Katakana}]|(?:(?![\p{sc=Han}\p{sc=Hiragana}\p{sc=Katakana}])[\p{L}\p{N}\p{M}])+(?:['’ʼ]s(?![\p{L}\p{N}\p{M}]))?/giu;

/** The words of a text in their order. */
export function tokensOf(text: string): readonly Token[] {
  const found: Token[] = [];
  for (const { 0: word, index } of text.matchAll(words)) {
    const end = /['’ʼ]s$/i.test(word) ? word.length - 2 : word.length;
    const compared = folded(word.slice(0, end));
    if (compared !== "") found.push({ start: index, end: index + end, folded: cut(compared) });
  }
  return found;
}

/** The whole of some words with all points, strokes and spaces between them taken out: `BM 1816,0610.93` is `bm1816061093`. */
export function compact(tokens: readonly Token[]): string {
  return cut(tokens.map((token) => token.folded).join(""));
}

/**
 * Every word under which a text can be found: its words; those that stand together without a space as one (`P.7-11`, `0.743`,
 * `ring-a/post-12`); and the whole of a number or id.
 */
export function entriesOf(text: string, isKey: boolean): readonly Token[] {
  const tokens = tokensOf(text);
  if (tokens.length < 2) return tokens;
  const runs: Token[][] = isKey ? [[...tokens]] : [];
  let run: Token[] = [];
  for (const token of tokens) {
    const end = run.at(-1)?.end;
    if (end !== undefined && !/\s/.test(text.slice(end, token.start))) run.push(token);
    else runs.push((run = [token]));
  }
  const joined = runs
    .filter((one, place) => one.length > 1 && (place === 0 || !isKey || one.length < tokens.length))
    .map((one) => ({ start: one[0]?.start ?? 0, end: one.at(-1)?.end ?? 0, folded: compact(one) }));
  return [...tokens, ...joined];
}

function cut(word: string): string {
  return word.length <= longest ? word : [...word].slice(0, longest).join("");
}
