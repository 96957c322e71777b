/** One outcome: how likely it is before it is known, and what it would leave of the question. */
export interface OutcomeGain {
  readonly p: number;
  /** Probability of each answer once it is known; empty where the outcome cannot be. */
  readonly posterior: readonly number[];
  /** Entropy of the posterior in bits. */
  readonly entropy: number;
}

/** What an examination is expected to tell of a question, in bits (methods J1; Lindley 1956). */
export interface ExpectedGain {
  readonly priorBits: number;
  readonly bits: number;
  readonly outcomes: readonly OutcomeGain[];
}

/** Bits below which a gain is nothing but rounding. */
const hair = 1e-12;

/** Entropy in bits; what cannot be adds nothing. */
export function entropyOf(probabilities: readonly number[]): number {
  return -probabilities.reduce((sum, p) => (p > 0 ? sum + p * Math.log2(p) : sum), 0);
}

/**
 * The expected loss of entropy: that of the prior less the mean of the posteriors'. `likely` has a row for each
 * answer with the probability of each outcome under it; the prior adds up to 1, and so does each row.
 */
export function expectedGain(prior: readonly number[], likely: readonly (readonly number[])[]): ExpectedGain {
  const priorBits = entropyOf(prior);
  const count = Math.max(0, ...likely.map((row) => row.length));
  const outcomes = Array.from({ length: count }, (_, at): OutcomeGain => {
    const joint = prior.map((p, answer) => p * (likely[answer]?.[at] ?? 0));
    const p = joint.reduce((sum, one) => sum + one, 0);
    if (p <= 0) return { p: 0, posterior: [], entropy: 0 };
    const posterior = joint.map((one) => one / p);
    return { p, posterior, entropy: entropyOf(posterior) };
  });
  const left = outcomes.reduce((sum, one) => sum + one.p * one.entropy, 0);
  const bits = priorBits - left;
  // Rounding may leave a useless examination a hair beside nothing.
  return { priorBits, bits: bits > hair ? bits : 0, outcomes };
}

/**
 * What several examinations tell together, their outcomes independent under each answer: never more than the sum of
 * what each tells (methods J3). The outcomes are multiplied out, so the caller keeps them few.
 */
export function jointGain(
  prior: readonly number[],
  examinations: readonly (readonly (readonly number[])[])[],
): number {
  const together = examinations.reduce<readonly (readonly number[])[]>(
    (rows, next) => rows.map((row, answer) => row.flatMap((p) => (next[answer] ?? []).map((q) => p * q))),
    prior.map(() => [1]),
  );
  return expectedGain(prior, together).bits;
}
