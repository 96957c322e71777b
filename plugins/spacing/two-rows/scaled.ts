import { isRefusal, type Measured, type Random, type Refusal } from "../../../src/plugin.ts";
import { compareCensored, gehanTest, type Permutation } from "./compare.ts";
import type { Gap } from "../survival.ts";

const FACTORS = 200;
const MOST_DRAWS = 2_000;
const FEWEST_DRAWS = 200;

/** Two rows compared, the first enlarged by a factor that has an uncertainty of its own (methods D5). */
export interface ScaledComparison {
  readonly test: Permutation;
  readonly factor: number;
  /** Share of the factors drawn with which the rows differ (p below 5 %); null for a factor without uncertainty. */
  readonly differing: number | null;
  /** Smallest and largest factor drawn with which they do not. */
  readonly agreeing: readonly [number, number] | null;
}

/** Gehan's test of the rows at the stated factor, and over factors drawn from its lognormal distribution. */
export function compareScaled(
  gaps: readonly Gap[],
  other: readonly Gap[],
  scale: Measured | undefined,
  random: Random,
  draws: number,
): ScaledComparison | Refusal {
  const factor = scale?.quantity.value ?? 1;
  const u = scale?.quantity.u ?? 0;
  const compared = compareCensored(enlarged(gaps, factor), other, random, draws);
  if (isRefusal(compared)) return compared;
  if (!(u > 0)) return { test: compared.gehan, factor, differing: null, agreeing: null };
  const agreeing: number[] = [];
  const each = Math.min(MOST_DRAWS, Math.max(FEWEST_DRAWS, Math.round(draws / 5)));
  for (let k = 0; k < FACTORS; k += 1) {
    const drawn = factor * Math.exp((u / factor) * random.normal());
    if (gehanTest(enlarged(gaps, drawn), other, random, each, MOST_DRAWS).p >= 0.05) agreeing.push(drawn);
  }
  return {
    test: compared.gehan,
    factor,
    differing: 1 - agreeing.length / FACTORS,
    agreeing: agreeing.length === 0 ? null : [Math.min(...agreeing), Math.max(...agreeing)],
  };
}

function enlarged(gaps: readonly Gap[], factor: number): readonly Gap[] {
  return gaps.map((gap) => ({ ...gap, size: gap.size * factor }));
}
