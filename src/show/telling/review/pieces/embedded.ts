import type { Id } from "../../../../base/finding.ts";
import type { Graph } from "../../../../link/graph.ts";
import { withoutStop } from "../../../../link/names/label.ts";

/** Words of English that are no names wherever a sentence begins with them: small ones, and common ones of the trade. */
const small = new Set(
  `a all an another any at before beyond both by each either every few for four from half here how if in inside it its
   later many more most neither no none not nobody nothing of on once one only other others our outside over several
   since six some such that the their there these they this those three two under until we when where whether while
   who with within without
   animals ash bones bone bronze burials cattle charcoal clay copper evidence finds fire flint glass gold graves houses iron
   layers marks men metal objects people pits plants posts pots pottery rain residues roofs sheep sherds silver soot stones
   stone timber timbers tools traces trees use walls water wear wind wood women writing`.split(/\s+/),
);

/** The words that a corpus in English writes small somewhere: to begin a sentence with one makes it no name. */
export function commonWords(graph: Graph, shown: (id: Id) => boolean): ReadonlySet<string> {
  if (!isEnglish(graph.settings.language)) return new Set();
  const texts = [
    ...graph.list("claims").filter(({ id }) => shown(id)),
    ...graph.list("observations").filter(({ id }) => shown(id)),
    ...graph.list("arguments").filter(({ id }) => shown(id)),
  ].map(({ values }) => values.text ?? "");
  return new Set([...small, ...texts.flatMap((text) => text.match(/(?<![\p{L}\p{N}])\p{Ll}{3,}/gu) ?? [])]);
}

/**
 * A sentence of the corpus as the rest of another: without its stop, and begun small where its first word is certainly no
 * name; null where that cannot be told, and in any other language than English.
 */
export function embedded(sentence: string, language: string, common: ReadonlySet<string>): string | null {
  const text = withoutStop(sentence.trim());
  if (!isEnglish(language) || /[.!?]\s/u.test(text)) return null;
  const [word = ""] = /^[\p{L}\p{M}]+/u.exec(text) ?? [];
  if (word === "" || !/^\p{Lu}/u.test(word)) return text;
  const lower = word.charAt(0).toLowerCase() + word.slice(1);
  return common.has(lower) ? lower + text.slice(word.length) : null;
}

function isEnglish(language: string): boolean {
  return /^en\b/iu.test(language);
}
