import type { Id } from "../../../base/finding.ts";
import type { Graph } from "../../../link/graph.ts";
import { latestPositions, stances } from "../../argument.ts";
import type { Stance } from "../../argument.ts";
import type { Standing } from "../../judge.ts";

/** A scholar's present word for or against a claim. */
export interface Commitment {
  readonly scholar: Id;
  readonly claim: Id;
  readonly position: Id;
  readonly stance: "holds" | "rejects";
}

/** A commitment that does not fit, with how the claim stands there instead; null where that was not asked. */
export interface Misfit extends Commitment {
  readonly standing: Standing | null;
}

/** A scholar all of whose commitments fit, or all but one. */
export interface Fit {
  readonly scholar: Id;
  /** How many commitments were looked at. */
  readonly positions: number;
  readonly but: Misfit | null;
}

/**
 * The latest positions of every scholar that hold or reject a claim; a claim that was left for a rival, held later, is
 * held no more. To doubt or to leave open commits to nothing.
 */
export function commitmentsOf(
  graph: Graph,
  counts: (id: Id) => boolean,
  tellable: (id: Id) => boolean,
): ReadonlyMap<Id, readonly Commitment[]> {
  const held = new Map<Id, Stance[]>();
  for (const one of stances(graph, counts)) {
    if (one.stance !== "holds") continue;
    const own = held.get(one.scholar);
    if (own) own.push(one);
    else held.set(one.scholar, [one]);
  }
  const left = (one: Stance): boolean =>
    (held.get(one.scholar) ?? []).some(
      (later) => yearOf(later) > yearOf(one) && graph.rivalsOf(one.claim).includes(later.claim),
    );
  const found = new Map<Id, Commitment[]>();
  for (const one of latestPositions(graph, counts)) {
    const { scholar, claim, position, stance } = one;
    if (stance !== "holds" && stance !== "rejects") continue;
    if (![scholar, claim, position].every(tellable) || (stance === "holds" && left(one))) continue;
    found.set(scholar, [...(found.get(scholar) ?? []), { scholar, claim, position, stance }]);
  }
  return found;
}

/** Each scholar's commitments to some claims, of those who have any. */
export type CommitmentsTo = (claims: readonly Id[]) => ReadonlyMap<Id, readonly Commitment[]>;

/** Looks for the commitments to any claims by the claims, in the order in which they are given here. */
export function commitmentsByClaim(commitments: ReadonlyMap<Id, readonly Commitment[]>): CommitmentsTo {
  const all = [...commitments.values()].flat();
  const byClaim = new Map<Id, number[]>();
  all.forEach(({ claim }, place) => {
    const those = byClaim.get(claim);
    if (those) those.push(place);
    else byClaim.set(claim, [place]);
  });
  return (claims) => {
    const places = [...new Set(claims)]
      .flatMap((claim) => byClaim.get(claim) ?? [])
      .toSorted((a, b) => a - b);
    const found = new Map<Id, Commitment[]>();
    for (const one of places.flatMap((place) => all[place] ?? [])) {
      const own = found.get(one.scholar);
      if (own) own.push(one);
      else found.set(one.scholar, [one]);
    }
    return found;
  };
}

/** The commitments that do not fit where claims stand so: what is held has to stand, what is rejected must not be open either. */
export function misfitsIn(
  commitments: readonly Commitment[],
  standing: (claim: Id) => Standing,
): readonly Misfit[] {
  return commitments.flatMap((one): readonly Misfit[] => {
    const is = standing(one.claim);
    const fits = one.stance === "holds" ? is === "stands" : is === "falls" || is === "unsupported";
    return fits ? [] : [{ ...one, standing: is }];
  });
}

/** A fit with at most one misfit; of a single commitment that does not fit nothing is left. */
export function fitOf(scholar: Id, positions: number, misfits: readonly Misfit[]): Fit | null {
  const [but = null, ...more] = misfits;
  if (positions === 0 || more.length > 0 || (but !== null && positions < 2)) return null;
  return { scholar, positions, but };
}

function yearOf(stance: Stance): number {
  return stance.year ?? -Infinity;
}
