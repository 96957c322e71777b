import type { Id } from "../base/finding.ts";
import { say } from "../base/text/said/said.ts";
import type { Text } from "../base/text/said/said.ts";
import type { DerivationRecord, Graph } from "../link/graph.ts";
import type { Plugin } from "../plugin.ts";
import { asQuantity, withoutNumbers } from "./derived/derived.ts";
import type { Derived } from "./derived/derived.ts";
import { finishing } from "./derived/finish.ts";
import { countsUnder } from "./lens.ts";
import type { Lens } from "./lens.ts";
import { preparing } from "./prepare/prepare.ts";
import type { NumberLookup } from "./prepare/settings.ts";
import { givenUnder } from "./recorded/dates/chronicle.ts";
import { fromFirst, inTurn } from "./recorded/in-turn.ts";
import type { ComputeMemo, Run } from "./run.ts";

/** The state of every derivation, and what is still to be computed. */
export interface Derivations {
  readonly byId: ReadonlyMap<Id, Derived>;
  /** Runs whose outcome the memo does not have. */
  readonly missing: readonly Run[];
  /** Derivations that lean on themselves. */
  readonly circles: readonly (readonly Id[])[];
}

/** A circle is gone round up to so many derivations; one that is longer is told as one all the same. */
const longestCircle = 100;

/**
 * Recalls the outcome of every derivation wanted, in the order they lean on one another; lists the runs not yet done.
 * Derivations that those wanted lean on come along; a few of them are named rather than told from all.
 */
export function derive(
  graph: Graph,
  plugins: readonly Plugin[],
  memo: ComputeMemo,
  lens: Lens,
  wanted: ((id: Id) => boolean) | readonly Id[] = () => true,
): Derivations {
  const counts = countsUnder(graph, lens);
  const sight = { graph, counts, choices: lens.instead ?? [], givenBy: givenUnder(graph, lens) };
  const prepareOne = preparing(graph, plugins, lens);
  const byId = new Map<Id, Derived>();
  const usedBy = (id: Id): readonly Id[] => byId.get(id)?.used ?? [];
  const finish = finishing({ graph, plugins, memo, lens, usedBy });
  const missing = new Map<string, Run>();
  const open: Id[] = [];
  const circles: (readonly Id[])[] = [];

  const derived = (derivation: DerivationRecord): Derived => {
    const known = byId.get(derivation.id);
    if (known) return known;
    const again = open.indexOf(derivation.id);
    // What is taken is there already, but in a circle.
    if (again >= 0 || open.length > longestCircle) {
      circles.push(fromFirst(graph, open.slice(Math.max(again, 0))));
      const why = say`Unexpected circle, expected a derivation that does not lean on itself`;
      return withoutNumbers(derivation.id, "failed", why);
    }
    open.push(derivation.id);
    const prepared = prepareOne(derivation, sight, numberOf);
    open.pop();
    const result = finish(derivation, prepared);
    if (result.status === "pending" && result.run !== null) missing.set(result.run.key, result.run);
    byId.set(derivation.id, result);
    return result;
  };
  const numberOf = numbersOf(graph, derived);

  const recall = inTurn(graph, (id) => byId.has(id), derived);
  if (typeof wanted === "function") {
    for (const derivation of graph.list("derivations"))
      if (counts(derivation.id) && wanted(derivation.id)) recall(derivation);
  } else {
    for (const id of wanted) {
      const record = graph.records.get(id);
      if (record?.list === "derivations" && counts(id)) recall(record);
    }
  }
  return { byId, missing: [...missing.values()], circles };
}

/** Looks up numbers that other derivations compute, by `DERIVATION.NUMBER`. */
function numbersOf(graph: Graph, derived: (derivation: DerivationRecord) => Derived): NumberLookup {
  // Of a row of numbers that are missing for want of one another each says why the first is, and not all between.
  const causes = new Map<Text, Text>();
  return (reference) => {
    const dot = reference.lastIndexOf(".");
    const record = graph.records.get(reference.slice(0, dot));
    if (dot < 0 || record?.list !== "derivations")
      return { why: say`Unknown number \`${reference}\`, expected DERIVATION.NUMBER` };
    const other = derived(record);
    if (other.status === "pending") return "pending";
    const name = reference.slice(dot + 1);
    const number = Object.hasOwn(other.numbers, name) ? other.numbers[name] : undefined;
    if (number) return asQuantity(reference, number);
    const said = other.why ?? say`the plug-in does not give it`;
    const cause = causes.get(said) ?? said;
    const why = say`Missing number \`${reference}\`: ${cause}`;
    causes.set(why, cause);
    return { why, refused: other.status === "refused" };
  };
}
