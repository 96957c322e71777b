import type { Id } from "../../base/finding.ts";
import type { Graph } from "../../link/graph.ts";
import type { Judgement } from "../judge.ts";
import { inWords } from "../rules/tell.ts";
import type { FailedAttack, WorkingAttack } from "./attack.ts";
import type { Circle, Settler } from "./core/core.ts";
import { evaluationOf } from "./evaluation.ts";
import type { Lack } from "./lack.ts";
import { answeredWords, notComputedWords, sentenceOf } from "./sentence.ts";
import type { Support } from "./support/support.ts";
import { whoArgues, worded } from "./wording.ts";

/** What a support is enough for, in a sentence. */
export function supportSentence({ records, exact }: Support): string {
  const some = records.length === 1 ? "This one record is" : `These ${records.length} records are`;
  if (!exact) {
    return `${some} enough for it to stand, and none can be spared; whether fewer would do was not found out.`;
  }
  return records.length === 1
    ? `${some} enough for it to stand.`
    : `${some} enough for it to stand; no fewer would be.`;
}

/** Why an attack comes to nothing, in a sentence about the attack. */
export function failedSentence(graph: Graph, { reason }: FailedAttack): string {
  return sentenceOf(graph, reason);
}

/** What a working attack hits and from what, in a sentence about what falls. */
export function attackSentence(graph: Graph, attack: WorkingAttack): string {
  const { by, on, way, rival, leansOn, failed } = attack;
  const [first] = leansOn;
  const who = whoArgues(graph, by);
  const from = first === undefined ? [] : [first];
  const more = leansOn.length > 1 ? " and more" : "";
  const ground = (name: string | undefined): string => (name === undefined ? "" : ` from ${name}${more}`);
  const end = answeredWords(failed.length);
  if (rival !== null) {
    return worded(graph, {
      room: [rival, ...from],
      plain: ([claim, name]) => `${who} argues for a rival, ${claim ?? ""},${ground(name)}; ${end}.`,
    });
  }
  // A claim and the argument for it are one thing to the reader when the attack names either.
  const itself = way.length === 1 || (way.length === 2 && graph.records.get(way[0] ?? "")?.list === "claims");
  if (itself) {
    return worded(graph, {
      room: from,
      plain: ([name]) => `${who} argues against it${ground(name)}; ${end}.`,
    });
  }
  return worded(graph, {
    room: [on, ...from],
    plain: ([hit, name]) => `${who} argues against ${hit ?? ""}${ground(name)}; ${end}.`,
  });
}

/** What a circle of open records is, in a sentence. */
export function circleSentence(graph: Graph, { members, deepest }: Circle): string {
  const [only] = members;
  if (members.length === 1 && only !== undefined)
    return worded(graph, { room: [only], plain: ([name]) => `${name ?? ""} is against itself.` });
  const some = `These ${members.length} records decide one another`;
  return deepest
    ? `${some}, and nothing outside them decides which way.`
    : `${some}, and hang on a further contradiction besides.`;
}

/** What would become of something open if one record were decided, in a sentence. */
export function settlerSentence(graph: Graph, judgement: Judgement, settler: Settler): string {
  const argument = evaluationOf(judgement).argument(settler.id);
  const [premise] = argument?.because ?? [];
  const verb = argument ? "worked" : "held";
  const room = argument ? (premise === undefined ? [] : [premise]) : [settler.id];
  const naming = (name: string | undefined): string => {
    if (!argument) return name ?? "";
    const who = whoArgues(graph, settler.id);
    return name === undefined ? `the word of ${who}` : `the argument of ${who} from ${name}`;
  };
  return worded(graph, { room, plain: ([name]) => settled(settler, naming(name), verb) });
}

/** The same in a sentence that calls the record `this`, to stand beside its name. */
export function settlerOutcome(judgement: Judgement, settler: Settler): string {
  return settled(settler, "this", evaluationOf(judgement).argument(settler.id) ? "worked" : "held");
}

const wouldBe = { stands: "stand", falls: "fall", open: "stay open" } as const;

function settled({ held, fell }: Settler, name: string, verb: "held" | "worked"): string {
  if (held === fell) return `It would ${wouldBe[held]} either way, were it known whether ${name} ${verb}.`;
  const not = `did not ${verb === "held" ? "hold" : "work"}`;
  if (fell === "open") return `It would ${wouldBe[held]} if ${name} ${verb}.`;
  if (held === "open") return `It would ${wouldBe[fell]} if ${name} ${not}.`;
  return `It would ${wouldBe[held]} if ${name} ${verb}, and ${wouldBe[fell]} if not.`;
}

/** That no single record would settle something open, or how many were not tried. */
export function unsettledSentence(settlers: number, untried: number): string | null {
  if (untried > 0) return untried === 1 ? "One of them was not tried." : `${untried} of them were not tried.`;
  return settlers === 0 ? "No single one of them would settle it." : null;
}

/** What is missing, in a sentence about what is unsupported; beside the name of what lacks it, that is called `it`. */
export function lackSentence(graph: Graph, { way, missing }: Lack, beside = false): string {
  const it = (of: Id, about: (name: string) => string): string => {
    if (beside || of === way[0]) return worded(graph, { room: [], plain: () => about("it") });
    return worded(graph, { room: [of], plain: ([name]) => about(name ?? "") });
  };
  switch (missing.what) {
    case "no-argument":
      return it(missing.of, (name) => `Nobody has put an argument under ${name}.`);
    case "unread-argument":
      return it(
        missing.of,
        (name) => `An argument for ${name} is left out: what it leans on could not be read.`,
      );
    case "not-read":
      return beside ? "It could not be read." : "Something that it leans on could not be read.";
    case "not-counted":
      return it(missing.of, (name) => `${name} was not in print yet, or is left out.`);
    case "not-computed":
      return it(missing.of, (name) => notComputedWords(missing.status, name === "it" ? "the number" : name));
    case "inconclusive":
      return it(missing.of, (name) => `${name} was computed, and decides nothing about the claim.`);
    case "silence-unweighed":
      return worded(graph, {
        room: [],
        plain: () => `${whoArgues(graph, missing.of)} argues from silence, which nobody has weighed.`,
      });
    case "circle":
      return circleLack(graph, missing.members);
  }
}

function circleLack(graph: Graph, members: readonly Id[]): string {
  const claims = members.filter((id) => graph.records.get(id)?.list === "claims");
  const [only] = claims;
  if (claims.length === 1 && only !== undefined)
    return worded(graph, { room: [only], plain: ([name]) => `${name ?? ""} is held up by itself alone.` });
  const more = claims.length > 3 ? [`${claims.length - 2} more`] : [];
  return worded(graph, {
    room: more.length > 0 ? claims.slice(0, 2) : claims,
    plain: (names) => `${inWords([...names, ...more])} hold one another up, and nothing is under them.`,
  });
}
