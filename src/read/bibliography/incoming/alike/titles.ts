import { plainText } from "../../csl.ts";
import type { CslItem } from "../../csl.ts";

/** Articles that a title may begin with, in the languages that much of the literature is in (common practice). */
const articles =
  /^(?:the|an?|der|die|das|den|dem|eine?r?|le|la|les|l|une?|el|los|las|il|lo|gli|i|uno|una|o|os|as|uma?s?|de|het|een|η|ο|το|οι|τα)\s+(?=\S)/u;

/** A title, or a part of one, as it is compared: without case, accents, punctuation and the article at its head. */
export function foldedTitle(text: string): string {
  const words = plainText(text)
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/ß/gu, "ss")
    .replace(/ς/gu, "σ")
    .replace(/æ/gu, "ae")
    .replace(/œ/gu, "oe")
    .replace(/ø/gu, "o")
    .replace(/[أإآٱ]/gu, "ا")
    .replace(/[^\p{L}\p{N}]+/gu, " ")
    .trim();
  return words.replace(articles, "");
}

/** What a title is compared by: the whole of it, and what stands before its subtitle; both empty where there is none. */
export function titleOf(csl: CslItem): { readonly whole: string; readonly main: string } {
  const title = typeof csl.title === "string" ? csl.title : "";
  return { whole: foldedTitle(title), main: foldedTitle(/^(.{3,}?)[:：]\s/u.exec(title)?.[1] ?? title) };
}

/** Whether two titles say that they are of two works: neither is empty, and they share fewer than half of the words of the shorter. */
export function titlesApart(a: CslItem, b: CslItem): boolean {
  const [one, other] = [titleOf(a).whole, titleOf(b).whole];
  if (one === "" || other === "" || one === other) return false;
  const [words, others] = [new Set(one.split(" ")), new Set(other.split(" "))];
  const shared = [...words].filter((word) => others.has(word)).length;
  return shared * 2 < Math.min(words.size, others.size);
}
