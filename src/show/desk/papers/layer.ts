/** A text as it is compared: its signs, and of each where it stands in the text. */
export interface Compared {
  readonly signs: string;
  readonly at: readonly number[];
}

const spaces = /[\s\p{Cf}\p{Cc}\p{Z}]/u;
const dashes = /[\p{Pd}¬−]/u;
const single = /[‘’‚‛ʼ´`′]/u;
const double = /[“”„‟«»″]/u;

/**
 * Compares texts as two text layers of one page may differ: without white space, hyphens and case, ligatures and accents in
 * parts of which the accents are left out.
 */
export function compared(text: string): Compared {
  const signs: string[] = [];
  const at: number[] = [];
  let place = 0;
  for (const sign of text) {
    for (const part of partsOf(sign)) {
      signs.push(part);
      for (let unit = 0; unit < part.length; unit++) at.push(place);
    }
    place += sign.length;
  }
  return { signs: signs.join(""), at };
}

function partsOf(sign: string): string {
  const code = sign.charCodeAt(0);
  if (code < 128) {
    if (code <= 32 || sign === "-") return "";
    return sign === "`" ? "'" : sign.toLowerCase();
  }
  if (spaces.test(sign) || dashes.test(sign)) return "";
  if (single.test(sign)) return "'";
  if (double.test(sign)) return '"';
  return sign
    .normalize("NFKD")
    .replace(/[\p{M}\s\p{Pd}]/gu, "")
    .toLowerCase()
    .normalize("NFKD")
    .replace(/\p{M}/gu, "");
}

/** The end of a sign together with the marks over and under it. */
export function pastMarks(text: string, at: number): number {
  const [sign = ""] = text.slice(at, at + 2);
  const [marks = ""] = /^\p{M}*/u.exec(text.slice(at + sign.length)) ?? [];
  return at + sign.length + marks.length;
}

/** The words between two places as they are written down: runs of white space as one, without signs that nobody can see. */
export function wordsBetween(text: string, start: number, end: number, edges = false): string {
  const words = text
    .slice(start, end)
    .replace(/[\p{Cf}\p{Cc}\p{Cs}\uFFFE\uFFFF]/gu, (sign) => (/\s/.test(sign) ? " " : ""))
    .replace(/\s+/gu, " ");
  return edges ? words : words.trim();
}
