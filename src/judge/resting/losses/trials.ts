import type { Id } from "../../../base/finding.ts";
import type { Derived } from "../../../derive/derived/derived.ts";
import type { Judged } from "../judged.ts";
import { below } from "../reach/below.ts";
import type { Numbers } from "../reach/numbers.ts";
import { lossesAmong } from "../reach/origins.ts";
import type { Loss } from "../reach/origins.ts";
import { programsBelow } from "./programs.ts";
import type { Losing } from "./losing.ts";
import { possibleNumbers } from "./possible.ts";
import type { Trial } from "./search.ts";

/** A claim that can be tried under losses. */
export interface Trials {
  /** All that could matter to it; a trial names them by their places. */
  readonly losses: readonly Loss[];
  readonly trial: (losses: readonly number[]) => Trial;
  /** The numbers that a trial would have computed anew, by names that tell them apart. */
  readonly asks: (losses: readonly number[]) => readonly string[];
}

/** Programs that are tried for one trial at most: one for each way the numbers left open may come out. */
const mostWays = 48;

/**
 * What becomes of a claim under losses, looking only at what bears on it. A number is computed anew only where it
 * decides: what becomes of the claim however the number comes out needs no computing.
 */
export function trialsOf(judged: Judged, numbers: Numbers, claim: Id): Trials {
  const { graph, judgement } = judged;
  const cone = below(claim, graph, judgement.compiled);
  const losses = lossesAmong(graph, cone, judgement.counts);
  const programs = programsBelow(judged, claim, cone, losses);
  const { derivations } = programs;
  const possible = new Map(derivations.map((id) => [id, possibleNumbers(judged, numbers, cone, id)]));
  /** For each set that was tried and stood, the numbers that had to be known. */
  const known = new Map<string, ReadonlySet<Id>>();

  /** The programs that may be meant when only these numbers are known; one that is still to be computed is not. */
  const waysTo = (places: readonly number[], fixed: ReadonlySet<Id>): readonly Losing[] | null => {
    const suffered = places.flatMap((place) => losses[place] ?? []);
    let ways: readonly (readonly (Derived | undefined)[])[] = [[]];
    for (const id of derivations) {
      const now = fixed.has(id) ? numbers.under(id, suffered) : undefined;
      const open = !fixed.has(id) || now?.status === "pending";
      const options = open ? possible.get(id) : [now];
      if (!options || ways.length * options.length > mostWays) return null;
      ways = ways.flatMap((way) => options.map((option) => [...way, option]));
    }
    return ways.map((way) => programs.under(places, way));
  };
  const all = new Set(derivations);

  const judgedBy = (places: readonly number[], fixed: ReadonlySet<Id>): "standing" | "gone" | "open" => {
    const ways = waysTo(places, fixed);
    if (ways === null) return "open";
    const first = ways[0]?.stands(places) ?? false;
    if (ways.some((way) => way.stands(places) !== first)) return "open";
    return first ? "standing" : "gone";
  };

  const trial = (places: readonly number[]): Trial => {
    const before = fixedBefore(places);
    let fixed = before;
    let is = judgedBy(places, fixed);
    if (is === "open" && fixed.size < all.size) {
      fixed = all;
      is = judgedBy(places, fixed);
    }
    if (is === "gone") return { is };
    // With all numbers asked for, only one that is still to be computed leaves it open.
    if (is === "open") return { is: "waiting" };
    const next = (): readonly number[] => {
      const needed = fixed === before && places.length > 0 ? fixed : fewest(places, fixed);
      known.set(places.join(" "), needed);
      return nextOf(places, needed);
    };
    return { is, next };
  };

  function fixedBefore(places: readonly number[]): ReadonlySet<Id> {
    for (const left of places) {
      const had = known.get(places.filter((place) => place !== left).join(" "));
      if (had) return had;
    }
    return all;
  }

  /** Of numbers that are known, those that cannot be spared. */
  function fewest(places: readonly number[], fixed: ReadonlySet<Id>): ReadonlySet<Id> {
    const kept = new Set(fixed);
    for (const id of fixed) {
      kept.delete(id);
      if (judgedBy(places, kept) !== "standing") kept.add(id);
    }
    return kept;
  }

  function nextOf(places: readonly number[], fixed: ReadonlySet<Id>): readonly number[] {
    const suffered = places.flatMap((place) => losses[place] ?? []);
    const next = new Set(programs.changing);
    for (const way of waysTo(places, fixed) ?? []) for (const place of way.next(places)) next.add(place);
    for (const id of fixed) for (const place of couldChange(id, suffered)) next.add(place);
    return [...next].filter((place) => !places.includes(place)).sort((a, b) => a - b);
  }

  /** Losses by which a number could become another, or could come to be. */
  function couldChange(derivation: Id, suffered: readonly Loss[]): readonly number[] {
    const fed = numbers.feeding(derivation);
    const records = numbers.entering(derivation, suffered) ?? fed.records;
    return losses.flatMap((loss, place) =>
      loss.units.some((unit) => fed.units.has(unit)) || loss.records.some((id) => records.has(id))
        ? [place]
        : [],
    );
  }

  const asks = (places: readonly number[]): readonly string[] => {
    const suffered = places.flatMap((place) => losses[place] ?? []);
    return [...fixedBefore(places)].flatMap((id) => numbers.nameOf(id, suffered) ?? []);
  };
  return { losses, trial, asks };
}
