import type { Id } from "../../../base/finding.ts";
import type { Fates } from "../told/apart.ts";
import { misfitsIn } from "./fit.ts";
import type { Commitment, Misfit } from "./fit.ts";

/** The fewest commitments that have to be given up to fit some alternative; null when that is not known. */
export interface Least {
  readonly misfits: readonly Misfit[] | null;
}

/** Looks through all ways; of equals the first. */
export function leastAmong(own: readonly Commitment[], all: readonly Fates[]): Least {
  let best: readonly Misfit[] | null = null;
  for (const fates of all) {
    const misfits = misfitsIn(own, (claim) => fates.get(claim) ?? "falls");
    if (best === null || misfits.length < best.length) best = misfits;
  }
  return { misfits: best };
}

/** Asks whether all commitments go together, then all but each; of a scholar who has to give up two more is not asked. */
export function leastByAsking(
  own: readonly Commitment[],
  together: (held: readonly Id[], rejected: readonly Id[]) => boolean | null,
): Least {
  const fit = (ones: readonly Commitment[]): boolean | null =>
    together(
      ones.filter((one) => one.stance === "holds").map((one) => one.claim),
      ones.filter((one) => one.stance === "rejects").map((one) => one.claim),
    );
  const given = (one: Commitment): Misfit => ({ ...one, standing: null });
  const whole = fit(own);
  if (whole === true) return { misfits: [] };
  const answers = own.map((one) => fit(own.filter((other) => other !== one)));
  const place = answers.indexOf(true);
  const but = own[place];
  if (but) return { misfits: whole === null ? null : [given(but)] };
  if (whole === null || answers.includes(null)) return { misfits: null };
  return { misfits: own.map(given) };
}
