import { independenceOf } from "../../src/judge/resting/lines/independence.ts";
import { indispensableFor } from "../../src/judge/resting/losses/definite.ts";
import type { Inference } from "../../src/judge/resting/losses/definite.ts";
import type { Methods } from "./case.ts";

interface Drawn {
  readonly edges: readonly (readonly [string, string])[];
  readonly claim: string;
  readonly roots: readonly string[];
}

interface Inferred {
  readonly inferences: readonly Inference[];
  readonly claim: string;
  readonly roots: readonly string[];
}

/** `support.independence`: lines to a claim that share nothing, and where they can be cut. */
function independence(input: unknown): unknown {
  const { edges, claim, roots } = input as Drawn;
  const { paths, ...rest } = independenceOf({ edges, roots, goal: claim });
  return { independentLines: paths.length, ...rest };
}

/** `support.indispensable`: what a derivation cannot spare, beside the lines that overstate it. */
function indispensable(input: unknown): unknown {
  const { inferences, claim, roots } = input as Inferred;
  const edges = inferences.flatMap(({ premises, conclusion }) =>
    premises.map((premise) => [premise, conclusion] as const),
  );
  const { paths } = independenceOf({ edges, roots, goal: claim });
  return { ...indispensableFor(inferences, roots, claim), pathCountUpperBound: paths.length };
}

/** The methods of independent lines. */
export const independenceMethods: Methods = {
  "support.independence": independence,
  "support.indispensable": indispensable,
};
