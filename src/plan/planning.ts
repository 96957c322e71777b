import type { Id } from "../base/finding.ts";
import { atOnce } from "../judge/resting/at-once.ts";
import { byText } from "../base/order.ts";
import { derive } from "../derive/derive.ts";
import type { Run } from "../derive/run.ts";
import { judge } from "../judge/judge.ts";
import { examinationOf } from "../link/suppose/examination.ts";
import { unsupposed } from "../derive/lens.ts";
import type { Examination, SupposedOutcome } from "../link/suppose/examination.ts";
import { consequencesOn, shownIn } from "./consequence.ts";
import { contestOf } from "./contest.ts";
import { expectationsIn } from "./expectation.ts";
import { feedingIn } from "./feeding.ts";
import type { Plan, PlanBench, Planned, PlannedOutcome, Reason } from "./plan.ts";
import { candidatesIn } from "./propose/candidates.ts";
import { coveredBy } from "./propose/covered.ts";
import { byDecision } from "./rank.ts";
import { cautionsOf } from "./visit/cautions.ts";
import { placesOf } from "./visit/places.ts";
import { tripsOf } from "./visit/trips.ts";
import { contrastOf } from "./weigh/contrast.ts";

/** How far a plan is: examinations thought through, of how many. */
export interface PlanProgress {
  readonly done: number;
  readonly of: number;
}

/** A plan, and the runs that outcomes which measure still ask for. */
export interface PlanFound {
  readonly plan: Plan;
  readonly missing: readonly Run[];
}

/** So many examinations are thought through; those of the record always are, and come first. */
export const candidateLimit = 200;

/** Makes the plan at one go. */
export function planOf(bench: PlanBench): PlanFound {
  return atOnce(planning(bench));
}

/** Makes the plan in slices: yields after each outcome of each examination, so that the caller can show how far it is, or leave it. */
export function* planning(given: PlanBench): Generator<PlanProgress, PlanFound> {
  const bench = ofTheRecord(given);
  const { graph } = bench;
  const recorded = graph.list("examinations").flatMap(({ id }) => examinationOf(graph, id) ?? []);
  yield { done: 0, of: recorded.length };
  const thought = thinkingOn(bench);
  yield { done: 0, of: recorded.length };
  const { suggested, passedOver } = yield* suggestedBy(bench, recorded);
  const of = recorded.length + suggested.length;
  yield { done: 0, of };

  const missing = new Map<string, Run>();
  const planned: Planned[] = [];
  for (const { examination, reason } of [
    ...recorded.map((one) => ({ examination: one, reason: null })),
    ...suggested,
  ]) {
    const found = yield* telling(thought(examination, reason), { done: planned.length, of });
    for (const run of found.missing) missing.set(run.key, run);
    planned.push(found.planned);
    yield { done: planned.length, of };
  }
  const ranked = withGentler(planned.toSorted(byDecision));
  yield { done: planned.length, of };
  const own = ranked.filter((one) => one.reason === null);
  const proposed = ranked.filter((one) => one.reason !== null);
  const contest = yield* telling(contestOf(bench, own, proposed), { done: planned.length, of });
  const plan = { recorded: own, proposed, passedOver, trips: tripsOf(own), contest };
  return { plan, missing: [...missing.values()] };
}

interface Suggested {
  readonly examination: Examination;
  readonly reason: Reason;
}

/** What the record suggests and none of its own examinations looks at yet, as far as there is room for it. */
function* suggestedBy(
  bench: PlanBench,
  recorded: readonly Examination[],
): Generator<PlanProgress, { readonly suggested: readonly Suggested[]; readonly passedOver: number }> {
  const { graph } = bench;
  const progress = { done: 0, of: recorded.length };
  const found = yield* telling(candidatesIn(bench), progress);
  yield progress;
  const covered = coveredBy(graph, recorded, feedingIn(graph, bench.plugins));
  yield progress;
  const candidates = found.filter((one) => !covered(one));
  const room = Math.max(0, candidateLimit - recorded.length);
  const suggested: Suggested[] = [];
  let tried = 0;
  for (const { id, reason } of candidates) {
    if (suggested.length === room) break;
    tried++;
    const examination = examinationOf(graph, id);
    if (examination) suggested.push({ examination, reason });
    yield progress;
  }
  return { suggested, passedOver: candidates.length - tried };
}

/** Does a work that yields between its parts, and tells after each how far the whole is. */
function* telling<T>(work: Generator<void, T>, progress: PlanProgress): Generator<PlanProgress, T> {
  for (;;) {
    const part = work.next();
    if (part.done === true) return part.value;
    yield progress;
  }
}

/** The bench without what is supposed: a plan is made from the record. */
function ofTheRecord(given: PlanBench): PlanBench {
  const graph = given.graph.supposed?.before;
  if (!graph) return given;
  const lens = unsupposed(given.lens);
  const derivations = derive(graph, given.plugins, given.memo, lens);
  return { ...given, graph, lens, derivations, judgement: judge(graph, derivations, lens) };
}

/** Prepared once: thinks one examination through, and yields between its outcomes. */
function thinkingOn(
  bench: PlanBench,
): (
  examination: Examination,
  reason: Reason | null,
) => Generator<void, { readonly planned: Planned; readonly missing: readonly Run[] }> {
  const { graph } = bench;
  const consequence = consequencesOn(bench);
  const expectation = expectationsIn(bench);
  const shown = shownIn(bench);
  const answers = new Set(graph.list("questions").flatMap((one) => one.values.answers));
  const isClaim = (id: Id): boolean => graph.records.get(id)?.list === "claims";

  return function* (examination, reason) {
    const missing: Run[] = [];
    const outcomes: PlannedOutcome[] = [];
    for (const outcome of examination.outcomes) {
      if (outcomes.length > 0) yield;
      const { missing: runs, ...found } = consequence(examination, outcome);
      missing.push(...runs);
      const { id, text } = outcome;
      const { probability } = shownOutcome(outcome, shown);
      outcomes.push({ id, text, probability, decides: decided(found.changes), ...found });
    }
    const decides = [...new Set(outcomes.flatMap((one) => one.decides))].sort(byText);
    const { flips, discriminates } = contrastOf(
      outcomes.map(
        (one) => new Map([...one.changes].flatMap(([id, [, is]]) => (isClaim(id) ? [[id, is]] : []))),
      ),
    );
    const told = expectation(examination);
    const gain = "bits" in told ? told : null;
    const { cost } = examination;
    const places = placesOf(graph, examination.of);
    const planned: Planned = {
      examination: shownExamination(examination, shown),
      reason,
      outcomes,
      decides,
      changed: flips,
      discriminates,
      decidesInEveryOutcome:
        decides.length > 0 && outcomes.every((one) => decides.every((id) => one.decides.includes(id))),
      idle: (outcomes.length > 1 ? discriminates : flips).length === 0,
      gain,
      noGain: "bits" in told ? null : told,
      gainPerCost: gain !== null && cost !== null && cost > 0 ? gain.bits / cost : null,
      places,
      cautions: cautionsOf(shownExamination(examination, shown), places),
      gentler: [],
    };
    return { planned, missing };
  };

  function decided(changes: PlannedOutcome["changes"]): readonly Id[] {
    return [...changes]
      .filter(([id, [, is]]) => answers.has(id) && (is === "stands" || is === "falls"))
      .map(([id]) => id)
      .sort(byText);
  }
}

/** An examination without what is withheld; whose leave a proposed one takes is said by its places. */
function shownExamination(examination: Examination, shown: (id: Id) => boolean): Examination {
  return {
    ...examination,
    of: examination.of.filter(shown),
    permit: examination.origin === "recorded" ? examination.permit : null,
    outcomes: examination.outcomes.map((one) => shownOutcome(one, shown)),
  };
}

function shownOutcome(outcome: SupposedOutcome, shown: (id: Id) => boolean): SupposedOutcome {
  const { measures, therefore, against, probability } = outcome;
  return {
    ...outcome,
    measures: measures.filter((one) => shown(one.of)),
    therefore: therefore.filter(shown),
    against: against.filter(shown),
    probability:
      probability === null || typeof probability === "number"
        ? probability
        : new Map([...probability].filter(([answer]) => shown(answer))),
  };
}

/** Beside each that is destructive, those that are not and could spare it. */
function withGentler(ranked: readonly Planned[]): readonly Planned[] {
  const gentle = ranked.filter((one) => !one.examination.destructive);
  return ranked.map((one): Planned => {
    if (!one.examination.destructive) return one;
    const sparing = gentle.filter(
      (other) =>
        (!other.idle && other.decides.some((id) => one.decides.includes(id))) ||
        other.examination.of.some((thing) => one.examination.of.includes(thing)),
    );
    return { ...one, gentler: sparing.map((other) => other.examination.id) };
  });
}
