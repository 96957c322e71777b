import { programOf } from "../../solver/program.ts";
import type { Rule } from "../../solver/program.ts";
import { losingIn } from "./losing.ts";
import { minimalSets } from "./search.ts";

/** A step from premises, all of them needed, to a conclusion. */
export interface Inference {
  readonly premises: readonly string[];
  readonly conclusion: string;
}

/** What the derivation of a goal rests on, given facts any of which may be lost (methods I). */
export interface Indispensable {
  readonly derivable: boolean;
  /** Roots each of whose loss ends the derivation. */
  readonly indispensable: readonly string[];
  /** All smallest sets, up to three, whose joint loss ends it. */
  readonly minimalLossSets: readonly (readonly string[])[];
}

/** Which losses of roots end a derivation that nothing attacks. */
export function indispensableFor(
  inferences: readonly Inference[],
  roots: readonly string[],
  goal: string,
): Indispensable {
  const names = [
    ...new Set([goal, ...roots, ...inferences.flatMap((one) => [...one.premises, one.conclusion])]),
  ];
  const places = new Map(names.map((name, place) => [name, place]));
  const placeOf = (name: string): number => places.get(name) ?? 0;
  const facts = roots.map((root): Rule => ({ head: placeOf(root), positive: [], negative: [] }));
  const steps = inferences.map(({ premises, conclusion }): Rule => ({
    head: placeOf(conclusion),
    positive: premises.map(placeOf),
    negative: [],
  }));
  const program = programOf(names.length, [...facts, ...steps]);
  const losing = losingIn(
    program,
    0,
    roots.map((root) => [placeOf(root)]),
  );
  if (!losing.stands([])) return { derivable: false, indispensable: [], minimalLossSets: [] };
  const { sets } = minimalSets(
    (losses) =>
      losing.stands(losses) ? { is: "standing", next: () => losing.next(losses) } : { is: "gone" },
    { most: 3, trials: Infinity },
  );
  const named = sets.map((set) => set.map((loss) => roots[loss] ?? "").sort());
  return {
    derivable: true,
    indispensable: named.flatMap((set) => (set.length === 1 ? set : [])),
    minimalLossSets: named,
  };
}
