/** One dimension in a sum, so many times over: of the thing itself, or added up over its parts. */
export interface TieTerm {
  readonly factor: number;
  readonly dimension: string;
  readonly of: "itself" | "parts";
}

/** What a dimension comes to exactly by others, as the settings say: the perimeter of a round thing is π diameters. */
export interface Tie {
  readonly dimension: string;
  /** The sum as written: `π × diameter`. */
  readonly written: string;
  readonly terms: readonly TieTerm[];
}

/** The sum in a sentence: as written, with an article before the sum of parts. */
export function sumWords({ written }: Tie): string {
  return /^sum of /iu.test(written) ? `the ${written}` : written;
}
