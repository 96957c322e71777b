import type { Graph } from "../../link/graph.ts";
import type { Reason } from "./reason.ts";
import { whoArgues, worded } from "./wording.ts";
import type { Phrase } from "./wording.ts";

export { longestSentence } from "./wording.ts";

/** A reason as one sentence of at most 25 words, in which records go by what they are called. */
export function sentenceOf(graph: Graph, reason: Reason): string {
  return worded(graph, catalogue(graph, reason));
}

type Contested = Extract<Reason, { readonly why: "contested" }>;
type Beaten = Extract<Reason, { readonly why: "beaten" }>;

/** Every sentence about a standing; those about its support, attacks, core and lacks are in `sentence-parts.ts`. */
function catalogue(graph: Graph, reason: Reason): Phrase {
  const subject = "by" in reason && reason.by !== null ? whoArgues(graph, reason.by) : "It";
  const leaning = (premise: string, end: string): Phrase => ({
    room: [premise],
    plain: ([name]) => `${subject} leans on ${name ?? ""}, ${end}.`,
  });
  switch (reason.why) {
    case "argued": {
      const [first] = reason.from;
      const answered = answeredWords(reason.answered);
      if (first === undefined) return said(`${subject} says so, and testimony counts here.`);
      const more = reason.from.length > 1 ? " and more" : "";
      return {
        room: [first],
        plain: ([name]) => `${subject} argues for it from ${name ?? ""}${more}; ${answered}.`,
      };
    }
    case "unattacked":
      return said(
        `Nothing that works is against it${reason.answered > 0 ? `; ${answeredWords(reason.answered)}` : ""}.`,
      );
    case "contested":
      return contested(subject, whoArgues(graph, reason.against), reason);
    case "beaten":
      return beaten(subject, reason);
    case "leans-on-open":
      return leaning(reason.premise, "which is open itself");
    case "leans-on-fallen":
      return leaning(reason.premise, "which falls");
    case "leans-on-unsupported":
      return leaning(reason.premise, "under which there is nothing");
    case "leans-on-absent":
      return reason.read
        ? leaning(reason.premise, "which was not in print yet or is left out")
        : said(`${subject} leans on something that could not be read.`);
    case "absent":
      return said(reason.read ? "It was not in print yet, or is left out." : "It could not be read.");
    case "no-argument":
      return said("Nobody has put an argument under it.");
    case "circle":
      return reason.through.length < 2
        ? said("What argues for it leans on the claim itself.")
        : {
            room: [reason.through[1] ?? ""],
            plain: ([name]) => `It is held up by ${name ?? ""}, which is held up by it in turn.`,
          };
    case "silence-unweighed":
      return said("It is argued from silence, and nobody has weighed what that silence is worth.");
    case "not-computed":
      return said(notComputedWords(reason.status, "the number"));
  }
}

function contested(by: string, against: string, { rival, target }: Contested): Phrase {
  if (target !== null) {
    const plain = ([name]: readonly string[]): string =>
      `${by} argues against ${name ?? ""} and ${against} for it; neither beats the other.`;
    return { room: [target], plain };
  }
  if (rival === null) return said(`${by} is met by ${against}, and neither beats the other.`);
  const plain = ([name]: readonly string[]): string =>
    `${by} argues for it and ${against} for a rival, ${name ?? ""}; neither beats the other.`;
  return { room: [rival], plain };
}

function beaten(by: string, { rival, target }: Beaten): Phrase {
  if (target !== null)
    return {
      room: [target],
      plain: ([name]) => `It argues against ${name ?? ""}, for which ${by} argues, and that stands.`,
    };
  if (rival === null) return said(`${by} argues against it, and nothing that works answers that.`);
  return { room: [rival], plain: ([name]) => `${by} argues for a rival, ${name ?? ""}, and that stands.` };
}

const said = (sentence: string): Phrase => ({ room: [], plain: () => sentence });

/** Why there is no number, in a sentence. */
export function notComputedWords(status: string, number: string): string {
  if (status === "refused") return `${number} was refused: the data do not allow it.`;
  return `${number} ${status === "pending" ? "is still to be computed" : "could not be computed"}.`;
}

/** How many objections fall, as the end of a sentence. */
export function answeredWords(answered: number): string {
  if (answered === 0) return "nothing that works is against that";
  return answered === 1 ? "the one objection falls" : `all ${answered} objections fall`;
}
