import type { Id } from "../../base/finding.ts";
import { byText } from "../../base/order.ts";
import type { Run } from "../../derive/run.ts";
import type { Graph } from "../../link/graph.ts";
import type { Judged } from "./judged.ts";
import { minimalSets } from "./losses/search.ts";
import { trialsOf } from "./losses/trials.ts";
import { numbersOf } from "./reach/numbers.ts";

/** What ends a claim that stands: losses each set of which is too much, and of which none could be spared. */
export interface LossSets {
  /** Artefacts, sources and scholars in order, the smaller sets first. */
  readonly sets: readonly (readonly Id[])[];
  /** The size up to which these are all the sets there are: 3, or less where there are too many to try. */
  readonly upTo: number;
  /** How many things, sources and scholars could matter to the claim. */
  readonly candidates: number;
  /** Why larger sets were not looked for: too many candidates or trials, or too many numbers to compute anew. */
  readonly stopped: "candidates" | "trials" | "numbers" | null;
  /** Runs that larger sets wait for. */
  readonly missing: readonly Run[];
}

/** The largest set of losses that is looked for. */
export const largestSet = 3;
/** Above so many things, sources and scholars only single losses are looked for. */
export const mostCandidates = 200;
/** Trials for one claim, after which the sets of the size at hand are given up. */
const mostTrials = 20_000;
/** Numbers that the sets of one size above 1 may ask to be computed anew, while somebody waits for a page. */
export const fewNumbers = 150;
/** The same where somebody asked for it and may wait some minutes. */
export const manyNumbers = 10_000;

/** All minimal sets of at most three losses after which a claim does not stand; null where it does not stand now. */
export function lossSets(judged: Judged, claim: Id, mostNumbers = fewNumbers): LossSets | null {
  if (judged.judgement.standings.get(claim) !== "stands") return null;
  const numbers = numbersOf(judged);
  const { losses, trial, asks } = trialsOf(judged, numbers, claim);
  const candidates = losses.reduce((sum, loss) => sum + loss.alike.length, 0);
  const most = candidates > mostCandidates ? 1 : largestSet;
  const found = minimalSets(trial, {
    most,
    trials: mostTrials,
    spending: { most: mostNumbers, asks },
  });
  // Of what is lost alike the parts stand for their wholes at once: spelled out, there may be thousands of sets.
  const alike = losses.map((loss) =>
    finest(
      loss.alike.map((id) => [id]),
      judged.graph,
    ).flat(),
  );
  const sets = found.sets.flatMap((set) => spelledOut(set.map((place) => alike[place] ?? [])));
  return {
    sets: finest(sets, judged.graph),
    upTo: found.upTo,
    candidates,
    stopped: most === 1 ? "candidates" : found.stopped === "spending" ? "numbers" : found.stopped,
    missing: numbers.missing(),
  };
}

const wholesIn = new WeakMap<Graph["wholeOf"], ReadonlySet<Id>>();

/** Everything that something is a part of. */
function wholesOf({ wholeOf }: Graph): ReadonlySet<Id> {
  const known = wholesIn.get(wholeOf) ?? new Set(wholeOf.values());
  wholesIn.set(wholeOf, known);
  return known;
}

/** Every choice of one from each. */
function spelledOut(choices: readonly (readonly Id[])[]): readonly (readonly Id[])[] {
  return choices.reduce<readonly (readonly Id[])[]>(
    (sets, choice) => sets.flatMap((set) => choice.map((id) => [...set, id].sort(byText))),
    [[]],
  );
}

/**
 * Where a part would do in the place of its whole, only the part is told: no set is that another, as large at most, says
 * with the same or with parts of the same.
 */
export function finest(sets: readonly (readonly Id[])[], graph: Graph): readonly (readonly Id[])[] {
  const isWithin = (part: Id, whole: Id): boolean => {
    for (let at: Id | undefined = part; at !== undefined; at = graph.wholeOf.get(at))
      if (at === whole) return true;
    return false;
  };
  const wholes = wholesOf(graph);
  const finer = sets.filter((set) => set.some((id) => graph.wholeOf.has(id)));
  return sets
    .filter((set) => {
      if (!set.some((id) => wholes.has(id))) return true;
      return !finer.some(
        (other) =>
          other !== set &&
          other.length <= set.length &&
          other.every((id) => set.some((it) => isWithin(id, it))),
      );
    })
    .toSorted((a, b) => a.length - b.length || byText(a.join("\n"), b.join("\n")));
}
