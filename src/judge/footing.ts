import type { Id } from "../base/finding.ts";
import { everyRecord } from "../derive/lens.ts";
import type { AnyLinked, Graph } from "../link/graph.ts";
import type { ListName } from "../read/grammar/field.ts";
import { latestPositions } from "./argument.ts";
import type { Argument } from "./argument.ts";
import type { Judgement } from "./judge.ts";

/** What a claim reaches when one looks along the arguments for it and disregards attacks. */
export type Footing = "observed" | "silent" | "attested" | "bare";

/** The footing of every claim. */
export function footings(graph: Graph, judgement: Judgement): ReadonlyMap<Id, Footing> {
  const { compiled, counts } = judgement;
  const attested = new Set(
    latestPositions(graph, counts)
      .filter((one) => one.stance === "holds")
      .map((one) => one.claim),
  );
  const result = new Map<Id, Footing>();
  for (const claim of graph.list("claims")) {
    if (!counts(claim.id)) continue;
    const reached = reach(claim.id);
    const footing = reached.seen
      ? "observed"
      : reached.silence
        ? "silent"
        : reached.word || attested.has(claim.id)
          ? "attested"
          : "bare";
    result.set(claim.id, footing);
  }
  return result;

  function reach(claim: Id): Omit<Under, "claims"> {
    const found = { seen: false, silence: false, word: false };
    const visited = new Set<Id>([claim]);
    const waiting = [claim];
    for (let at = waiting.pop(); at !== undefined; at = waiting.pop()) {
      for (const place of compiled.pro.get(at) ?? []) {
        const argument = compiled.arguments[place];
        const under = argument && underArgument(argument, graph, counts);
        // Nothing says more than that.
        if (under?.seen) return { ...found, seen: true };
        found.silence ||= under?.silence === true;
        found.word ||= under?.word === true;
        for (const premise of under?.claims ?? []) {
          if (!visited.has(premise)) waiting.push(premise);
          visited.add(premise);
        }
      }
    }
    return found;
  }
}

/** What lies right under an argument: something seen, a silence, a scholar's word; and the claims it takes for granted. */
interface Under {
  readonly seen: boolean;
  readonly silence: boolean;
  readonly word: boolean;
  readonly claims: readonly Id[];
}

const nothing: readonly Id[] = [];

/** An argument that is the same object leans on what it leant on. */
const known = new WeakMap<Argument, Under>();

function underArgument(argument: Argument, graph: Graph, counts: (id: Id) => boolean): Under {
  const had = counts === everyRecord ? known.get(argument) : undefined;
  if (had) return had;
  const premises = argument.because.filter(counts).flatMap((id) => graph.records.get(id) ?? []);
  const isSilence = (one: AnyLinked): boolean =>
    one.list === "observations" && one.values.present === "not-reported";
  const is =
    (list: ListName): ((one: AnyLinked) => boolean) =>
    (one) =>
      one.list === list;
  const claims = premises.filter(is("claims")).map(({ id }) => id);
  const under = {
    seen: premises.some((one) => !is("claims")(one) && !is("positions")(one) && !isSilence(one)),
    silence: premises.some(isSilence),
    word: premises.some(is("positions")),
    claims: claims.length === 0 ? nothing : claims,
  };
  if (counts === everyRecord) known.set(argument, under);
  return under;
}
