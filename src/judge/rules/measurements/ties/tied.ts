import type { Id } from "../../../../base/finding.ts";
import { select } from "../../../../derive/prepare/select.ts";
import type { Selected } from "../../../../derive/prepare/select.ts";
import { folded } from "../../../../link/dimension.ts";
import type { Graph } from "../../../../link/graph.ts";
import type { Tie } from "../../../../link/ties/tie.ts";

/** One dimension of one thing, so many times over. */
export interface Member {
  readonly thing: Id;
  readonly dimension: string;
  readonly factor: number;
}

/** A tie as it is of one thing: its dimension, and the others whose sum should equal it, those of its parts one by one. */
export interface Tied {
  readonly tie: Tie;
  readonly whole: Member;
  readonly others: readonly Member[];
}

/** The ties of a thing; none over its parts where none is recorded. */
export function tiesOf(graph: Graph, thing: Id, parts: readonly Id[]): readonly Tied[] {
  return graph.ties.flatMap((tie) => {
    if (parts.length === 0 && tie.terms.some(({ of }) => of === "parts")) return [];
    const others = tie.terms.flatMap(({ factor, dimension, of }) =>
      (of === "parts" ? parts : [thing]).map((each) => ({ thing: each, dimension, factor })),
    );
    return [{ tie, whole: { thing, dimension: tie.dimension, factor: 1 }, others }];
  });
}

/** The parts of each thing that has any, in the order of the corpus. */
export function partsByWhole(graph: Graph): ReadonlyMap<Id, readonly Id[]> {
  const parts = new Map<Id, Id[]>();
  for (const { id } of graph.list("artefacts")) {
    const whole = graph.wholeOf.get(id);
    if (whole === undefined) continue;
    const known = parts.get(whole);
    if (known) known.push(id);
    else parts.set(whole, [id]);
  }
  return parts;
}

/** What a derivation would take of one dimension of one thing; null where it takes nothing, or several things between landmarks. */
export type Taking = (member: Pick<Member, "thing" | "dimension">) => Selected | null;

/** Selects, once for all, every dimension that is tied to others, of all things that may be told of. */
export function takingOf(graph: Graph, counts: (id: Id) => boolean): Taking {
  if (graph.ties.length === 0) return () => null;
  const names = graph.ties.flatMap(({ dimension, terms }) => [
    dimension,
    ...terms.map((one) => one.dimension),
  ]);
  const of = graph.list("artefacts").map(({ id }) => id);
  const input = { of, parts: "false", dimension: [...new Set(names)] };
  const { selected } = select(input, { graph, counts, choices: [] });
  const keyOf = (thing: Id, dimension: string): string => `${thing}\n${folded(dimension)}`;
  const byKey = new Map<string, Selected | null>();
  for (const one of selected) {
    const key = keyOf(one.measured.artefact, one.measured.dimension);
    byKey.set(key, byKey.has(key) ? null : one);
  }
  return ({ thing, dimension }) => byKey.get(keyOf(thing, dimension)) ?? null;
}
