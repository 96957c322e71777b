import type { Id } from "../../../base/finding.ts";
import type { Graph } from "../../../link/graph.ts";
import type { Argument } from "../../argument.ts";
import type { Compiled } from "../../compile.ts";

/** What keeps something open: a circle of attacks on which the rest hangs, and that hangs on nothing else. */
export interface Contradiction {
  /**
   * Claims that cannot all be right; claims argued for and against; evidence that speaks against one another; an
   * argument, with something it is against; one that speaks against itself; or nothing of which a name may be told.
   */
  readonly kind: "rivals" | "evidence" | "for-and-against" | "attack" | "against-itself" | "withheld";
  readonly between: readonly Id[];
}

/** What a circle of attacks is about, given what is in it. */
export function contradictionIn(
  ids: readonly Id[],
  compiled: Compiled,
  graph: Graph,
  tellable: (id: Id) => boolean,
): Contradiction {
  const { arguments: all, attackers } = compiled;
  const placeOf = placesIn(all);
  const places = ids.flatMap((id) => placeOf.get(id) ?? []);
  const steps = places.flatMap((place) => all[place] ?? []);
  const concluded = new Set(steps.flatMap((one) => one.therefore ?? []).filter(tellable));
  const rivals = [...concluded].filter((id) => graph.rivalsOf(id).some((other) => concluded.has(other)));
  if (rivals.length > 1) return { kind: "rivals", between: inCorpusOrder(rivals, graph) };
  const targets = new Set(steps.flatMap((one) => one.against));
  const disputed = [...concluded].filter((id) => targets.has(id));
  if (disputed.length > 0) return { kind: "for-and-against", between: inCorpusOrder(disputed, graph) };
  const core = new Set(ids);
  const evidence = [...targets].filter((id) => core.has(id) && tellable(id) && isEvidence(id, graph));
  if (evidence.length > 1) return { kind: "evidence", between: ids.filter((id) => evidence.includes(id)) };
  const against = (step: Argument, other: Id): boolean =>
    other !== step.id && core.has(other) && tellable(other);
  for (const step of steps.filter((one) => tellable(one.id))) {
    const target = step.against.find((other) => against(step, other));
    if (target !== undefined) return { kind: "attack", between: [step.id, target] };
  }
  const itself = places.find((place) => attackers[place]?.includes(place));
  const id = itself === undefined ? undefined : all[itself]?.id;
  return id !== undefined && tellable(id)
    ? { kind: "against-itself", between: [id] }
    : { kind: "withheld", between: [] };
}

function isEvidence(id: Id, graph: Graph): boolean {
  const list = graph.records.get(id)?.list;
  return list === "observations" || list === "measurements" || list === "relations" || list === "derivations";
}

function inCorpusOrder(claims: readonly Id[], graph: Graph): readonly Id[] {
  const placeOf = placesIn(graph.list("claims"));
  const place = (id: Id): number => placeOf.get(id) ?? placeOf.size;
  return claims.toSorted((a, b) => place(a) - place(b));
}

const placed = new WeakMap<readonly { readonly id: Id }[], ReadonlyMap<Id, number>>();

/** The places of all in a list by their ids: the same for each of many contradictions. */
function placesIn(all: readonly { readonly id: Id }[]): ReadonlyMap<Id, number> {
  const known = placed.get(all) ?? new Map(all.map(({ id }, place) => [id, place]));
  placed.set(all, known);
  return known;
}
