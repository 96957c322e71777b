import type { Id } from "../../base/finding.ts";
import { byText } from "../../base/order.ts";
import type { AnyLinked, Graph } from "../../link/graph.ts";
import type { Derived } from "../derived/derived.ts";
import { ofThings } from "../lens.ts";
import { isFor } from "../recorded/left-out.ts";

/** What evidence has in common: the artefact it is of, the source it is from, or the error it shares (a survey, an instrument). */
export interface InCommon {
  readonly sort: "artefact" | "source" | "survey";
  /** An id; of a survey the name that `shares-error` gives it. */
  readonly name: string;
}

/** Evidence that is left out together, and all that has just this evidence in common. */
export interface Leaving {
  readonly names: readonly [InCommon, ...InCommon[]];
  readonly ids: readonly Id[];
}

/** What could be left out of a number one at a time, and how many single things were too many to try. */
export interface Leavings {
  readonly each: readonly Leaving[];
  /** Readings passed over that do not stand: they take nobody's place. */
  readonly never: readonly Id[];
  readonly untried: number;
}

/** Above so many only what several pieces of evidence have in common is left out. */
export const mostLeavings = 120;

/**
 * Each artefact, source and survey from which some of the evidence came, and some did not: without it there is still
 * something to compute on. Readings that were passed over for others come along, since they would take their place.
 */
export function leavingsOf(graph: Graph, numbers: readonly Derived[], stands: (id: Id) => boolean): Leavings {
  const evidence = (id: Id): AnyLinked | null => {
    const record = graph.records.get(id);
    return record?.list === "measurements" || record?.list === "observations" ? record : null;
  };
  const used = new Set(numbers.flatMap((one) => one.used).filter((id) => evidence(id) !== null));
  const passedOver = numbers
    .flatMap((one) => one.leftOut)
    .filter(({ why }) => isFor(why, "anotherTaken"))
    .map(({ id }) => id);
  const pool = new Set([...used, ...passedOver.filter(stands)]);
  const byName = new Map<string, { readonly common: InCommon; readonly ids: Id[] }>();
  for (const id of pool) {
    const record = evidence(id);
    for (const common of record === null ? [] : commonTo(graph, record)) {
      const key = `${common.sort} ${common.name}`;
      const known = byName.get(key);
      if (known) known.ids.push(id);
      else byName.set(key, { common, ids: [id] });
    }
  }
  const some = [...byName.values()].filter(
    ({ ids }) => ids.length < pool.size && ids.some((id) => used.has(id)),
  );
  const each = together(graph, some);
  const shared = each.filter(({ ids }) => ids.length > 1);
  const never = passedOver.filter((id) => !stands(id));
  if (each.length <= mostLeavings) return { each, never, untried: 0 };
  const tried = shared.slice(0, mostLeavings);
  return { each: tried, never, untried: each.length - tried.length };
}

/** The artefact that a record is of and all it is part of, its sources, and what it shares an error with. */
function commonTo(graph: Graph, record: AnyLinked): readonly InCommon[] {
  const things = new Set<Id>();
  for (const thing of ofThings(record)) {
    for (let at: Id | undefined = thing; at !== undefined; at = graph.wholeOf.get(at)) things.add(at);
  }
  const survey = record.list === "measurements" ? record.values["shares-error"]?.with : undefined;
  return [
    ...[...things].map((name) => ({ sort: "artefact" as const, name })),
    ...graph.provenance(record.id).sources.map((name) => ({ sort: "source" as const, name })),
    ...(survey === undefined ? [] : [{ sort: "survey" as const, name: survey }]),
  ];
}

/** Those with the same evidence as one; a whole goes unnamed beside its part, which says as much. */
function together(
  graph: Graph,
  all: readonly { readonly common: InCommon; readonly ids: readonly Id[] }[],
): readonly Leaving[] {
  const groups = new Map<string, { readonly names: InCommon[]; readonly ids: readonly Id[] }>();
  for (const { common, ids } of all) {
    const key = ids.toSorted(byText).join("\n");
    const group = groups.get(key);
    if (!group) groups.set(key, { names: [common], ids });
    else if (!group.names.some(({ name }) => isWithin(graph, name, common.name))) group.names.push(common);
  }
  return [...groups.values()].flatMap(({ names, ids }) => {
    const [first, ...others] = names;
    return first === undefined ? [] : [{ names: [first, ...others], ids }];
  });
}

function isWithin(graph: Graph, part: Id, whole: Id): boolean {
  for (let at: Id | undefined = part; at !== undefined; at = graph.wholeOf.get(at))
    if (at === whole) return true;
  return false;
}
