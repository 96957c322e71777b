import { byText } from "../base/order.ts";
import type { Planned } from "./plan.ts";

/**
 * The order of a plan (format.md 7): answers decided, claims changed, what is not destructive first, cost, id; unknown
 * costs come after known ones.
 */
export function byDecision(a: Planned, b: Planned): number {
  const [one, other] = [a.examination, b.examination];
  return (
    b.decides.length - a.decides.length ||
    b.changed.length - a.changed.length ||
    Number(one.destructive) - Number(other.destructive) ||
    byCost(one.cost, other.cost) ||
    byText(one.id, other.id)
  );
}

/** The other order: expected bits for each unit of cost, what cannot be told last; then as the plan has it. */
export function byGainPerCost(a: Planned, b: Planned): number {
  const [one, other] = [a.gainPerCost ?? -1, b.gainPerCost ?? -1];
  return other - one || byDecision(a, b);
}

function byCost(a: number | null, b: number | null): number {
  if (a === null || b === null) return Number(a === null) - Number(b === null);
  return a - b;
}
