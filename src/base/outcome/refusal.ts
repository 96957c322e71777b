import { count, say } from "../text/said/said.ts";
import type { Text } from "../text/said/said.ts";

/**
 * Why a computation was refused: a short kebab-case reason (`too-few`), a sentence for the reader, and the
 * figures that go with it (`needed`, `lowest-allowed`).
 */
export interface Refusal {
  readonly refused: string;
  readonly message: Text;
  readonly details: Readonly<Record<string, number>>;
}

/** A refusal as a value. */
export function refuse(
  refused: string,
  message: Text,
  details: Readonly<Record<string, number>> = {},
): Refusal {
  return { refused, message, details };
}

/** Tells a refusal from a result. */
export function isRefusal<T extends object>(outcome: T | Refusal): outcome is Refusal {
  return "refused" in outcome;
}

/** Refuses a list in which a number is missing, or is not above 0; null when all is well. */
export function refuseUnlessPositive(values: readonly (number | null)[], what: Text): Refusal | null {
  for (const [place, value] of values.entries()) {
    if (value === null || !Number.isFinite(value)) {
      return refuse(
        "missing-value",
        say`Number ${String(place + 1)} of the ${what} is missing, expected a number.`,
      );
    }
    if (value <= 0) {
      return refuse(
        "non-positive",
        say`Number ${String(place + 1)} of the ${what} is ${String(value)}, expected one above 0.`,
      );
    }
  }
  return null;
}

/** Refuses fewer than `needed` of something; null when there are enough. */
export function refuseFewer(given: number, needed: number, what: Text): Refusal | null {
  if (given >= needed) return null;
  return refuse("too-few", say`Unexpected ${count(given)} ${what}, expected at least ${count(needed)}.`, {
    needed,
  });
}
