import { inEnglish } from "../../base/text/said/english.ts";
import { count, say } from "../../base/text/said/said.ts";
import type { Hole, Said } from "../../base/text/said/said.ts";
import type { Id } from "../../base/finding.ts";
import type { Graph } from "../../link/graph.ts";
import type { Reason } from "./reason.ts";
import { whoArgues, worded } from "./wording.ts";
import type { Phrase } from "./wording.ts";

export { longestSentence } from "./wording.ts";

/** A reason as one sentence of at most 25 words, in which records go by what they are called. */
export function reasonSaid(graph: Graph, reason: Reason): Said {
  return worded(graph, phraseOf(graph, reason));
}

/** The same in English. */
export function sentenceOf(graph: Graph, reason: Reason): string {
  return inEnglish(reasonSaid(graph, reason));
}

type Contested = Extract<Reason, { readonly why: "contested" }>;
type Beaten = Extract<Reason, { readonly why: "beaten" }>;

/** Every sentence about a standing; those about its support, attacks, core and lacks are in `sentence-parts.ts`. */
function phraseOf(graph: Graph, reason: Reason): Phrase {
  const by = "by" in reason && reason.by !== null ? whoArgues(graph, reason.by) : null;
  switch (reason.why) {
    case "argued":
      return argued(by ?? "", reason.from, answeredWords(reason.answered));
    case "unattacked":
      return plainly(
        reason.answered > 0
          ? say`Nothing that works is against it; ${answeredWords(reason.answered)}.`
          : say`Nothing that works is against it.`,
      );
    case "contested":
      return contested(by ?? "", whoArgues(graph, reason.against), reason);
    case "beaten":
      return beaten(by ?? "", reason);
    case "leans-on-open":
      return leaning(by, reason.premise, say`which is open itself`);
    case "leans-on-fallen":
      return leaning(by, reason.premise, say`which falls`);
    case "leans-on-unsupported":
      return leaning(by, reason.premise, say`under which there is nothing`);
    case "leans-on-absent":
      if (reason.read) return leaning(by, reason.premise, say`which was not in print yet or is left out`);
      return plainly(
        by === null
          ? say`It leans on something that could not be read.`
          : say`${by} leans on something that could not be read.`,
      );
    case "absent":
      return plainly(
        reason.read ? say`It was not in print yet, or is left out.` : say`It could not be read.`,
      );
    case "no-argument":
      return plainly(say`Nobody has put an argument under it.`);
    case "circle":
      return reason.through.length < 2
        ? plainly(say`What argues for it leans on the claim itself.`)
        : {
            room: [reason.through[1] ?? ""],
            plain: ([name = ""]) => say`It is held up by ${name}, which is held up by it in turn.`,
          };
    case "silence-unweighed":
      return plainly(say`It is argued from silence, and no weighing of that silence bears it out.`);
    case "not-computed":
      return plainly(notComputedWords(reason.status, say`the number`));
  }
}

function argued(by: Hole, from: readonly Id[], answered: Said): Phrase {
  const [first] = from;
  if (first === undefined) return plainly(say`${by} says so, and testimony counts here.`);
  return {
    room: [first],
    plain: ([name = ""]) =>
      from.length > 1
        ? say`${by} argues for it from ${name} and more; ${answered}.`
        : say`${by} argues for it from ${name}; ${answered}.`,
  };
}

function leaning(by: Hole | null, premise: Id, end: Said): Phrase {
  return {
    room: [premise],
    plain: ([name = ""]) =>
      by === null ? say`It leans on ${name}, ${end}.` : say`${by} leans on ${name}, ${end}.`,
  };
}

function contested(by: Hole, against: Hole, { rival, target }: Contested): Phrase {
  if (target !== null)
    return {
      room: [target],
      plain: ([name = ""]) =>
        say`${by} argues against ${name} and ${against} for it; neither beats the other.`,
    };
  if (rival === null) return plainly(say`${by} is met by ${against}, and neither beats the other.`);
  return {
    room: [rival],
    plain: ([name = ""]) =>
      say`${by} argues for it and ${against} for a rival, ${name}; neither beats the other.`,
  };
}

function beaten(by: Hole, { rival, target }: Beaten): Phrase {
  if (target !== null)
    return {
      room: [target],
      plain: ([name = ""]) => say`It argues against ${name}, for which ${by} argues, and that stands.`,
    };
  if (rival === null) return plainly(say`${by} argues against it, and nothing that works answers that.`);
  return { room: [rival], plain: ([name = ""]) => say`${by} argues for a rival, ${name}, and that stands.` };
}

const plainly = (sentence: Said): Phrase => ({ room: [], plain: () => sentence });

/** Why there is no number, in a sentence. */
export function notComputedWords(status: string, number: Hole): Said {
  if (status === "refused") return say`${number} was refused: the data do not allow it.`;
  return status === "pending"
    ? say`${number} is still to be computed.`
    : say`${number} could not be computed.`;
}

/** How many objections fall, as the end of a sentence. */
export function answeredWords(answered: number): Said {
  if (answered === 0) return say`nothing that works is against that`;
  return answered === 1 ? say`the one objection falls` : say`all ${count(answered)} objections fall`;
}
