import type { Id } from "../base/finding.ts";
import type { Linked } from "../link/graph.ts";
import type { Examination } from "../link/suppose/examination.ts";
import { expectedGain } from "./weigh/gain.ts";
import type { Gain, NoGain, PlanBench } from "./plan.ts";
import { shownIn } from "./consequence.ts";

/** A question's prior over its answers, adding up to 1; those that are withheld are reckoned with, and not shown. */
interface Prior {
  readonly question: Id;
  readonly answers: readonly Id[];
  readonly prior: readonly number[];
  readonly shown: (answer: Id) => boolean;
}

/** Probabilities of outcomes that add up to 1 within this do. */
const slack = 1e-6;

/** Prepared once: what an examination is expected to tell of the question that it tells most about, or why that cannot be told. */
export function expectationsIn(
  bench: Pick<PlanBench, "graph" | "judgement">,
): (examination: Examination) => Gain | NoGain {
  const priors = priorsIn(bench);
  return (examination) => {
    if (priors.length === 0) return { why: "no-prior" };
    if (examination.outcomes.some((one) => one.probability === null)) return { why: "no-probabilities" };
    const found = priors.map((prior) => gainAbout(examination, prior));
    const gains = found.filter((one) => "bits" in one);
    const [first] = found;
    const best = gains.reduce<Gain | null>((a, b) => (a === null || b.bits > a.bits ? b : a), null);
    return best ?? first ?? { why: "no-prior" };
  };
}

function priorsIn({ graph, judgement }: Pick<PlanBench, "graph" | "judgement">): readonly Prior[] {
  const shown = shownIn({ graph, judgement });
  return graph
    .list("questions")
    .filter(({ id }) => shown(id))
    .flatMap((question) => priorOf(question, (claim) => judgement.counts(claim), shown))
    .toSorted((a, b) => (a.question < b.question ? -1 : 1));
}

function priorOf(
  { id, values }: Linked<"questions">,
  counts: (claim: Id) => boolean,
  shown: (claim: Id) => boolean,
): readonly Prior[] {
  const given = values.answers.flatMap((claim) => {
    const p = values.prior?.get(claim) ?? 0;
    return p > 0 && counts(claim) ? [[claim, p] as const] : [];
  });
  const sum = given.reduce((all, [, p]) => all + p, 0);
  if (!(sum > 0)) return [];
  const answers = given.map(([claim]) => claim);
  return [{ question: id, answers, prior: given.map(([, p]) => p / sum), shown }];
}

function gainAbout(examination: Examination, { question, answers, prior, shown }: Prior): Gain | NoGain {
  const named = (why: NoGain, answer: Id): NoGain => (shown(answer) ? why : { why: "no-probabilities" });
  const likely: (readonly number[])[] = [];
  for (const answer of answers) {
    const row = examination.outcomes.map(({ probability }) =>
      typeof probability === "number" ? probability : (probability?.get(answer) ?? null),
    );
    const told = row.filter((p) => p !== null);
    if (told.length < row.length) return named({ why: "answer-left-out", answer }, answer);
    const sum = told.reduce((all, p) => all + p, 0);
    const bad = Math.abs(sum - 1) > slack || told.some((p) => p < 0);
    if (bad) return named({ why: "not-one", answer, sum }, answer);
    likely.push(told.map((p) => p / sum));
  }
  const { priorBits, bits, outcomes } = expectedGain(prior, likely);
  const seen = <T>(those: readonly T[]): readonly T[] =>
    those.filter((_, at) => answers.slice(at, at + 1).some(shown));
  return {
    question,
    bits,
    prior: new Map(seen(answers.map((answer, at) => [answer, prior[at] ?? 0] as const))),
    priorBits,
    outcomes: outcomes.map((one) => ({ ...one, posterior: seen(one.posterior) })),
  };
}
