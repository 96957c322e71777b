/**
 * Why a computation was refused: a short kebab-case reason (`too-few`), a sentence for the reader, and the
 * figures that go with it (`needed`, `lowest-allowed`).
 */
export interface Refusal {
  readonly refused: string;
  readonly message: string;
  readonly details: Readonly<Record<string, number>>;
}

/** A refusal as a value. */
export function refuse(
  refused: string,
  message: string,
  details: Readonly<Record<string, number>> = {},
): Refusal {
  return { refused, message, details };
}

/** Tells a refusal from a result. */
export function isRefusal<T extends object>(outcome: T | Refusal): outcome is Refusal {
  return "refused" in outcome;
}

/** Refuses a list in which a number is missing, or is not above 0; null when all is well. */
export function refuseUnlessPositive(values: readonly (number | null)[], what: string): Refusal | null {
  for (const [place, value] of values.entries()) {
    if (value === null || !Number.isFinite(value)) {
      return refuse("missing-value", `Number ${place + 1} of the ${what} is missing, expected a number.`);
    }
    if (value <= 0) {
      return refuse("non-positive", `Number ${place + 1} of the ${what} is ${value}, expected one above 0.`);
    }
  }
  return null;
}

/** Refuses fewer than `needed` of something; null when there are enough. */
export function refuseFewer(count: number, needed: number, what: string): Refusal | null {
  if (count >= needed) return null;
  return refuse("too-few", `Unexpected ${count} ${what}, expected at least ${needed}.`, { needed });
}
