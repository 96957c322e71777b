import type { Id } from "../../../base/finding.ts";
import type { Lens } from "../../../derive/lens.ts";
import type { Judgement } from "../../../judge/judge.ts";
import type { AnyLinked, Graph, Linked } from "../../../link/graph.ts";
import type { ListName } from "../../../read/grammar/field.ts";
import { placeWithheld } from "../../../link/withheld.ts";

/** Who typed a record and who compared it is an affair of the compilers' own; notes are working papers unless they say otherwise. */
const ownAffair = ["entered-by", "checked-by"] as const;

/** A corpus under a lens, as much of it as tells what may be given out. */
export interface GivenFrom {
  readonly graph: Graph;
  readonly lens: Lens;
  readonly judgement: Pick<Judgement, "counts" | "listed">;
}

/** What goes with the records that are given. */
export interface GivenWith {
  /** The path of the file of every picture that is given, by its record. */
  readonly pictures: ReadonlyMap<Id, string>;
  /** Whether notes are given too. */
  readonly notes: boolean;
}

/** A record with those of its fields that are given: no exact places; a picture's file is the one that goes with it. */
export function openFields(graph: Graph, record: AnyLinked, { pictures, notes }: GivenWith): AnyLinked {
  const note = notes ? [] : ["note"];
  const values = without(record.values, [...ownAffair, ...note]);
  const open = { ...record, values } as AnyLinked;
  if (open.list === "images") {
    const file = pictures.get(open.id) ?? open.values.file;
    return { ...open, values: { ...open.values, file } };
  }
  if (open.list !== "artefacts") return open;
  const { access } = open.values;
  const places = placeWithheld(graph, open.id)
    ? (["coordinates", "found-at"] as const)
    : (["coordinates"] as const);
  const kept = access === undefined ? open.values : { ...open.values, access: without(access, note) };
  return { ...open, values: without(kept, places) as typeof kept };
}

function without<T extends object>(values: T, names: readonly string[]): T {
  return Object.fromEntries(Object.entries(values).filter(([name]) => !names.includes(name))) as T;
}

/** A graph whose records have no notes. */
export function withoutNotes(graph: Graph): Graph {
  const bare = ([id, record]: readonly [Id, AnyLinked]): readonly [Id, AnyLinked] => {
    if (record.values.note === undefined) return [id, record];
    return [id, { ...record, values: without(record.values, ["note"]) } as AnyLinked];
  };
  const records = new Map([...graph.records].map(bare));
  const list = <L extends ListName>(name: L): readonly Linked<L>[] =>
    graph.list(name).flatMap(({ id }) => (records.get(id) as Linked<L> | undefined) ?? []);
  return { ...graph, records, list };
}
