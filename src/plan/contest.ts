import type { Id } from "../base/finding.ts";
import { byText } from "../base/order.ts";
import type { Standing } from "../judge/judge.ts";
import { shownIn } from "./consequence.ts";
import type { Contest, PlanBench, Planned, PlannedOutcome } from "./plan.ts";
import { smallestHitting } from "./weigh/hitting.ts";

type Judged = Pick<PlanBench, "graph" | "judgement">;

/** What the examinations together could decide: the fewest that separate all rivals, and what none of them can. Yields between its parts. */
export function* contestOf(
  bench: Judged,
  recorded: readonly Planned[],
  proposed: readonly Planned[],
): Generator<void, Contest> {
  const now = (claim: Id): Standing => bench.judgement.standings.get(claim) ?? "unsupported";
  const [byRecorded, byProposed] = [touching(recorded), touching(proposed)];
  const separating = (those: ReadonlyMap<Id, readonly Planned[]>, [a, b]: readonly [Id, Id]): readonly Id[] =>
    [...new Set([...(those.get(a) ?? []), ...(those.get(b) ?? [])])]
      .filter(({ outcomes }) => outcomes.some((one) => separates(one, a, b, now)))
      .map((one) => one.examination.id)
      .sort(byText);
  const pairs = rivalPairs(bench, now).map((answers) => ({ answers, by: separating(byRecorded, answers) }));
  yield;
  const found = smallestHitting(
    pairs.map((pair) => pair.by),
    costsOf(recorded),
  );
  const best = found.solutions.map((one) => one.toSorted(byText)).toSorted(byIds)[0] ?? [];
  yield;
  const places = new Map(recorded.map((one, at) => [one.examination.id, at]));
  return {
    pairs,
    set: best.toSorted((a, b) => (places.get(a) ?? 0) - (places.get(b) ?? 0)),
    nearMinimal: found.nearMinimal,
    undecided: {
      pairs: found.unhittable.flatMap((at) => {
        const pair = pairs[at];
        return pair ? [{ answers: pair.answers, proposed: separating(byProposed, pair.answers) }] : [];
      }),
      answers: undecidedAnswers(bench, byRecorded, now).map((answer) => ({
        answer,
        proposed: deciding(byProposed, answer),
      })),
    },
  };
}

/** In this outcome exactly one of the two stands. */
function separates({ changes }: PlannedOutcome, a: Id, b: Id, now: (claim: Id) => Standing): boolean {
  const stands = (claim: Id): boolean => (changes.get(claim)?.[1] ?? now(claim)) === "stands";
  return stands(a) !== stands(b);
}

/** Rival answers, by text, of which at least one is open and none stands. */
function rivalPairs(bench: Judged, now: (claim: Id) => Standing): readonly (readonly [Id, Id])[] {
  const answers = answersIn(bench);
  const among = new Set(answers);
  return answers.flatMap((a) =>
    bench.graph
      .rivalsOf(a)
      .filter((b) => among.has(b) && byText(a, b) < 0)
      .filter(
        (b) => [a, b].some((one) => now(one) === "open") && ![a, b].some((one) => now(one) === "stands"),
      )
      .toSorted(byText)
      .map((b) => [a, b] as const),
  );
}

/** Every answer of every question that may be shown, by text. */
function answersIn({ graph, judgement }: Judged): readonly Id[] {
  const shown = shownIn({ graph, judgement });
  const all = new Set(graph.list("questions").flatMap((one) => (shown(one.id) ? one.values.answers : [])));
  return [...all].filter((claim) => judgement.counts(claim) && shown(claim)).sort(byText);
}

function undecidedAnswers(
  bench: Judged,
  recorded: ReadonlyMap<Id, readonly Planned[]>,
  now: (claim: Id) => Standing,
): readonly Id[] {
  return answersIn(bench).filter(
    (answer) =>
      (now(answer) === "open" || now(answer) === "unsupported") && deciding(recorded, answer).length === 0,
  );
}

function deciding(those: ReadonlyMap<Id, readonly Planned[]>, answer: Id): readonly Id[] {
  return (those.get(answer) ?? [])
    .filter((one) => one.decides.includes(answer))
    .map((one) => one.examination.id)
    .sort(byText);
}

/** The examinations that change each claim in some outcome; what is idle tells nothing of any. */
function touching(those: readonly Planned[]): ReadonlyMap<Id, readonly Planned[]> {
  const found = new Map<Id, Planned[]>();
  for (const one of those) {
    for (const claim of one.idle ? [] : one.changed) {
      const list = found.get(claim);
      if (list) list.push(one);
      else found.set(claim, [one]);
    }
  }
  return found;
}

/** Costs for the choice of a set: one that is unknown counts for more than all that are known together. */
function costsOf(recorded: readonly Planned[]): (id: Id) => number {
  const known = new Map(
    recorded.flatMap(({ examination: { id, cost } }) => (cost === null ? [] : [[id, cost] as const])),
  );
  const unknown = 1 + [...known.values()].reduce((sum, cost) => sum + Math.max(0, cost), 0);
  return (id) => known.get(id) ?? unknown;
}

function byIds(a: readonly Id[], b: readonly Id[]): number {
  return byText(a.join("\n"), b.join("\n"));
}
