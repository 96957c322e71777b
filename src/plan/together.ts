import type { Id } from "../base/finding.ts";
import { byText } from "../base/order.ts";
import type { Gain, GainTogether, Planned } from "./plan.ts";
import { jointGain } from "./weigh/gain.ts";

/** So many outcomes are multiplied out at most; beyond them nothing is told. */
const outcomeLimit = 4096;

/** What examinations tell together of the question that most of them tell anything about; null where fewer than two do. */
export function gainTogether(planned: readonly Planned[]): GainTogether | null {
  const byQuestion = new Map<Id, (readonly [Id, Gain])[]>();
  for (const { examination, gain } of planned) {
    if (gain === null || gain.bits === 0 || !isWhole(gain)) continue;
    byQuestion.set(gain.question, [...(byQuestion.get(gain.question) ?? []), [examination.id, gain]]);
  }
  const [most] = [...byQuestion].sort((a, b) => b[1].length - a[1].length || byText(a[0], b[0]));
  if (!most || most[1].length < 2) return null;
  const [question, those] = most;
  const gains = those.map(([, gain]) => gain);
  if (gains.reduce((product, gain) => product * gain.outcomes.length, 1) > outcomeLimit) return null;
  return {
    question,
    examinations: those.map(([id]) => id),
    bits: jointGain(
      [...(gains[0]?.prior.values() ?? [])],
      gains.map((gain) => likelihoods(gain)),
    ),
    sum: gains.reduce((sum, gain) => sum + gain.bits, 0),
  };
}

/** Whether all answers with a prior are shown: what is withheld cannot be reckoned with here. */
function isWhole({ prior }: Gain): boolean {
  return Math.abs([...prior.values()].reduce((sum, p) => sum + p, 0) - 1) < 1e-9;
}

/** The probability of each outcome under each answer, got back from the posteriors. */
function likelihoods({ prior, outcomes }: Gain): readonly (readonly number[])[] {
  return [...prior.values()].map((p, answer) =>
    outcomes.map((one) => ((one.posterior[answer] ?? 0) * one.p) / p),
  );
}
