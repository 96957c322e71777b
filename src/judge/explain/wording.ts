import type { Id } from "../../base/finding.ts";
import { authorLabel, labelOf } from "../../link/names/label.ts";
import type { Graph } from "../../link/graph.ts";
import { speakerOf } from "../../link/names/spoken.ts";
import { withheldIn } from "../../link/withheld.ts";

/** Most words a sentence of the catalogue has. */
export const longestSentence = 25;

/** A sentence to be made: the names of the records in `room` share the words that the rest leaves them. */
export interface Phrase {
  /** The sentence, given the names of the records in `room`. */
  readonly plain: (names: readonly string[]) => string;
  readonly room: readonly Id[];
}

/** A sentence of at most 25 words, in which records go by what they are called. */
export function worded(graph: Graph, { plain, room }: Phrase): string {
  const names = room.map((id) => nameOf(graph, id));
  const left = longestSentence - wordsIn(plain(room.map(() => "")));
  const each = Math.max(3, Math.floor(left / Math.max(1, room.length)));
  return capital(plain(names.map((name) => quotedClip(name, each))));
}

/** What a record is called in a sentence: never its id, and nothing of what is withheld. */
export function nameOf(graph: Graph, id: Id): string {
  const known = graph.records.has(id) || graph.sources.has(id) || graph.records.has(speakerOf(id));
  return known ? labelOf(graph, id) : "something that could not be read";
}

/** Whose an argument is, in few words; a number speaks for itself. */
export function whoArgues(graph: Graph, id: Id): string {
  return clip(argumentAuthor(graph, id), 4);
}

function argumentAuthor(graph: Graph, id: Id): string {
  const withheld = withheldIn(graph);
  const origin = speakerOf(id);
  if (withheld(origin) || graph.provenance(origin).scholars.some(withheld)) return "something withheld";
  const record = graph.records.get(origin);
  if (record?.list === "derivations") return `the ${record.values.plugin.replace(/-/g, " ")} number`;
  if (record?.list === "observations" || record?.list === "measurements") return "this evidence";
  const author = authorLabel(graph, origin);
  return author === "the corpus" ? "this corpus" : author;
}

/** A name cut to so many words, in quotation marks where it is a sentence of its own. */
function quotedClip(name: string, words: number): string {
  const cut = clip(name, words);
  return wordsIn(name) > 3 || /^\p{Lu}.*\s/u.test(name) ? `“${cut}”` : cut;
}

function clip(text: string, words: number): string {
  const all = text.split(/\s+/);
  return all.length <= words
    ? text
    : `${all
        .slice(0, words)
        .join(" ")
        .replace(/[,;:]$/, "")} …`;
}

function wordsIn(text: string): number {
  return text.split(/\s+/).filter((word) => word !== "" && word !== "…").length;
}

function capital(sentence: string): string {
  return sentence.charAt(0).toUpperCase() + sentence.slice(1);
}
