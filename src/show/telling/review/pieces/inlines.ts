import type { Id } from "../../../../base/finding.ts";
import { inEnglish } from "../../../../base/text/said/english.ts";
import { first, say } from "../../../../base/text/said/said.ts";
import type { Text } from "../../../../base/text/said/said.ts";
import type { Standing } from "../../../../judge/judge.ts";
import { claimText } from "../../../pages/question.ts";
import type { Block, Heading, Inline, Inlines, Piece } from "../../blocks/block.ts";
import type { Sight } from "../desk.ts";
import { embedded } from "./embedded.ts";

/** Several in a row: `A`, `A and B`, `A, B and C`; or with `or`. What has commas of its own is parted by more than a comma. */
export function listed(groups: readonly Inlines[], by: "and" | "or" = "and"): Inlines {
  const all = groups.filter((group) => group.length > 0);
  const parted = all.length > 1 && all.some(hasComma);
  return all.flatMap((group, place): Inlines => {
    if (place === 0) return group;
    if (place < all.length - 1) return [parted ? "; " : ", ", ...group];
    if (parted) return [by === "and" ? say`; and ` : say`; or `, ...group];
    return [by === "and" ? say` and ` : say` or `, ...group];
  });
}

/** Whether something in a row has a comma of its own. */
function hasComma(group: Inlines): boolean {
  return group.some((one) => {
    if (typeof one === "string" || "say" in one) return /[,;،]/u.test(inEnglish(one));
    return one.is === "words" && /[,;،]/u.test(one.text);
  });
}

/** The beginning of a sentence: words of ours begin with a capital. */
export function begun([one, ...others]: Inlines): Inlines {
  if (one === undefined) return [];
  return [typeof one !== "string" && "say" in one ? first(one) : one, ...others];
}

/** Sentences one after the other, with a space between each two. */
export function sentences(all: readonly Inlines[]): Inlines {
  return all
    .filter((one) => one.length > 0)
    .flatMap((one, place): Inlines => (place === 0 ? one : [" ", ...one]));
}

/** Sentences as a paragraph; none of none. */
export function paragraph(all: readonly Inlines[]): readonly Block[] {
  const of = sentences(all);
  return of.length === 0 ? [] : [{ is: "paragraph", of }];
}

/** Words of the corpus in its own language, or in another. */
export function words(text: string, lang: string | null, quoted = false): Piece {
  return { is: "words", text, lang, quoted };
}

/** A sentence of the corpus inside another one; in quotation marks where it cannot be made part of it. */
export function inside(sight: Sight, sentence: string): Piece {
  const text = embedded(sentence, sight.language, sight.common);
  return words(text ?? sentence.trim().replace(/[.。]$/u, ""), sight.language, text === null);
}

/** A sentence of the corpus after a colon: begun with a capital, for which words are names cannot be told of all; with its stop. */
export function told(sight: Sight, sentence: string): Inlines {
  const trimmed = sentence.trim();
  const text = trimmed.charAt(0).toUpperCase() + trimmed.slice(1);
  return [words(text, sight.language), ...(/[.!?…。]$/u.test(text) ? [] : ["."])];
}

/** What a claim says, as the rest of a sentence: `that ` comes before it. */
export function claimInside(sight: Sight, claim: Id): Inlines {
  return [say`that `, inside(sight, claimText(sight.graph, claim))];
}

/** A heading of a section's part; `anchor` is how links find it. */
export function heading(level: Heading["level"], of: Inlines, anchor?: string): Heading {
  return anchor === undefined ? { is: "heading", level, of } : { is: "heading", level, of, anchor };
}

/** How something stands, to end a sentence: `stands`, `is open`. */
export function standingVerb(standing: Standing): Inlines {
  const piece: Inline = { is: "standing", standing };
  return standing === "stands" || standing === "falls" ? [piece] : [say`is `, piece];
}

/** Words of ours as a sentence of its own. */
export const line = (text: Text): Inlines => [text];
