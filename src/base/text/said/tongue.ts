import { clip } from "./clip.ts";
import type { Count, Hole, Mention, Row, Said, Text } from "./said.ts";

/** What a language does with what is said: its own sentence for the English one, and how its words are put together. */
export interface Tongue {
  /** The sentence with its holes, for a count where one stands in a hole; null where the language has none. */
  readonly sentence: (say: string, count: number | null) => string | null;
  readonly count: (count: Count) => string;
  readonly row: (texts: readonly string[], by: Row["by"]) => string;
  readonly quoted: (text: string) => string;
  /** Keeps a text of the corpus together among words that may run the other way. */
  readonly kept: (text: string) => string;
  readonly first: (text: string) => string;
}

/** What is said, in a language; in the other where the first has no such sentence. */
export function toldIn(text: Text, tongue: Tongue, otherwise: Tongue): string {
  if (typeof text === "string") return tongue.kept(text);
  const sentence = tongue.sentence(text.say, countOf(text));
  if (sentence === null) {
    const told = toldIn(text, otherwise, otherwise);
    return tongue === otherwise ? told : tongue.kept(told);
  }
  const told = sentence.replace(/\{(\d+)\}/g, (_, place: string) => {
    const hole = text.with[Number(place)];
    return hole === undefined ? "" : holeIn(hole, tongue, otherwise);
  });
  return text.first ? tongue.first(told) : told;
}

function holeIn(hole: Hole, tongue: Tongue, otherwise: Tongue): string {
  if (typeof hole === "string" || "say" in hole) return toldIn(hole, tongue, otherwise);
  if ("count" in hole) return tongue.count(hole);
  if ("row" in hole)
    return tongue.row(
      hole.row.map((one) => holeIn(one, tongue, otherwise)),
      hole.by,
    );
  return mentionIn(hole, tongue, otherwise);
}

function mentionIn({ mention, words, quoted }: Mention, tongue: Tongue, otherwise: Tongue): string {
  const text =
    typeof mention === "string"
      ? tongue.kept(clip(mention, words))
      : clip(toldIn(mention, tongue, otherwise), words);
  return quoted ? tongue.quoted(text) : text;
}

function countOf({ with: holes }: Said): number | null {
  for (const hole of holes) if (typeof hole !== "string" && "count" in hole) return hole.count;
  return null;
}
