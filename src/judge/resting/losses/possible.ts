import type { Id } from "../../../base/finding.ts";
import type { BearingOn } from "../../../derive/bearing.ts";
import { withoutNumbers } from "../../../derive/derived/derived.ts";
import type { Derived } from "../../../derive/derived/derived.ts";
import type { Bearing } from "../../../derive/bearing.ts";
import type { DerivationRecord, Graph } from "../../../link/graph.ts";
import type { Compiled } from "../../compile.ts";
import type { Judged } from "../judged.ts";
import { inputsIn } from "../reach/inputs.ts";
import type { Numbers } from "../reach/numbers.ts";

const premises = new WeakMap<Compiled, ReadonlySet<Id>>();

/** The derivations that some argument leans on which does not come from them. */
function premisesIn(compiled: Compiled, graph: Graph): ReadonlySet<Id> {
  const isDerivation = (id: Id): boolean => graph.records.get(id)?.list === "derivations";
  const known =
    premises.get(compiled) ??
    new Set(
      compiled.arguments.flatMap(({ because, from }) =>
        because.filter((id) => id !== from && isDerivation(id)),
      ),
    );
  premises.set(compiled, known);
  return known;
}

const fed = new WeakMap<Graph, ReadonlySet<Id>>();

/** Derivations whose number another derivation uses. */
function fedIn(graph: Graph): ReadonlySet<Id> {
  const inputs = inputsIn(graph);
  const using = ({ id }: DerivationRecord): readonly Id[] =>
    inputs(id).derivations.filter((one) => one !== id);
  const known = fed.get(graph) ?? new Set(graph.list("derivations").flatMap(using));
  fed.set(graph, known);
  return known;
}

/**
 * Every way a derivation may come out under any losses, as far as a claim can tell: that there is no number, and that
 * there is one which says this or that of each claim. Null where what it is computed on may itself be in dispute.
 */
export function possibleNumbers(
  { graph, judgement }: Judged,
  numbers: Numbers,
  cone: ReadonlySet<Id>,
  derivation: Id,
): readonly Derived[] | null {
  const record = graph.records.get(derivation);
  if (record?.list !== "derivations") return null;
  const { records, through } = numbers.feeding(derivation);
  const { contra } = judgement.compiled;
  if ([...records, ...through].some((id) => contra.has(id))) return null;
  const entries = (record.values["bears-on"] ?? []).filter((entry) => cone.has(entry.claim));
  let ways: readonly (readonly BearingOn[])[] = [[]];
  for (const entry of entries) {
    const options: readonly Bearing[] = [
      "inconclusive",
      ...(entry.supports === undefined ? [] : (["supports"] as const)),
      ...(entry.disputes === undefined ? [] : (["disputes"] as const)),
    ];
    const strength = entry.strength ?? "ordinary";
    ways = ways.flatMap((way) =>
      options.map((bearing) => [...way, { claim: entry.claim, bearing, strength, trouble: null, why: null }]),
    );
  }
  const isPremise = premisesIn(judgement.compiled, graph).has(derivation) || fedIn(graph).has(derivation);
  const saying = isPremise
    ? ways
    : ways.filter((way) => way.some(({ bearing }) => bearing !== "inconclusive"));
  const none = withoutNumbers(derivation, "failed", null);
  return [none, ...saying.map((bearings): Derived => ({ ...none, status: "computed", bearings }))];
}
