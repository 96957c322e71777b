import type { Id } from "../../base/finding.ts";

/** Which outcome of which examination is taken as found. */
export interface Supposition {
  readonly examination: Id;
  readonly outcome: Id;
}

/** A supposition from `EXAMINATION:OUTCOME`; null for anything else. An outcome holds no colon, an examination may. */
export function suppositionIn(written: string): Supposition | null {
  const colon = written.lastIndexOf(":");
  if (colon <= 0 || colon === written.length - 1) return null;
  return { examination: written.slice(0, colon), outcome: written.slice(colon + 1) };
}

/** A supposition as one word: `EXAMINATION:OUTCOME`; the examination alone where no outcome is named. */
export function suppositionText({ examination, outcome }: Supposition): string {
  return outcome === "" ? examination : `${examination}:${outcome}`;
}
