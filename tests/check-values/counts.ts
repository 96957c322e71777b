import { fisherExact } from "../../plugins/counts/exact/fisher.ts";
import { clopperPearson, jeffreys, ruleOfThree, wilson } from "../../plugins/counts/exact/proportion.ts";
import { rateRatio } from "../../plugins/counts/exact/rates.ts";
import type { Methods } from "./case.ts";

interface Input {
  readonly table: readonly [readonly [number, number], readonly [number, number]];
  readonly counts: readonly [number, number];
  readonly exposure: readonly [number, number];
  readonly x: number;
  readonly n: number;
}

const given =
  (method: (input: Input) => unknown) =>
  (input: unknown): unknown =>
    method(input as Input);

/** How near R's fisher.test looks for a ratio: its uniroot stops at the fourth root of the machine's epsilon. */
const asNearAsR = Number.EPSILON ** 0.25;

/** The methods of `counts`. */
export const counts: Methods = {
  "counts.fisherExact": given(({ table: [[a, b], [c, d]] }) => {
    const { p, less, greater, ratio, low, high } = fisherExact(a, b, c, d, asNearAsR);
    return { pTwoSided: p, pLess: less, pGreater: greater, oddsRatioCML: ratio, ci95: [low, high] };
  }),
  "counts.rateRatio": given(({ counts: [x1, x2], exposure: [t1, t2] }) => {
    const { p, ratio, low, high } = rateRatio({ count: x1, exposure: t1 }, { count: x2, exposure: t2 });
    return { rateRatio: ratio, ci95: [low, high], p };
  }),
  "counts.proportion": given(({ x, n }) => ({
    estimate: x / n,
    clopperPearson95: clopperPearson(x, n),
    wilson95: wilson(x, n),
    jeffreys95: jeffreys(x, n),
    ruleOfThree: ruleOfThree(x, n),
  })),
};
