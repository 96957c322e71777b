import type { Id } from "../../../base/finding.ts";
import type { Judgement } from "../../judge.ts";
import type { Standpoints } from "../component.ts";
import type { Decided } from "../decided.ts";
import { fitOf, misfitsIn } from "./fit.ts";
import type { Commitment, Fit, Misfit } from "./fit.ts";

/**
 * The scholars whom some standpoint fits wholly, or all but one commitment: what stands or falls in every standpoint
 * counts once, and of each part of what is open the way that suits the scholar best.
 */
export function wholeFits(
  { standings }: Judgement,
  commitments: ReadonlyMap<Id, readonly Commitment[]>,
  parts: readonly Decided[],
): Pick<Standpoints, "fits" | "unknown"> {
  const standingOf = (claim: Id) => standings.get(claim) ?? "unsupported";
  const fits: Fit[] = [];
  const unknown: Id[] = [];
  for (const [scholar, own] of commitments) {
    const settled = own.filter((one) => standingOf(one.claim) !== "open");
    const misfits: Misfit[] = [...misfitsIn(settled, standingOf)];
    let known = true;
    for (const { least } of parts) {
      const here = least.get(scholar);
      if (here === undefined) continue;
      if (here.misfits === null) known = false;
      else misfits.push(...here.misfits);
    }
    const fit = fitOf(scholar, own.length, misfits);
    if (fit === null) continue;
    if (known) fits.push(fit);
    else unknown.push(scholar);
  }
  return {
    fits: [...fits.filter((one) => one.but === null), ...fits.filter((one) => one.but !== null)],
    unknown,
  };
}
