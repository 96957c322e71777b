import type { Id } from "../../base/finding.ts";
import { authorLabel, labelOf } from "../../link/label.ts";
import type { Graph } from "../../link/graph.ts";
import { speakerOf } from "../../link/spoken.ts";
import type { Reason } from "./reason.ts";

/** Most words a sentence of the catalogue has. */
export const longestSentence = 25;

/** A reason as one sentence of at most 25 words, in which records go by what they are called. */
export function sentenceOf(graph: Graph, reason: Reason): string {
  const { plain, room } = catalogue(graph, reason);
  const names = room.map((id) => labelOf(graph, id));
  const left = longestSentence - wordsIn(plain(room.map(() => "")));
  const each = Math.max(3, Math.floor(left / Math.max(1, room.length)));
  return capital(plain(names.map((name) => quotedClip(name, each))));
}

interface Phrase {
  /** The sentence, given the names of the records in `room`. */
  readonly plain: (names: readonly string[]) => string;
  readonly room: readonly Id[];
}

/** Every sentence about a standing: the only place where they are worded. */
function catalogue(graph: Graph, reason: Reason): Phrase {
  const who = (id: Id): string => clip(argumentAuthor(graph, id), 4);
  switch (reason.why) {
    case "argued": {
      const [first] = reason.from;
      const answered = answeredWords(reason.answered);
      if (first === undefined)
        return { room: [], plain: () => `${who(reason.by)} says so, and testimony counts here.` };
      const more = reason.from.length > 1 ? " and more" : "";
      return {
        room: [first],
        plain: ([name]) => `${who(reason.by)} argues for it from ${name ?? ""}${more}; ${answered}.`,
      };
    }
    case "unattacked":
      return {
        room: [],
        plain: () =>
          `Nothing that works is against it${reason.answered > 0 ? `; ${answeredWords(reason.answered)}` : ""}.`,
      };
    case "contested":
      return reason.rival === null
        ? {
            room: [],
            plain: () => `${who(reason.by)} is met by ${who(reason.against)}, and neither beats the other.`,
          }
        : {
            room: [reason.rival],
            plain: ([name]) =>
              `${who(reason.by)} argues for it and ${who(reason.against)} for a rival, ${name ?? ""}; neither beats the other.`,
          };
    case "leans-on-open":
      return {
        room: [reason.premise],
        plain: ([name]) =>
          `${reason.by === null ? "It" : who(reason.by)} leans on ${name ?? ""}, which is open itself.`,
      };
    case "beaten":
      return reason.rival === null
        ? {
            room: [],
            plain: () => `${who(reason.by)} argues against it, and nothing that works answers that.`,
          }
        : {
            room: [reason.rival],
            plain: ([name]) => `${who(reason.by)} argues for a rival, ${name ?? ""}, and that stands.`,
          };
    case "leans-on-fallen":
      return {
        room: [reason.premise],
        plain: ([name]) =>
          `${reason.by === null ? "It" : who(reason.by)} leans on ${name ?? ""}, which falls.`,
      };
    case "no-argument":
      return { room: [], plain: () => "Nobody has put an argument under it." };
    case "leans-on-unsupported":
      return {
        room: [reason.premise],
        plain: ([name]) =>
          `${reason.by === null ? "It" : who(reason.by)} leans on ${name ?? ""}, under which there is nothing.`,
      };
    case "circle":
      return reason.through.length < 2
        ? { room: [], plain: () => "The only argument for it leans on the claim itself." }
        : {
            room: [reason.through[1] ?? reason.through[0] ?? ""],
            plain: ([name]) => `It is held up by ${name ?? ""}, which is held up by it in turn.`,
          };
    case "silence-unweighed":
      return {
        room: [],
        plain: () => "It is argued from silence, and nobody has weighed what that silence is worth.",
      };
    case "not-computed":
      return {
        room: [],
        plain: () =>
          reason.status === "refused"
            ? "The number was refused: the data do not allow it."
            : reason.status === "pending"
              ? "The number is still to be computed."
              : "The number could not be computed.",
      };
  }
}

/** Whose an argument is; a number speaks for itself. */
function argumentAuthor(graph: Graph, id: Id): string {
  const origin = speakerOf(id);
  const record = graph.records.get(origin);
  if (record?.list === "derivations") return `the ${record.values.plugin.replace(/-/g, " ")} number`;
  if (record?.list === "observations" || record?.list === "measurements") return "this evidence";
  const author = authorLabel(graph, origin);
  return author === "the corpus" ? "this corpus" : author;
}

function answeredWords(answered: number): string {
  if (answered === 0) return "nothing that works is against that";
  return answered === 1 ? "the one objection falls" : `all ${answered} objections fall`;
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
