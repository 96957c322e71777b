import type { Id } from "../../base/finding.ts";
import { clip, wordsIn } from "../../base/text/said/clip.ts";
import { inEnglish } from "../../base/text/said/english.ts";
import { first, say } from "../../base/text/said/said.ts";
import type { Hole, Mention, Said, Text } from "../../base/text/said/said.ts";
import { authorText, labelText } from "../../link/names/label.ts";
import type { Graph } from "../../link/graph.ts";
import { speakerOf } from "../../link/names/spoken.ts";
import { withheldIn } from "../../link/withheld.ts";

/** Most words a sentence has, in English. */
export const longestSentence = 25;

/** A sentence to be made: the names of the records in `room` share the words that the rest leaves them. */
export interface Phrase {
  /** The sentence, given the names of the records in `room`. */
  readonly plain: (names: readonly Hole[]) => Said;
  readonly room: readonly Id[];
}

/** A sentence of at most 25 words, in which records go by what they are called. */
export function worded(graph: Graph, { plain, room }: Phrase): Said {
  const names = room.map((id) => nameOf(graph, id));
  const left = longestSentence - wordsIn(inEnglish(plain(room.map(() => ""))));
  const each = Math.max(3, Math.floor(left / Math.max(1, room.length)));
  return first(plain(names.map((name) => mentioned(name, each))));
}

/** What a record is called in a sentence: never its id, and nothing of what is withheld. */
export function nameOf(graph: Graph, id: Id): Text {
  const known = graph.records.has(id) || graph.sources.has(id) || graph.records.has(speakerOf(id));
  return known ? labelText(graph, id) : say`something that could not be read`;
}

/** Whose an argument is, in few words; a number speaks for itself. */
export function whoArgues(graph: Graph, id: Id): Mention {
  return { mention: argumentAuthor(graph, id), words: 4, quoted: false };
}

function argumentAuthor(graph: Graph, id: Id): Text {
  const withheld = withheldIn(graph);
  const origin = speakerOf(id);
  if (withheld(origin) || graph.provenance(origin).scholars.some(withheld)) return say`something withheld`;
  const record = graph.records.get(origin);
  if (record?.list === "derivations") return say`the ${record.values.plugin.replace(/-/g, " ")} number`;
  if (record?.list === "observations" || record?.list === "measurements") return say`this evidence`;
  return authorText(graph, origin) ?? say`this corpus`;
}

/** A name cut to so many words, in quotation marks where it is a sentence of its own. */
function mentioned(name: Text, words: number): Mention {
  const english = inEnglish(name);
  const quoted = wordsIn(english) > 3 || /^\p{Lu}.*\s/u.test(english);
  return { mention: typeof name === "string" ? clip(name, words) : name, words, quoted };
}
