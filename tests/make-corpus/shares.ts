/** How big a made corpus is to be. */
export interface Size {
  /** Records in all lists together, sources apart; at least 60. */
  readonly records: number;
  readonly seed: number;
  /** As many arguments, claims or scholars, where the usual share will not do. */
  readonly arguments?: number;
  readonly claims?: number;
  readonly scholars?: number;
  /** About so many files; without it, one for each source, question and thing. */
  readonly files?: number;
}

/** The size of the corpus that has so many arguments at the usual shares, with about twenty records to a file. */
export function sizeFor(args: number, seed: number): Size {
  return { records: args * 5, seed, arguments: args, files: Math.ceil(args / 4) };
}

/** How many of each there are, disputes among them; measurements fill what is left. */
export interface Shares {
  readonly disputes: number;
  readonly sources: number;
  readonly scholars: number;
  readonly claims: number;
  readonly artefacts: number;
  readonly observations: number;
  readonly relations: number;
  readonly passages: number;
  readonly positions: number;
  readonly arguments: number;
  readonly derivations: number;
  readonly examinations: number;
  readonly readings: number;
  readonly searches: number;
  readonly images: number;
  readonly talks: number;
  readonly measurements: number;
}

/** The shares of a size: about ten claims to a dispute, scholars growing with the root of the whole. */
export function sharesOf(size: Size): Shares {
  const n = size.records;
  if (!Number.isInteger(n) || n < 60)
    throw new RangeError(`Unexpected size ${n}, expected 60 records or more`);
  const share = (part: number, least = 1): number => Math.max(least, Math.round(part * n));
  const claims = size.claims ?? share(0.133, 6);
  const disputes = Math.max(1, Math.round(claims / 10));
  const scholars = size.scholars ?? Math.max(4, Math.min(share(0.05), Math.round(6 + 1.2 * Math.sqrt(n))));
  const artefacts = Math.max(disputes * 4, share(0.12));
  const rest = {
    disputes,
    sources: Math.max(disputes * 4, share(0.11)),
    scholars,
    claims,
    artefacts,
    observations: Math.max(disputes * 3, share(0.1)),
    relations: share(0.012),
    passages: share(0.05),
    positions: share(0.14),
    arguments: size.arguments ?? share(0.2),
    derivations: share(0.014),
    examinations: share(0.007),
    readings: share(0.02),
    searches: share(0.003),
    images: share(0.007),
    talks: 1,
  };
  const { sources: _, ...records } = rest;
  const measurements = n - Object.values(records).reduce((sum, one) => sum + one, 0);
  const least = disputes * 3;
  if (measurements < least)
    throw new RangeError(
      `Unexpected size ${n}, expected ${n - measurements + least} records or more for these parts`,
    );
  return { ...rest, measurements };
}

/** The part of a whole that falls to one of several, so that all parts add up to it. */
export function portion(whole: number, place: number, of: number): number {
  return Math.floor((whole * (place + 1)) / of) - Math.floor((whole * place) / of);
}
