import { editDistance } from "../nearest.ts";

/**
 * The one candidate that a word can only be a slip for: alike but for case and hyphens, or one slip in a part of four
 * letters or more. Numbers are never slips, and two candidates are a question, not an answer.
 */
export function slipFor(word: string, candidates: Iterable<string>): string | null {
  return slipAmong(candidates)(word);
}

/** The same for many words and one set of candidates, which is gone through when the first word is asked for. */
export function slipAmong(candidates: Iterable<string>): (word: string) => string | null {
  let index: SlipIndex | null = null;
  return (word) => {
    index ??= slipIndexOf(candidates);
    const { joined, framed } = index;
    const parts = partsOf(word);
    const slips = parts.flatMap((part, place) =>
      part.length < 4
        ? []
        : (framed.get(frameOf(parts, place)) ?? [])
            .filter((one) => isSlip(part, one.part))
            .map((one) => one.text),
    );
    const found = new Set([...(joined.get(parts.join("")) ?? []), ...slips]);
    const [first] = found;
    return found.size === 1 && first !== undefined ? first : null;
  };
}

/** Texts by their parts without what stands between, and by all their parts but one. */
interface SlipIndex {
  readonly joined: ReadonlyMap<string, readonly string[]>;
  readonly framed: ReadonlyMap<string, readonly { readonly part: string; readonly text: string }[]>;
}

function slipIndexOf(candidates: Iterable<string>): SlipIndex {
  const joined = new Map<string, string[]>();
  const framed = new Map<string, { readonly part: string; readonly text: string }[]>();
  for (const text of new Set(candidates)) {
    const parts = partsOf(text);
    grow(joined, parts.join(""), text);
    parts.forEach((part, place) => {
      if (part.length >= 4) grow(framed, frameOf(parts, place), { part, text });
    });
  }
  return { joined, framed };
}

function isSlip(part: string, other: string): boolean {
  return editDistance(part, other, 1) <= 1 && digitsOf(part) === digitsOf(other);
}

/** The words and numbers of a text, in small letters. */
function partsOf(text: string): readonly string[] {
  return text
    .normalize("NFC")
    .toLowerCase()
    .split(/[^\p{L}\p{N}/]+/u);
}

/** What texts have in common that differ in the part at one place only. */
function frameOf(parts: readonly string[], place: number): string {
  return `${place}\n${parts.with(place, "").join("\n")}`;
}

function grow<T>(lists: Map<string, T[]>, key: string, one: T): void {
  const list = lists.get(key);
  if (list) list.push(one);
  else lists.set(key, [one]);
}

function digitsOf(text: string): string {
  return text.replace(/\P{N}/gu, "");
}
