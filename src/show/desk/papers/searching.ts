import { pastMarks } from "./layer.ts";

/** Words found in a paper: the page from 0, and where they stand in its text, in UTF-16 units. */
export interface Hit {
  readonly page: number;
  readonly start: number;
  readonly end: number;
}

/** A text as it is searched: its signs, and of each unit where its sign stands in the text. */
interface Folded {
  readonly signs: string;
  readonly at: readonly number[];
}

const hyphen = /^[-\u2010\u2011¬]$/u;
const letter = /^[\p{L}\p{M}]$/u;
const alike: Readonly<Record<string, string>> = {
  "‘": "'",
  "’": "'",
  ʼ: "'",
  "`": "'",
  "´": "'",
  "“": '"',
  "”": '"',
  "„": '"',
  "«": '"',
  "»": '"',
  ς: "σ",
  ß: "ss",
  ẞ: "ss",
  æ: "ae",
  Æ: "ae",
  œ: "oe",
  Œ: "oe",
  // The stroke that lengthens a line of Arabic.
  ـ: "",
};

/**
 * Folds a text for searching: small letters without accents, ligatures in their letters, runs of white space as one
 * space; hyphens between letters go, at the end of a line with it, since a word may be written with and without.
 */
function folded(text: string): Folded {
  const signs: string[] = [];
  const at: number[] = [];
  const add = (part: string, place: number): void => {
    signs.push(part);
    for (let unit = 0; unit < part.length; unit++) at.push(place);
  };
  let before = "";
  for (let place = 0; place < text.length;) {
    const [sign = ""] = text.slice(place, place + 2);
    const next = place + sign.length;
    if (/\s/u.test(sign)) {
      if (before !== " ") add(" ", place);
      before = " ";
    } else if (sign === "\u00ad" || (hyphen.test(sign) && letter.test(before))) {
      const [gap = ""] = /^[^\S\n]*\n\s*/u.exec(text.slice(next, next + 200)) ?? [];
      const [after = ""] = text.slice(next + gap.length, next + gap.length + 2);
      if (sign === "\u00ad" || letter.test(after)) {
        place = next + gap.length;
        continue;
      }
      add("-", place);
      before = sign;
    } else {
      add(partOf(sign), place);
      before = sign;
    }
    place = next;
  }
  return { signs: signs.join(""), at };
}

function partOf(sign: string): string {
  const code = sign.charCodeAt(0);
  if (code < 128 && sign !== "`") return sign.toLowerCase();
  if (/\p{Cf}|\p{Cc}/u.test(sign)) return "";
  if (/\p{Pd}|[−¬]/u.test(sign)) return "-";
  const plain = (alike[sign] ?? sign)
    .normalize("NFKD")
    .toLowerCase()
    .replace(/[\p{M}ـ]/gu, "");
  return alike[plain] ?? plain;
}

/** The most places that are told of one search. */
export const mostHits = 2000;

/** Makes a search of a paper that remembers its pages: where some words are, in order, at most `mostHits`. */
export function searching(): (pageTexts: readonly string[], words: string) => readonly Hit[] {
  const pages = new Map<number, { readonly text: string; readonly folded: Folded }>();
  const foldedPage = (page: number, text: string): Folded => {
    const before = pages.get(page);
    if (before?.text === text) return before.folded;
    const now = folded(text);
    pages.set(page, { text, folded: now });
    return now;
  };
  return (pageTexts, words) => {
    const sought = folded(words).signs.trim();
    const hits: Hit[] = [];
    if (sought === "") return hits;
    for (const [page, text] of pageTexts.entries()) {
      const { signs, at } = foldedPage(page, text);
      for (let from = signs.indexOf(sought); from >= 0; from = signs.indexOf(sought, from + sought.length)) {
        if (hits.length === mostHits) return hits;
        const last = at[from + sought.length - 1] ?? 0;
        hits.push({ page, start: at[from] ?? 0, end: pastMarks(text, last) });
      }
    }
    return hits;
  };
}
