import type { Id } from "../../base/finding.ts";
import { atOnce } from "./at-once.ts";
import type { Slice } from "./at-once.ts";
import type { Run } from "../../derive/run.ts";
import type { Judged } from "./judged.ts";
import { finest } from "./loss-sets.ts";
import { minimalSets } from "./losses/search.ts";
import { trialsOf } from "./losses/trials.ts";
import { numbersOf } from "./reach/numbers.ts";

/** For each claim asked about, the artefacts, sources and scholars without which it would not stand. */
export interface Resting {
  readonly restsOn: ReadonlyMap<Id, readonly Id[]>;
  /** Runs that single losses ask for and the memo does not have; until they are there the lists are short. */
  readonly missing: readonly Run[];
  /** Claims whose list is short until then: those of the others are what they will be. */
  readonly waiting: ReadonlySet<Id>;
}

/** Tries every single loss that could matter to a claim that stands; a claim that does not rests on nothing. */
export function restsOn(judged: Judged, claims: readonly Id[]): Resting {
  return atOnce(restingOn(judged, claims));
}

/**
 * The same in slices: yields after each claim. What was found of the same judgement when fewer numbers were there is
 * found again only of claims that waited for some.
 */
export function* restingOn(
  judged: Judged,
  claims: readonly Id[],
  before?: Resting,
): Generator<Slice, Resting> {
  const numbers = numbersOf(judged);
  const waiting = new Set<Id>();
  const single = (claim: Id): readonly Id[] => {
    if (judged.judgement.standings.get(claim) !== "stands") return [];
    const { losses, trial } = trialsOf(judged, numbers, claim);
    const tried = minimalSets(trial, { most: 1, trials: Infinity });
    if (tried.waiting) waiting.add(claim);
    const alone = tried.sets.flatMap((set) => set.flatMap((place) => losses[place]?.alike ?? []));
    return finest(
      alone.map((id) => [id]),
      judged.graph,
    ).flat();
  };
  const found = new Map<Id, readonly Id[]>();
  for (const claim of claims) {
    const known = before?.waiting.has(claim) === false ? before.restsOn.get(claim) : undefined;
    found.set(claim, known ?? single(claim));
    yield { looked: "answers", done: found.size, of: claims.length };
  }
  return { restsOn: found, missing: numbers.missing(), waiting };
}
