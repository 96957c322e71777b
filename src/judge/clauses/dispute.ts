import type { Id } from "../../base/finding.ts";
import { gathered } from "../../base/lists/gathered.ts";
import type { Derivations } from "../../derive/derive.ts";
import type { Derived } from "../../derive/derived/derived.ts";
import type { Graph } from "../../link/graph.ts";
import type { Argument } from "../argument.ts";
import { silenceOn } from "./clauses.ts";
import type { Dispute } from "./clauses.ts";

const conclusions = ({ therefore }: Argument): readonly Id[] => (therefore === null ? [] : [therefore]);
const targets = ({ against }: Argument): readonly Id[] => against;
const idOf = ({ id }: Derived): Id => id;

/** The arguments of a corpus with what finds those for and those against each thing. */
export interface Argued {
  readonly argumentsFor: Dispute["argumentsFor"];
  readonly argumentsAgainst: Dispute["argumentsAgainst"];
}

/** What is argued in a corpus, and what weighs its silences. */
export function disputeOf(graph: Graph, derivations: Derivations, argued: Argued): Dispute {
  const weighers = gathered(derivations.byId.values(), (one) => silencesWeighedBy(one, graph));
  return {
    ...argued,
    rivalsOf: graph.rivalsOf,
    isClaim: (id) => graph.records.get(id)?.list === "claims",
    weighersOf: (silence) => weighers(silence).map(idOf),
  };
}

/** What is other than in a dispute: records lost, arguments gone and arguments that come, evidence, derivations. */
export interface Difference {
  readonly lost: ReadonlySet<Id>;
  readonly gone: ReadonlySet<Id>;
  readonly come: readonly Argument[];
  readonly evidence: ReadonlySet<Id>;
  readonly derived: ReadonlyMap<Id, Derived>;
}

/** A dispute as a change would have it; what the change does not touch is not copied. */
export function disputeWith(dispute: Dispute, difference: Difference, graph: Graph): Dispute {
  const { gone, come, derived } = difference;
  const pro = gathered(come, conclusions);
  const contra = gathered(come, targets);
  const weighers = gathered(derived.values(), (one) => silencesWeighedBy(one, graph));
  const those = (had: readonly Argument[], more: readonly Argument[]): readonly Argument[] => {
    const kept = had.some(({ id }) => gone.has(id)) ? had.filter(({ id }) => !gone.has(id)) : had;
    return more.length > 0 ? [...kept, ...more] : kept;
  };
  return {
    ...dispute,
    argumentsFor: (claim) => those(dispute.argumentsFor(claim), pro(claim)),
    argumentsAgainst: (id) => those(dispute.argumentsAgainst(id), contra(id)),
    weighersOf: (silence) => [
      ...dispute.weighersOf(silence).filter((id) => !derived.has(id)),
      ...weighers(silence).map(idOf),
    ],
  };
}

/** The silences that a derivation lends weight to: those on the claims it bears on, where its plug-in weighs silence. */
export function silencesWeighedBy({ id, bearings }: Derived, graph: Graph): readonly Id[] {
  const record = graph.records.get(id);
  if (record?.list !== "derivations" || record.values.plugin !== "silence") return [];
  return bearings.flatMap(({ claim, bearing }) =>
    bearing === "inconclusive" ? [] : [silenceOn(bearing, claim)],
  );
}
