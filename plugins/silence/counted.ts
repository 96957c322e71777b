import { say, type Id, type LeftOut, type Observed, type Recorded, type Text } from "../../src/plugin.ts";

/** What was counted: known features, those of them reported, and occasions of silence, those of one source as one. */
export interface Counted {
  readonly known: readonly Observed[];
  readonly reported: readonly Observed[];
  readonly silences: readonly Observed[];
  /** Silences by what makes them one occasion: their source, else who is silent. */
  readonly occasions: ReadonlyMap<string, readonly Observed[]>;
  readonly leftOut: readonly LeftOut[];
}

/** Counts the observations of the three inputs; what does not belong is left out with the reason. */
export function countedIn(observations: Recorded["observations"]): Counted {
  const leftOut: LeftOut[] = [];
  const only = (input: string, present: Observed["present"], why: Text): readonly Observed[] =>
    (observations[input] ?? []).filter((one) => {
      if (one.present !== present) leftOut.push({ id: one.id, why });
      return one.present === present;
    });
  const known = only("known", "true", say`nothing was seen`);
  const claimed = only("reported", "true", say`no report that it is there`);
  const silences = only("occasions", "not-reported", say`no silence`);

  const places = new Map<string, number>();
  for (const one of known) places.set(traceOf(one), (places.get(traceOf(one)) ?? 0) + 1);
  const reported = claimed.filter((one) => {
    const left = places.get(traceOf(one)) ?? 0;
    if (left === 0) leftOut.push({ id: one.id, why: say`not among what is known` });
    places.set(traceOf(one), Math.max(0, left - 1));
    return left > 0;
  });
  const occasions = new Map<string, readonly Observed[]>();
  for (const one of silences) {
    const occasion = one.source ?? ([...one.by].sort().join(" ") || one.id);
    occasions.set(occasion, [...(occasions.get(occasion) ?? []), one]);
  }
  return { known, reported, silences, occasions, leftOut };
}

/** Which trace of which thing an observation is of. */
function traceOf({ artefacts, feature }: Observed): string {
  return JSON.stringify([feature, ...[...artefacts].sort()]);
}

/** The conditions met that make the count misleading, by the ids of their cautions. */
export function troubles({ known, reported, silences, occasions }: Counted): readonly string[] {
  const silent = new Set(silences.flatMap(voicesOf));
  const isSilent = (id: Id): boolean => silent.has(id);
  const heard = new Set(reported.flatMap(voicesOf));
  const unheard = [...occasions.values()].some((all) => !all.flatMap(voicesOf).some((one) => heard.has(one)));
  const ofAnother =
    reported.some((one) => !voicesOf(one).some(isSilent)) ||
    (occasions.size > 1 && heard.size > 0 && unheard);
  const byItself = known.every((one) => voicesOf(one).every(isSilent) && one.alsoFrom.every(isSilent));
  const writers = [...occasions.values()].map((all) => new Set(all.flatMap((one) => one.by)));
  const together = writers.flatMap((one) => [...one]);
  return [
    ...(known.length === 0 ? ["reporting-rate-unknown"] : []),
    ...(ofAnother ? ["reports-of-another"] : []),
    ...(known.length > 0 && byItself ? ["known-by-itself"] : []),
    ...(new Set(together).size < together.length ? ["one-observer"] : []),
  ];
}

/** The source and the scholars whose word an observation is. */
function voicesOf({ source, by }: Observed): readonly Id[] {
  return [...(source === null ? [] : [source]), ...by];
}
