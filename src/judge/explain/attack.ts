import type { Id } from "../../base/finding.ts";
import type { Derivations } from "../../derive/derive.ts";
import type { Graph } from "../../link/graph.ts";
import type { Argument } from "../argument.ts";
import type { Judgement } from "../judge.ts";
import { evaluationOf } from "./evaluation.ts";
import { opposed, reasonOf } from "./reason.ts";
import type { Reason } from "./reason.ts";
import { supportOf } from "./support/support.ts";
import type { Support } from "./support/support.ts";
import { wayTo } from "./ways.ts";

/** An attack that comes to nothing: whose it is, what in a support it is on, and why it fails. */
export interface FailedAttack {
  readonly by: Id;
  readonly on: readonly Id[];
  readonly reason: Reason;
}

/** An attack that works: whose it is, what it hits, and why it works itself. */
export interface WorkingAttack {
  readonly by: Id;
  readonly on: Id;
  /** The way from what falls down to what is hit, both included. */
  readonly way: readonly Id[];
  /** The claim that makes it an attack, where it does not name what it hits. */
  readonly rival: Id | null;
  readonly leansOn: readonly Id[];
  readonly support: Support;
  readonly failed: readonly FailedAttack[];
}

/** The attacks on the records of a support, all of which fail, and why; each attacker once. */
export function failedAttacks(
  graph: Graph,
  derivations: Derivations,
  judgement: Judgement,
  support: Support,
): readonly FailedAttack[] {
  const { attackersOf } = evaluationOf(judgement);
  const hits = new Map<Id, Id[]>();
  for (const { id } of support.steps) {
    if (graph.records.get(id)?.list === "claims") continue;
    for (const { id: by } of attackersOf(id)) {
      const on = hits.get(by);
      if (on) on.push(id);
      else hits.set(by, [id]);
    }
  }
  return [...hits].map(([by, on]) => ({ by, on, reason: reasonOf(graph, derivations, judgement, by) }));
}

/**
 * The working attacks by which something falls, the nearest first: of a claim those against it and, for each argument
 * that would work if nothing attacked, the nearest on it or on what it leans on.
 */
export function workingAttacks(
  graph: Graph,
  derivations: Derivations,
  judgement: Judgement,
  id: Id,
): readonly WorkingAttack[] {
  const evaluation = evaluationOf(judgement);
  const { attackersOf, beatenBy, fallsWith, needsOf, standingOf } = evaluation;
  const hit = (on: Id): boolean => beatenBy(on).length > 0;
  const isClaim = graph.records.get(id)?.list === "claims";
  const ways = (isClaim ? fallsWith(id) : [id]).flatMap((start) => {
    const way = wayTo(start, fallsWith, hit);
    return way ? [isClaim ? [id, ...way] : way] : [];
  });
  // Without an argument that could work, a claim falls all the same where one against it stands.
  if (isClaim && (hit(id) || ways.length === 0)) ways.unshift([id]);
  const working = (on: Id): readonly Argument[] =>
    hit(on) ? beatenBy(on) : attackersOf(on).filter((one) => standingOf(one.id) === "stands");

  const attacks: WorkingAttack[] = [];
  for (const way of ways.toSorted((a, b) => a.length - b.length)) {
    const on = way.at(-1) ?? id;
    const [by] = working(on);
    const told = (one: WorkingAttack): boolean =>
      (one.on === on || one.on === id) && working(on).some((other) => other.id === one.by);
    if (!by || attacks.some(told)) continue;
    const support = supportOf(graph, evaluation, by.id);
    attacks.push({
      by: by.id,
      on,
      way,
      rival: opposed(by, evaluation.argument(on) ?? null).rival,
      leansOn: needsOf(by.id),
      support,
      failed: failedAttacks(graph, derivations, judgement, support),
    });
  }
  return attacks;
}
