import type { Id } from "../../base/finding.ts";
import { gathered } from "../../base/lists/gathered.ts";
import type { Derived } from "../../derive/derived/derived.ts";
import type { Graph } from "../../link/graph.ts";
import { argumentsOfNumber, argumentsOfStance, latestOf, stances } from "../argument.ts";
import type { Argument, Stance, Strength } from "../argument.ts";
import type { Compiled } from "../compile.ts";
import type { Difference } from "./dispute.ts";

/** A small change to what was judged; nothing that it does not name is another than it was. */
export interface Change {
  /** New arguments (one whose id is known takes its place), and ids of new evidence, which holds unless it is attacked. */
  readonly added?: { readonly arguments?: readonly Argument[]; readonly evidence?: readonly Id[] };
  /** Arguments, evidence, positions and derivations that are not there any more; what they argue goes with them. */
  readonly gone?: readonly Id[];
  /** Other strengths for arguments that are there, those of numbers among them. */
  readonly strengths?: ReadonlyMap<Id, Strength>;
  /** Derivations that are others now, in whether they computed, what they used or how they bear. */
  readonly derived?: readonly Derived[];
}

/** The arguments that were judged, found for a change. */
export interface Arguments {
  readonly named: (id: Id) => readonly Argument[];
  /** Those of a record, a derivation or a position. */
  readonly of: (speaker: Id) => readonly Argument[];
  /** What counts in the place of a position that is gone: the stances before it, where testimony counts. */
  readonly stancesWithout: (position: Id, gone: ReadonlySet<Id>) => readonly Stance[];
  readonly counts: (id: Id) => boolean;
}

/** Finds arguments by id and by who makes them. */
export function argumentsFound(
  graph: Graph,
  { arguments: argued, named }: Pick<Compiled, "arguments" | "named">,
  counts: (id: Id) => boolean,
): Arguments {
  const taken = graph.settings.testimony ? stances(graph, counts) : [];
  const keyOf = ({ scholar, claim }: Stance): string => `${scholar}\n${claim}`;
  const like = gathered(taken, (stance) => [keyOf(stance)]);
  const takenIn = gathered(taken, ({ position }) => [position]);
  const those = (id: Id): readonly Argument[] => named.placesOf(id).flatMap((at) => argued[at] ?? []);
  // A record argues once, and goes by its own id.
  const spoken = gathered(
    argued.filter(({ id, from }) => id !== from),
    ({ from }) => [from],
  );
  return {
    named: those,
    of: (speaker) => [...those(speaker).filter(({ from }) => from === speaker), ...spoken(speaker)],
    stancesWithout: (id, gone) =>
      takenIn(id).flatMap((stance) =>
        latestOf(like(keyOf(stance)).filter(({ position }) => !gone.has(position))),
      ),
    counts,
  };
}

/** What a change makes different in the arguments and the derivations. */
export function differenceOf(change: Change, found: Arguments): Difference {
  const lost = new Set(change.gone);
  const gone = new Set<Id>();
  const come = new Map<Id, Argument>();
  const drop = ({ id }: Argument): unknown => gone.add(id);
  const add = (argument: Argument): unknown => come.set(argument.id, argument);
  for (const id of lost) {
    found.named(id).forEach(drop);
    found.of(id).forEach(drop);
    found.stancesWithout(id, lost).flatMap(argumentsOfStance).forEach(add);
  }
  const derived = new Map((change.derived ?? []).map((one) => [one.id, one]));
  for (const one of derived.values()) {
    found.of(one.id).forEach(drop);
    if (!lost.has(one.id)) argumentsOfNumber(one, found.counts).forEach(add);
  }
  for (const argument of change.added?.arguments ?? []) {
    found.named(argument.id).forEach(drop);
    add(argument);
  }
  for (const [id, strength] of change.strengths ?? []) {
    const argument = come.get(id) ?? (gone.has(id) ? undefined : found.named(id)[0]);
    if (!argument) continue;
    drop(argument);
    add({ ...argument, strength });
  }
  return { lost, gone, come: [...come.values()], evidence: new Set(change.added?.evidence), derived };
}
