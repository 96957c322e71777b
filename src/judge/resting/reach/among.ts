import type { Id } from "../../../base/finding.ts";

/** The places in each list of the records it holds. */
const placesIn = new WeakMap<object, ReadonlyMap<Id, number>>();

/** Those of a list that have one of some ids, in the order of the list: a few of many, without going through them all. */
export function among<T extends { readonly id: Id }>(list: readonly T[], ids: Iterable<Id>): readonly T[] {
  const places = placesIn.get(list) ?? new Map(list.map(({ id }, place) => [id, place]));
  placesIn.set(list, places);
  const found: number[] = [];
  for (const id of new Set(ids)) {
    const place = places.get(id);
    if (place !== undefined) found.push(place);
  }
  return found.sort((a, b) => a - b).flatMap((place) => list[place] ?? []);
}
