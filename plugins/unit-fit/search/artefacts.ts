import type { Length } from "../lengths.ts";
import { FEWEST, highestPeak, phi } from "./quantogram.ts";

/** How one artefact's lengths bear on the common unit (methods A10). */
export interface ArtefactShare {
  readonly artefact: string;
  readonly n: number;
  /** Height of the quantogram of its lengths alone at the common unit. */
  readonly phi: number;
  /** The best unit without it; null where too few lengths are left. */
  readonly without: number | null;
}

/** Each artefact's own height at the unit q, and the best unit of the same search without it. */
export function sharesOf(
  lengths: readonly Length[],
  q: number,
  qMin: number,
  qMax: number,
): readonly ArtefactShare[] {
  const artefacts = [...new Set(lengths.map((length) => length.artefact))];
  return artefacts.map((artefact) => {
    const own = lengths.filter((length) => length.artefact === artefact);
    const rest = lengths.filter((length) => length.artefact !== artefact);
    return {
      artefact,
      n: own.length,
      phi: phi(own, q),
      without: rest.length < FEWEST ? null : (highestPeak(rest, qMin, qMax)?.q ?? null),
    };
  });
}

/** Whether the best unit moves by more than 1 % when one artefact is left out. */
export function restsOnOne(shares: readonly ArtefactShare[], q: number): boolean {
  return shares.some(({ without }) => without !== null && Math.abs(without / q - 1) > 0.01);
}
