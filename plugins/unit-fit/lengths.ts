import { refuseUnlessPositive, say, type Refusal } from "../../src/plugin.ts";

/** A length (or mass) as the quantogram sees it, all in one unit. */
export interface Length {
  /** Central value. */
  readonly value: number;
  /** Standard uncertainty of a normal error; 0 takes the value at its face. */
  readonly sd: number;
  /** Width of a rectangular range; 0 for a value. */
  readonly width: number;
  /** What the value was recorded to; 0 when it was not rounded. */
  readonly recordedTo: number;
  /** What it was measured on: lengths of one artefact are not independent trials of a unit. */
  readonly artefact: string;
}

/** A length taken at its face. */
export function plain(value: number, recordedTo = 0, artefact = ""): Length {
  return { value, sd: 0, width: 0, recordedTo, artefact };
}

/** How far an error weakens the phase of a length at the trial unit q, 1 to 0 (methods A6). */
export function attenuation(length: Length, q: number): number {
  if (length.width > 0) {
    if (length.width >= q) return 0;
    const turn = (Math.PI * length.width) / q;
    return turn > 1e-9 ? Math.sin(turn) / turn : 1;
  }
  return length.sd === 0 ? 1 : Math.exp((-2 * Math.PI ** 2 * length.sd ** 2) / q ** 2);
}

/** Whether any length is to be weighted. */
export function isWeighted(lengths: readonly Length[]): boolean {
  return lengths.some((length) => length.sd > 0 || length.width > 0);
}

/** Refuses missing and non-positive values. */
export function refuseLengths(values: readonly (number | null)[]): Refusal | null {
  return refuseUnlessPositive(values, say`values`);
}

/** Expected phi of n lengths with an error of `share` units (1 s): sqrt(2n) exp(-2 pi² share²). */
export function expectedPhi(n: number, share: number): number {
  return Math.sqrt(2 * n) * Math.exp(-2 * Math.PI ** 2 * share ** 2);
}

/**
 * The error of single lengths, in units (1 s), up to which n of them reach the height `critical` at their unit in about
 * half of all cases: where the expected phi equals it. Null where even exact multiples would not.
 */
export function largestError(n: number, critical: number): number | null {
  const most = Math.sqrt(2 * n);
  return critical >= most ? null : Math.sqrt(Math.log(most / critical) / (2 * Math.PI ** 2));
}
