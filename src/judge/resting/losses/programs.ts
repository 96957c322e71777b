import type { Id } from "../../../base/finding.ts";
import { gathered } from "../../../base/lists/gathered.ts";
import type { Derived } from "../../../derive/derived/derived.ts";
import type { Graph } from "../../../link/graph.ts";
import type { ListName } from "../../../read/grammar/field.ts";
import { argumentsIn } from "../../argument.ts";
import { compile } from "../../compile.ts";
import type { Compiled } from "../../compile.ts";
import type { Judged } from "../judged.ts";
import { among } from "../reach/among.ts";
import type { Loss } from "../reach/origins.ts";
import { losingIn } from "./losing.ts";
import type { Losing } from "./losing.ts";

/** What bears on a claim as programs, one for each state of the numbers. */
export interface Programs {
  /** The derivations among what bears on it, in the order of the corpus. */
  readonly derivations: readonly Id[];
  /** The program under losses, given what each derivation gives. */
  readonly under: (places: readonly number[], derived: readonly (Derived | undefined)[]) => Losing;
  /** Losses by which another position of a scholar would become the latest, where positions count. */
  readonly changing: readonly number[];
}

/** The programs of what bears on a claim; all that is lost is held false in them. */
export function programsBelow(
  { graph, judgement }: Judged,
  claim: Id,
  cone: ReadonlySet<Id>,
  losses: readonly Loss[],
): Programs {
  const { testimony } = graph.settings;
  const near = narrowed(graph, cone, judgement.compiled);
  const takenBy = takers(losses);
  const derivations = near
    .list("derivations")
    .map(({ id }) => id)
    .filter(judgement.counts);
  const made = new Map<string, Losing>();
  const stateOf = states();

  const under = (places: readonly number[], derived: readonly (Derived | undefined)[]): Losing => {
    const key = `${derived.map(stateOf).join(" ")}${testimony ? ` without ${places.join(" ")}` : ""}`;
    const had = made.get(key);
    if (had) return had;
    // A scholar's latest position is another when it is lost; all else that is lost can be held false.
    const gone = new Set(testimony ? places.flatMap((place) => losses[place]?.records ?? []) : []);
    const counts = (id: Id): boolean => cone.has(id) && judgement.counts(id) && !gone.has(id);
    const byId = new Map(derived.flatMap((one) => (one ? [[one.id, one] as const] : [])));
    const left = { byId, missing: [], circles: [] };
    const { program, atoms, arguments: all } = compile(near, left, argumentsIn(near, left, counts), counts);
    const speakers = new Map(all.map((argument) => [argument.id, argument.from]));
    const taken: number[][] = losses.map(() => []);
    for (const [id, atom] of atoms)
      for (const place of takenBy(speakers.get(id) ?? id)) taken[place]?.push(atom);
    const losing = losingIn(program, atoms.get(claim) ?? -1, taken);
    made.set(key, losing);
    return losing;
  };
  return { derivations, under, changing: testimony ? changingPositions(near, takenBy) : [] };
}

/** A number for each state of a derivation, as far as the program tells states apart. */
function states(): (derived: Derived | undefined) => number {
  const known = new Map<Derived, number>();
  const numbers = new Map<string, number>();
  return (derived) => {
    if (!derived) return -1;
    const had = known.get(derived);
    if (had !== undefined) return had;
    const { status, used, bearings } = derived;
    const text = JSON.stringify([status === "computed", used, bearings.map(({ bearing }) => bearing)]);
    const number = numbers.get(text) ?? numbers.size;
    numbers.set(text, number);
    known.set(derived, number);
    return number;
  };
}

/** The same graph with only what bears on a claim in its lists. */
function narrowed(graph: Graph, cone: ReadonlySet<Id>, compiled: Compiled): Graph {
  const lists = new Map<ListName, readonly { readonly id: Id }[]>();
  const idsIn = gathered([...cone], (id) => [graph.records.get(id)?.list ?? ""]);
  const list = ((name: ListName) => {
    const kept = lists.get(name) ?? among(name, idsIn(name), graph, compiled);
    lists.set(name, kept);
    return kept;
  }) as Graph["list"];
  return { ...graph, list };
}

function takers(losses: readonly Loss[]): (record: Id) => readonly number[] {
  return gathered(losses.keys(), (place) => losses[place]?.records ?? []);
}

/** Losses that take a position whose scholar has another on the same claim. */
function changingPositions(near: Graph, takenBy: (record: Id) => readonly number[]): readonly number[] {
  const onClaim = new Map<string, Id[]>();
  for (const { id, values } of near.list("positions")) {
    for (const scholar of values.who) {
      const key = `${scholar}\n${values.claim}`;
      onClaim.set(key, [...(onClaim.get(key) ?? []), id]);
    }
  }
  return [...onClaim.values()]
    .filter((those) => those.length > 1)
    .flat()
    .flatMap(takenBy);
}
