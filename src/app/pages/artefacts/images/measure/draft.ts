import type { PictureAsked } from "../../../../../show/artefacts/picture/asked.ts";
import { pointsOf } from "../../../../../show/artefacts/picture/points.ts";
import type { Point, Taken } from "../../../../../show/artefacts/picture/points.ts";

/** What points can be set for. */
export type PointSet = "scale" | "figure";

/** A measurement on a picture in the making; the last reading of a set may lack points. */
export type Draft = Omit<PictureAsked, "image" | "width" | "height">;

type Readings = readonly (readonly Point[])[];

/** The readings of a set. */
export const readingsOf = (draft: Draft, set: PointSet): Readings =>
  set === "scale" ? draft.scale.readings : draft.readings;

/** How many points a reading of a set takes. */
export const neededFor = (draft: Draft, set: PointSet): number =>
  set === "scale" ? 2 : pointsOf[draft.taken];

/** The draft with other readings of a set. */
export function withReadings(draft: Draft, set: PointSet, readings: Readings): Draft {
  return set === "scale" ? { ...draft, scale: { ...draft.scale, readings } } : { ...draft, readings };
}

/** The readings of a set that have all their points. */
export function wholeReadings(draft: Draft, set: PointSet): Readings {
  return readingsOf(draft, set).filter((one) => one.length === neededFor(draft, set));
}

/** Sets the next point of a set: of the reading that is begun, else of a new one. */
export function withPoint(draft: Draft, set: PointSet, point: Point): Draft {
  const readings = readingsOf(draft, set);
  const last = readings.at(-1);
  const isOpen = last !== undefined && last.length < neededFor(draft, set);
  return withReadings(
    draft,
    set,
    isOpen ? [...readings.slice(0, -1), [...last, point]] : [...readings, [point]],
  );
}

/** Begins a new reading of a set, where the last one has all its points. */
export function begunAgain(draft: Draft, set: PointSet): Draft {
  const readings = readingsOf(draft, set);
  return readings.length > 0 && readings.length === wholeReadings(draft, set).length
    ? withReadings(draft, set, [...readings, []])
    : draft;
}

/** Takes the point away that was set last. */
export function withoutLast(draft: Draft, set: PointSet): Draft {
  const kept = readingsOf(draft, set).filter((one) => one.length > 0);
  const last = kept.at(-1);
  if (!last) return withReadings(draft, set, []);
  const rest = last.slice(0, -1);
  return withReadings(draft, set, rest.length > 0 ? [...kept.slice(0, -1), rest] : kept.slice(0, -1));
}

/** Takes one reading away. */
export function withoutReading(draft: Draft, set: PointSet, place: number): Draft {
  return withReadings(
    draft,
    set,
    readingsOf(draft, set).filter((_, at) => at !== place),
  );
}

/** Moves one point. */
export function withMoved(
  draft: Draft,
  set: PointSet,
  [reading, place]: readonly [number, number],
  to: Point,
): Draft {
  return withReadings(
    draft,
    set,
    readingsOf(draft, set).map((points, at) =>
      at === reading ? points.map((one, spot) => (spot === place ? to : one)) : points,
    ),
  );
}

/** Another sort of figure; points of the other sort would mean something else. */
export function asTaken(draft: Draft, taken: Taken): Draft {
  return taken === draft.taken ? draft : { ...draft, taken, readings: [] };
}

/** The draft as it is asked about: whole readings alone. */
export function askedOf(
  draft: Draft,
  image: { readonly id: string; readonly width: number; readonly height: number },
): PictureAsked {
  return {
    ...draft,
    image: image.id,
    width: image.width,
    height: image.height,
    scale: { ...draft.scale, readings: wholeReadings(draft, "scale") },
    readings: wholeReadings(draft, "figure"),
  };
}
