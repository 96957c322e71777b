import type { Id } from "../../../base/finding.ts";
import type { AnyLinked, Graph, Linked } from "../../../link/graph.ts";
import type { ListName } from "../../../read/grammar/field.ts";
import { evidenceLists } from "../../compile.ts";
import type { Compiled } from "../../compile.ts";

/** The records of a list that have one of some ids, in the order of the list: a few of many, without going through them all. */
export function among<L extends ListName>(
  name: L,
  ids: Iterable<Id>,
  graph: Graph,
  compiled: Compiled,
): readonly Linked<L>[] {
  const order = orderIn(name, compiled);
  const those: { readonly record: AnyLinked; readonly at: number | undefined }[] = [];
  for (const id of new Set(ids)) {
    const record = graph.records.get(id);
    if (record?.list === name) those.push({ record, at: order(id) });
  }
  const list: readonly { readonly id: Id }[] = graph.list(name);
  const placeOf = those.every(({ at }) => at !== undefined) ? null : placesOf(list);
  const place = ({ record, at }: (typeof those)[number]): number => placeOf?.get(record.id) ?? at ?? -1;
  return those.sort((a, b) => place(a) - place(b)).map(({ record }) => record as Linked<L>);
}

const seated: readonly ListName[] = ["claims", ...evidenceLists];

/** What of a list is judged has its order there; undefined for what is not. */
function orderIn(name: ListName, { atoms, seated: end, named }: Compiled): (id: Id) => number | undefined {
  const known = (place: number | undefined, before: number): number | undefined =>
    place !== undefined && place >= 0 && place < before ? place : undefined;
  if (name === "arguments") return (id) => known(named.placeOf(id), Infinity);
  return seated.includes(name) ? (id) => known(atoms.get(id), end) : () => undefined;
}

const placesIn = new WeakMap<object, ReadonlyMap<Id, number>>();

/** The places in a list of the records that it holds. */
function placesOf(list: readonly { readonly id: Id }[]): ReadonlyMap<Id, number> {
  const places = placesIn.get(list) ?? new Map(list.map(({ id }, place) => [id, place]));
  placesIn.set(list, places);
  return places;
}
