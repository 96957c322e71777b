import type { Id } from "../base/finding.ts";
import type { Derivations } from "../derive/derive.ts";
import { countsUnder } from "../derive/lens.ts";
import type { Lens } from "../derive/lens.ts";
import type { Graph } from "../link/graph.ts";
import { argumentsIn } from "./argument.ts";
import type { Strength } from "./argument.ts";
import { compile } from "./compile.ts";
import type { Compiled } from "./compile.ts";
import { FALSE, TRUE, UNDEFINED, leastWithoutAttacks, wellFounded } from "./solver/well-founded.ts";

/** What follows from the record for a claim, an argument or a piece of evidence. */
export type Standing = "stands" | "open" | "falls" | "unsupported";

/** The standings of a corpus under a lens, and the program they come from. */
export interface Judgement {
  readonly standings: ReadonlyMap<Id, Standing>;
  readonly compiled: Compiled;
  readonly counts: (id: Id) => boolean;
  /** Claims named by a record that is in print: those a page lists. */
  readonly listed: (claim: Id) => boolean;
}

/** Judges a corpus; `taken` may take arguments as stronger or weaker than they are recorded. */
export function judge(
  graph: Graph,
  derivations: Derivations,
  lens: Lens,
  taken: (id: Id, strength: Strength) => Strength = (_, strength) => strength,
): Judgement {
  const inPrint = countsUnder(graph, lens);
  const named = namedClaims(graph, inPrint, lens);
  // A claim that a dated record names is there, though the source of its wording be later.
  const counts = (id: Id): boolean => inPrint(id) || named?.has(id) === true;
  const argued = argumentsIn(graph, derivations, counts, taken);
  const compiled = compile(graph, derivations, argued, counts);
  const model = wellFounded(compiled.program);
  const unattacked = leastWithoutAttacks(compiled.program);
  const isClaim = (id: Id): boolean => graph.records.get(id)?.list === "claims";

  const standings = new Map<Id, Standing>();
  for (const [id, atom] of compiled.atoms) {
    const list = graph.records.get(id)?.list;
    if (id.startsWith("silence: ") || list === "positions") continue;
    if (model[atom] === TRUE) standings.set(id, "stands");
    else if (model[atom] === UNDEFINED) standings.set(id, "open");
    else {
      const disputed = isClaim(id) && (compiled.contra.get(id) ?? []).some((place) => works(place) === TRUE);
      standings.set(id, unattacked[atom] === 1 || disputed ? "falls" : "unsupported");
    }
  }
  function works(place: number): number {
    const argument = compiled.arguments[place];
    const atom = argument ? compiled.atoms.get(argument.id) : undefined;
    return atom === undefined ? FALSE : (model[atom] ?? FALSE);
  }
  return { standings, compiled, counts, listed: (claim) => named === null || named.has(claim) };
}

/** With a year, the claims that a dated record in print by then names; without one, null: all of them. */
function namedClaims(graph: Graph, inPrint: (id: Id) => boolean, lens: Lens): ReadonlySet<Id> | null {
  if (lens.asOf === undefined) return null;
  const named = new Set<Id>();
  const dated = (id: Id): boolean => inPrint(id) && graph.provenance(id).year !== null;
  const name = (id: Id | undefined): void => {
    if (id !== undefined && graph.records.get(id)?.list === "claims") named.add(id);
  };
  for (const record of graph.records.values()) {
    if (!dated(record.id)) continue;
    if (record.list === "claims") name(record.id);
    else if (record.list === "positions") name(record.values.claim);
    else if (record.list === "arguments") {
      for (const id of [...record.values.because, ...(record.values.against ?? [])]) name(id);
      name(record.values.therefore);
    }
  }
  return named;
}
