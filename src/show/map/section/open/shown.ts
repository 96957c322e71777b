import type { Id } from "../../../../base/finding.ts";
import type { Net } from "../net/net.ts";
import type { Ground } from "./roots.ts";
import type { Pile } from "./piles.ts";

/** What a map opens on: the dispute, what it is about, and how its labels lie. */
export interface Field extends Ground {
  readonly net: Net;
  readonly piles: ReadonlyMap<Id, Pile>;
  /** On a narrow screen the node that the one column is about; else null. */
  readonly column: Id | null;
}

/** What is shown of a dispute: claims, numbers and labels, and the steps between them. */
export interface Shown {
  readonly nodes: ReadonlySet<Id>;
  readonly steps: ReadonlySet<Id>;
}

/** What is shown while more is being taken in. */
export interface Growing extends Shown {
  readonly nodes: Set<Id>;
  readonly steps: Set<Id>;
}

/** Most steps for a claim that are drawn before the rest are told by a fold. */
export const mostSteps = 3;

/** Shows nothing but some claims at the top. */
export function startingWith(roots: readonly Id[], net: Net): Growing {
  const growing: Growing = { nodes: new Set(), steps: new Set() };
  for (const id of roots) show(growing, net, id);
  return growing;
}

/** A copy to try something with. */
export function copyOf(shown: Shown): Growing {
  return { nodes: new Set(shown.nodes), steps: new Set(shown.steps) };
}

/** Shows a node; a step with all its premises. */
export function show(growing: Growing, net: Net, id: Id): void {
  const step = net.steps.get(id);
  if (!step) {
    growing.nodes.add(id);
    return;
  }
  growing.steps.add(id);
  for (const premise of step.because) growing.nodes.add(premise);
}

/** What lies folded up at a node that is shown. */
export interface Hidden {
  /** Steps for a claim, or inputs of a number. */
  readonly under: readonly Id[];
  readonly against: readonly Id[];
  readonly rivals: readonly Id[];
}

/** What is not shown of what meets a node. */
export function hiddenAt({ net, universe, answers, others }: Field, shown: Shown, id: Id): Hidden {
  const missing = (other: Id): boolean =>
    universe.has(other) && !shown.nodes.has(other) && !shown.steps.has(other);
  const against = net
    .contra(id)
    .map((step) => step.id)
    .filter(missing);
  switch (net.kindOf(id)) {
    case "claim": {
      const rivals = net
        .rivals(id)
        .filter((rival) => missing(rival) && !answers.includes(rival) && !others.includes(rival));
      const under = net
        .pro(id)
        .map((step) => step.id)
        .filter(missing);
      return { under, against, rivals };
    }
    case "number":
      return { under: net.inputs(id).filter(missing), against, rivals: [] };
    default:
      return { under: [], against, rivals: [] };
  }
}

/** Whether none of the steps for a claim is drawn though there are some: the claim itself is then the fold. */
export function isFoldedClaim({ net, universe }: Field, shown: Shown, id: Id): boolean {
  const steps = net.pro(id).filter((step) => universe.has(step.id));
  return steps.length > 0 && !steps.some((step) => shown.steps.has(step.id));
}
