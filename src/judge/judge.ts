import type { Id } from "../base/finding.ts";
import { wordsBy } from "../base/lists/numbered.ts";
import type { Derivations } from "../derive/derive.ts";
import { countsUnder } from "../derive/lens.ts";
import type { Lens } from "../derive/lens.ts";
import type { Graph } from "../link/graph.ts";
import { argumentsIn } from "./argument.ts";
import { isSilence } from "./clauses/clauses.ts";
import type { Dispute } from "./clauses/clauses.ts";
import { compile } from "./compile.ts";
import type { Compiled } from "./compile.ts";
import { FALSE, TRUE, UNDEFINED, leastWithoutAttacks, wellFounded } from "./solver/well-founded.ts";

/** What follows from the record for a claim, an argument or a piece of evidence. */
export type Standing = (typeof standingWords)[number];

const standingWords = ["stands", "open", "falls", "unsupported"] as const;

/** The standings of a corpus under a lens, and the program they come from. */
export interface Judgement {
  readonly standings: ReadonlyMap<Id, Standing>;
  readonly compiled: Compiled;
  readonly counts: (id: Id) => boolean;
  /** Claims named by a record that is in print: those a page lists. */
  readonly listed: (claim: Id) => boolean;
}

/** Judges a corpus under a lens. */
export function judge(graph: Graph, derivations: Derivations, lens: Lens): Judgement {
  const inPrint = countsUnder(graph, lens);
  const named = namedClaims(graph, inPrint, lens);
  // A claim that a dated record names is there, though the source of its wording be later.
  const counts = named === null ? inPrint : (id: Id): boolean => inPrint(id) || named.has(id);
  const argued = argumentsIn(graph, derivations, counts);
  const compiled = compile(graph, derivations, argued, counts);
  const model = wellFounded(compiled.program);
  const unattacked = leastWithoutAttacks(compiled.program);
  const works = (id: Id): boolean => model[compiled.atoms.get(id) ?? -1] === TRUE;
  const { ids } = compiled;
  const places = new Uint8Array(ids.length);
  const { from, before } = compiled.positions;
  for (const [atom, id] of ids.entries()) {
    const isRanked = atom < compiled.seated ? atom < from || atom >= before : hasStanding(id, graph);
    if (!isRanked) continue;
    const value = model[atom] ?? FALSE;
    const disputed = (): boolean => isDisputed(id, compiled.dispute, works);
    places[atom] = 1 + standingWords.indexOf(standingFrom(value, unattacked[atom] === 1, disputed));
  }
  const standings = wordsBy({ keys: ids, numberOf: compiled.atoms }, standingWords, places);
  return { standings, compiled, counts, listed: (claim) => named === null || named.has(claim) };
}

/** Whether what has an atom has a standing: a position has none of its own, nor has the weight of a silence. */
export function hasStanding(id: Id, graph: Graph): boolean {
  return !isSilence(id) && graph.records.get(id)?.list !== "positions";
}

/** Whether something is a claim against which an argument works. */
export function isDisputed(id: Id, dispute: Dispute, works: (argument: Id) => boolean): boolean {
  return dispute.isClaim(id) && dispute.argumentsAgainst(id).some((argument) => works(argument.id));
}

/** A standing from the value of an atom, whether it would be true if nothing attacked, and, asked last, a dispute. */
export function standingFrom(value: number, unattacked: boolean, disputed: () => boolean): Standing {
  if (value === TRUE) return "stands";
  if (value === UNDEFINED) return "open";
  return unattacked || disputed() ? "falls" : "unsupported";
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
