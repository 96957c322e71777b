import type { Id } from "../../base/finding.ts";
import { circleIn } from "../../base/date/differences.ts";
import type { Step } from "../../base/date/differences.ts";
import { smallestImpossible, statementsOf } from "../../base/date/minimal.ts";
import type { Said } from "../../derive/recorded/dates/said.ts";

/** Statements that cannot all be true, though any fewer can: the one it is told of first, then as time would run. */
export interface ImpossibleOrder {
  readonly lead: Said;
  readonly statements: readonly Said[];
  readonly steps: readonly Step<Said>[];
}

/** Of which sort the statement is that an order is told of. */
const leads: readonly Said["kind"][] = ["claim", "relation", "history", "date"];

/** Up to how many impossible orders are told at once, and how many sets of rivals are tried for each. */
const mostOrders = 24;
const mostTries = 64;

/**
 * The impossible orders among what is said: each minimal, and each told of another statement, without which the next
 * is looked for. Of two rival claims the dates are never taken together: that they differ is the dispute.
 */
export function impossibleOrders(
  said: readonly Said[],
  rivalsOf: (claim: Id) => readonly Id[],
): readonly ImpossibleOrder[] {
  const found: ImpossibleOrder[] = [];
  let left = said;
  while (found.length < mostOrders) {
    const tries = { left: mostTries };
    const set = withoutRivals(left, rivalsOf, tries);
    const order = set === null ? null : inOrder(said.filter((one) => set.includes(one)));
    if (order === null) return found;
    found.push(order);
    left = left.filter((one) => one !== order.lead);
  }
  return found;
}

function withoutRivals(
  said: readonly Said[],
  rivalsOf: (claim: Id) => readonly Id[],
  tries: { left: number },
): readonly Said[] | null {
  if (tries.left === 0) return null;
  tries.left -= 1;
  const set = smallestImpossible(said);
  if (set === null) return null;
  const claims = set.filter((one) => one.kind === "claim");
  const one = claims.find(({ record }) => claims.some((other) => rivalsOf(record).includes(other.record)));
  if (one === undefined) return set;
  const rivals = new Set(rivalsOf(one.record));
  return (
    withoutRivals(
      said.filter((other) => other !== one),
      rivalsOf,
      tries,
    ) ??
    withoutRivals(
      said.filter((other) => other.kind !== "claim" || !rivals.has(other.record)),
      rivalsOf,
      tries,
    )
  );
}

/** The set as its circle runs through it, earlier things first, from the statement it is told of. */
function inOrder(set: readonly Said[]): ImpossibleOrder | null {
  const circle = circleIn(set);
  const lead = leads.flatMap((kind) => set.filter((one) => one.kind === kind))[0];
  if (circle === null || lead === undefined) return null;
  const steps = circle.toReversed();
  const begin = Math.max(
    0,
    steps.findIndex((step) => step.statement === lead),
  );
  const turned = [...steps.slice(begin), ...steps.slice(0, begin)];
  return { lead, statements: statementsOf(turned), steps: turned };
}
