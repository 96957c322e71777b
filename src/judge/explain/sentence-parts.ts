import type { Id } from "../../base/finding.ts";
import { count, row, say } from "../../base/text/said/said.ts";
import type { Hole, Said } from "../../base/text/said/said.ts";
import type { Graph } from "../../link/graph.ts";
import type { Judgement } from "../judge.ts";
import type { FailedAttack, WorkingAttack } from "./attack.ts";
import type { Circle, Settler } from "./core/core.ts";
import { evaluationOf } from "./evaluation.ts";
import type { Lack } from "./lack.ts";
import { answeredWords, notComputedWords, reasonSaid } from "./sentence.ts";
import type { Support } from "./support/support.ts";
import { whoArgues, worded } from "./wording.ts";

/** What a support is enough for, in a sentence. */
export function supportSentence({ records, exact }: Support): Said {
  const n = records.length;
  if (!exact) {
    return n === 1
      ? say`This one record is enough for it to stand, and none can be spared; whether fewer would do was not found out.`
      : say`These ${count(n)} records are enough for it to stand, and none can be spared; whether fewer would do was not found out.`;
  }
  return n === 1
    ? say`This one record is enough for it to stand.`
    : say`These ${count(n)} records are enough for it to stand; no fewer would be.`;
}

/** Why an attack comes to nothing, in a sentence about the attack. */
export function failedSentence(graph: Graph, { reason }: FailedAttack): Said {
  return reasonSaid(graph, reason);
}

/** What a working attack hits and from what, in a sentence about what falls. */
export function attackSentence(graph: Graph, attack: WorkingAttack): Said {
  const { by, on, way, rival, leansOn, failed } = attack;
  const [first] = leansOn;
  const who = whoArgues(graph, by);
  const from = first === undefined ? [] : [first];
  const end = groundAndEnd(leansOn.length, answeredWords(failed.length));
  if (rival !== null) {
    return worded(graph, {
      room: [rival, ...from],
      plain: ([claim = "", name]) => say`${who} argues for a rival, ${claim},${end(name)}.`,
    });
  }
  // A claim and the argument for it are one thing to the reader when the attack names either.
  const itself = way.length === 1 || (way.length === 2 && graph.records.get(way[0] ?? "")?.list === "claims");
  if (itself) {
    return worded(graph, {
      room: from,
      plain: ([name]) => say`${who} argues against it${end(name)}.`,
    });
  }
  return worded(graph, {
    room: [on, ...from],
    plain: ([hit = "", name]) => say`${who} argues against ${hit}${end(name)}.`,
  });
}

/** From what an attack argues, and what answers it: the end of a sentence. */
function groundAndEnd(leansOn: number, answered: Said): (name: Hole | undefined) => Said {
  return (name) =>
    name === undefined
      ? say`; ${answered}`
      : leansOn > 1
        ? say` from ${name} and more; ${answered}`
        : say` from ${name}; ${answered}`;
}

/** What a circle of open records is, in a sentence. */
export function circleSentence(graph: Graph, { members, deepest }: Circle): Said {
  const [only] = members;
  const n = members.length;
  if (n === 1 && only !== undefined)
    return worded(graph, { room: [only], plain: ([name = ""]) => say`${name} is against itself.` });
  return deepest
    ? say`These ${count(n)} records decide one another, and nothing outside them decides which way.`
    : say`These ${count(n)} records decide one another, and hang on a further contradiction besides.`;
}

/** What would become of something open if one record were decided, in a sentence. */
export function settlerSentence(graph: Graph, judgement: Judgement, settler: Settler): Said {
  const argument = evaluationOf(judgement).argument(settler.id);
  if (!argument)
    return worded(graph, { room: [settler.id], plain: ([name = ""]) => settled(settler, name, "held") });
  const [premise] = argument.because;
  const who = whoArgues(graph, settler.id);
  const naming = (name: Hole | undefined): Said =>
    name === undefined ? say`the word of ${who}` : say`the argument of ${who} from ${name}`;
  return worded(graph, {
    room: premise === undefined ? [] : [premise],
    plain: ([name]) => settled(settler, naming(name), "worked"),
  });
}

/** The same in a sentence that calls the record `this`, to stand beside its name. */
export function settlerOutcome(judgement: Judgement, settler: Settler): Said {
  const works = evaluationOf(judgement).argument(settler.id) !== undefined;
  return settled(settler, say`this`, works ? "worked" : "held");
}

/** What would become of it if a record held, or an argument worked, and if not: nine outcomes, each its own sentence. */
function settled({ held, fell }: Settler, name: Hole, verb: "held" | "worked"): Said {
  const works = verb === "worked";
  if (held === fell) return eitherWay(held, name, works);
  if (fell === "open") return held === "stands" ? ifSo("stand", name, works) : ifSo("fall", name, works);
  if (held === "open") return fell === "stands" ? ifNot("stand", name, works) : ifNot("fall", name, works);
  if (held === "stands")
    return works
      ? say`It would stand if ${name} worked, and fall if not.`
      : say`It would stand if ${name} held, and fall if not.`;
  return works
    ? say`It would fall if ${name} worked, and stand if not.`
    : say`It would fall if ${name} held, and stand if not.`;
}

function eitherWay(is: Settler["held"], name: Hole, works: boolean): Said {
  if (is === "open")
    return works
      ? say`It would stay open either way, were it known whether ${name} worked.`
      : say`It would stay open either way, were it known whether ${name} held.`;
  if (is === "stands")
    return works
      ? say`It would stand either way, were it known whether ${name} worked.`
      : say`It would stand either way, were it known whether ${name} held.`;
  return works
    ? say`It would fall either way, were it known whether ${name} worked.`
    : say`It would fall either way, were it known whether ${name} held.`;
}

function ifSo(verb: "stand" | "fall", name: Hole, works: boolean): Said {
  if (verb === "stand")
    return works ? say`It would stand if ${name} worked.` : say`It would stand if ${name} held.`;
  return works ? say`It would fall if ${name} worked.` : say`It would fall if ${name} held.`;
}

function ifNot(verb: "stand" | "fall", name: Hole, works: boolean): Said {
  if (verb === "stand")
    return works
      ? say`It would stand if ${name} did not work.`
      : say`It would stand if ${name} did not hold.`;
  return works ? say`It would fall if ${name} did not work.` : say`It would fall if ${name} did not hold.`;
}

/** That no single record would settle something open, or how many were not tried. */
export function unsettledSentence(settlers: number, untried: number): Said | null {
  if (untried > 0)
    return untried === 1 ? say`One of them was not tried.` : say`${count(untried)} of them were not tried.`;
  return settlers === 0 ? say`No single one of them would settle it.` : null;
}

/** What is missing, in a sentence about what is unsupported; beside the name of what lacks it, that is called `it`. */
export function lackSentence(graph: Graph, { way, missing }: Lack, beside = false): Said {
  const it = (of: Id, itself: Said, named: (name: Hole) => Said): Said =>
    beside || of === way[0]
      ? worded(graph, { room: [], plain: () => itself })
      : worded(graph, { room: [of], plain: ([name = ""]) => named(name) });
  switch (missing.what) {
    case "no-argument":
      return it(
        missing.of,
        say`Nobody has put an argument under it.`,
        (name) => say`Nobody has put an argument under ${name}.`,
      );
    case "unread-argument":
      return it(
        missing.of,
        say`An argument for it is left out: what it leans on could not be read.`,
        (name) => say`An argument for ${name} is left out: what it leans on could not be read.`,
      );
    case "not-read":
      return beside ? say`It could not be read.` : say`Something that it leans on could not be read.`;
    case "not-counted":
      return it(
        missing.of,
        say`It was not in print yet, or is left out.`,
        (name) => say`${name} was not in print yet, or is left out.`,
      );
    case "not-computed":
      return it(missing.of, notComputedWords(missing.status, say`the number`), (name) =>
        notComputedWords(missing.status, name),
      );
    case "inconclusive":
      return it(
        missing.of,
        say`It was computed, and decides nothing about the claim.`,
        (name) => say`${name} was computed, and decides nothing about the claim.`,
      );
    case "silence-unweighed":
      return worded(graph, {
        room: [],
        plain: () => say`${whoArgues(graph, missing.of)} argues from silence, which no weighing bears out.`,
      });
    case "circle":
      return circleLack(graph, missing.members);
  }
}

function circleLack(graph: Graph, members: readonly Id[]): Said {
  const claims = members.filter((id) => graph.records.get(id)?.list === "claims");
  const [only] = claims;
  if (claims.length === 1 && only !== undefined)
    return worded(graph, { room: [only], plain: ([name = ""]) => say`${name} is held up by itself alone.` });
  const more = claims.length > 3 ? claims.length - 2 : 0;
  return worded(graph, {
    room: more > 0 ? claims.slice(0, 2) : claims,
    plain: (names) =>
      say`${more > 0 ? say`${row(names, "comma")} and ${count(more)} more` : row(names)} hold one another up, and nothing is under them.`,
  });
}
