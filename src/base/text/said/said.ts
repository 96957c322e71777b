/** A sentence or a part of one before it is put into a language: plain data, its English as written with numbered holes. */
export interface Said {
  /** The English with its holes, `Unknown {0}, expected {1}`: the key by which other languages know it. */
  readonly say: string;
  readonly with: readonly Hole[];
  /** Whether it begins a line, and with a capital where the script has any. */
  readonly first?: true;
}

/** Words of the corpus or a figure, which no language changes, or words of ours. */
export type Text = string | Said;

/** What stands in a hole. */
export type Hole = Text | Count | Row | Mention;

/** How many of something there are; the word beside it may follow it in other languages than English. */
export interface Count {
  readonly count: number;
  /** In words up to twelve. */
  readonly inWords?: true;
}

/** Several in a row: `a, b and c`, `a, b or c`, `a, b, c`. */
export interface Row {
  readonly row: readonly Hole[];
  readonly by: "and" | "or" | "comma";
}

/** A name or a sentence inside a sentence: cut to so many words, or in quotation marks. */
export interface Mention {
  readonly mention: Text;
  readonly words: number;
  readonly quoted: boolean;
}

const keys = new WeakMap<TemplateStringsArray, string>();

/** Says something in English: a template whose holes are texts, counts, rows and other things said. */
export function say(parts: TemplateStringsArray, ...holes: readonly Hole[]): Said {
  const known = keys.get(parts);
  const key = known ?? keyOf(parts);
  if (known === undefined) keys.set(parts, key);
  return { say: key, with: holes };
}

/** The key of what stands between the holes of a template. */
export function keyOf(parts: readonly string[]): string {
  return parts.map((part, place) => (place === 0 ? part : `{${place - 1}}${part}`)).join("");
}

/** A count in figures. */
export const count = (n: number): Count => ({ count: n });

/** A count in words up to twelve. */
export const countInWords = (n: number): Count => ({ count: n, inWords: true });

/** Several in a row, the last by `and` unless said otherwise. */
export const row = (texts: readonly Hole[], by: Row["by"] = "and"): Row => ({ row: texts, by });

/** What begins a line. */
export const first = (said: Said): Said => ({ ...said, first: true });

/** What is written in a file, or is to be, in the signs that set it off from the sentence. */
export const coded = (text: string): Said => say`\`${text}\``;
