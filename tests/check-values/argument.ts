import { claimGraphProgram, type ClaimGraph } from "../../src/judge/solver/claim-graph.ts";
import { frameworkOf, frameworkProgram, type Framework } from "../../src/judge/solver/framework.ts";
import type { Model } from "../../src/judge/solver/standpoint-search.ts";
import { eachStandpoint, standpoints, type Standpoints } from "../../src/judge/solver/standpoints.ts";
import { leastWithoutAttacks, TRUE, UNDEFINED, wellFounded } from "../../src/judge/solver/well-founded.ts";
import type { Methods } from "./case.ts";

const listLimit = 100_000;

type Sets = readonly (readonly string[])[];

/**
 * What the published framework cases assert, found by the product's own solver as it is asked for; more than `limit`
 * sets throw.
 */
export function frameworkResults(framework: Framework, limit = listLimit) {
  const program = frameworkOf(framework);
  const names = framework.arguments;
  const labels = wellFounded(program);
  const complete = once(() => listed(standpoints(program, { limit, models: "partial-stable" }), limit));
  const preferred = once(() => namesIn(listed(standpoints(program, { limit }), limit), names));
  const stable = once(() => complete().filter(({ open }) => open.length === 0));
  const semiStable = once(() =>
    complete().filter((model) => !complete().some((other) => leavesLessOpen(other, model))),
  );
  return {
    grounded: names.filter((_, place) => labels[place] === TRUE),
    groundedLabelling: Object.fromEntries(
      names.map((name, place) => [name, ["out", "undecided", "in"][labels[place]!]]),
    ),
    get complete() {
      return namesIn(complete(), names);
    },
    get preferred() {
      return preferred();
    },
    get stable() {
      return namesIn(stable(), names);
    },
    get semiStable() {
      return namesIn(semiStable(), names);
    },
    get scepticalPreferred() {
      return names.filter((name) => preferred().every((set) => set.includes(name)));
    },
    get credulousPreferred() {
      return names.filter((name) => preferred().some((set) => set.includes(name)));
    },
    get counts() {
      return {
        arguments: names.length,
        attacks: framework.attacks.length,
        selfAttacks: framework.attacks.filter(([attacker, attacked]) => attacker === attacked).length,
        complete: complete().length,
        preferred: preferred().length,
        stable: stable().length,
        semiStable: semiStable().length,
      };
    },
  };
}

function once<Value>(find: () => Value): () => Value {
  let found: { readonly value: Value } | undefined;
  return () => (found ??= { value: find() }).value;
}

/** The label of each claim: `in`, `out`, `undecided`, or `unsupported` when nothing would support it without attacks. */
export function claimGraphLabels(theory: ClaimGraph): Readonly<Record<string, string>> {
  const program = claimGraphProgram(theory);
  const values = wellFounded(program);
  const supported = leastWithoutAttacks(program);
  const label = (atom: number): string => {
    if (values[atom] === TRUE) return "in";
    if (values[atom] === UNDEFINED) return "undecided";
    return supported[atom] === 1 ? "out" : "unsupported";
  };
  return Object.fromEntries(theory.claims.map((name, atom) => [name, label(atom)]));
}

/** The claims that hold together, in each regular model or in each two-valued one. */
export function claimSets(theory: ClaimGraph, semantics: "preferred" | "stable", limit = listLimit): Sets {
  const program = claimGraphProgram(theory);
  const models = semantics === "preferred" ? "regular" : "partial-stable";
  const all = listed(standpoints(program, { limit, models }), limit);
  const wanted = all.filter(({ open }) => semantics === "preferred" || open.length === 0);
  const sets = namesIn(wanted, theory.claims).map((set) => [...set].sort());
  return [...new Map(sets.map((set) => [JSON.stringify(set), set])).values()];
}

function claimGraphResults(theory: ClaimGraph): unknown {
  return {
    groundedClaims: claimGraphLabels(theory),
    get preferredClaimSets() {
      return claimSets(theory, "preferred");
    },
    get stableClaimSets() {
      return claimSets(theory, "stable");
    },
  };
}

/** `argument.enumerate`: independent pairs of rivals, never laid out beyond the limit. */
function enumerate(input: unknown): unknown {
  const { pairs, limit, semantics } = input as { pairs: number; limit: number; semantics: string };
  if (semantics !== "preferred") throw new Error(`Unknown semantics \`${semantics}\`, expected preferred`);
  const places = Int32Array.from({ length: 2 * pairs }, (_, place) => place);
  const program = frameworkProgram(
    2 * pairs,
    places,
    places.map((place) => place ^ 1),
  );
  const preferred = standpoints(program, { limit });
  let returned = 0;
  for (const { holds } of eachStandpoint(preferred)) {
    if (returned === limit || holds.length === 0) break;
    returned++;
  }
  return {
    truncated: preferred.truncated || preferred.count > BigInt(returned),
    returned,
    trueCountPreferred: Number(preferred.count),
    trueCountComplete: Number(standpoints(program, { limit, models: "partial-stable" }).count),
    groundedSize: wellFounded(program)
      .subarray(0, 2 * pairs)
      .filter((value) => value === TRUE).length,
  };
}

/** The methods of argument evaluation; cases in the two published shapes of their own come in under the last two names. */
export const argument: Methods = {
  "argument.enumerate": enumerate,
  framework: (input) => frameworkResults(input as Framework),
  "claim-graph": (input) => claimGraphResults(input as ClaimGraph),
};

function listed(found: Standpoints, limit: number): readonly Model[] {
  if (found.truncated || found.count > BigInt(limit))
    throw new Error(`More than ${limit} sets, too many to list`);
  return [...eachStandpoint(found)];
}

function namesIn(models: readonly Model[], names: readonly string[]): Sets {
  return models.map(({ holds }) => holds.filter((atom) => atom < names.length).map((atom) => names[atom]!));
}

function leavesLessOpen(one: Model, other: Model): boolean {
  return one.open.length < other.open.length && one.open.every((atom) => other.open.includes(atom));
}
