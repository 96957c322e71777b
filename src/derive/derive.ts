import type { Id } from "../base/finding.ts";
import type { Quantity, QuantityKind } from "../base/quantity.ts";
import { say } from "../base/text/said/said.ts";
import type { Text } from "../base/text/said/said.ts";
import type { DerivationRecord, Graph } from "../link/graph.ts";
import type { ComputedNumber, LeftOut, NumberDeclaration, Plugin } from "../plugin.ts";
import { bearingsOf } from "./bearing.ts";
import type { BearingOn } from "./bearing.ts";
import { countsUnder } from "./lens.ts";
import type { Lens } from "./lens.ts";
import { preparing } from "./prepare/prepare.ts";
import { givenUnder } from "./recorded/dates/chronicle.ts";
import { fromFirst, inTurn } from "./recorded/in-turn.ts";
import type { Prepared } from "./prepare/prepare.ts";
import { answers, discreet } from "./run.ts";
import type { ComputeMemo, Outcome, Run } from "./run.ts";
import { foundInTheseData } from "./prepare/settings.ts";
import type { NumberLookup } from "./prepare/settings.ts";
import { asChosen } from "./trials/draws.ts";

/** A computed number with the SI symbol of what it is in (`1` for a pure number), and what its plug-in says it is. */
export interface DerivedNumber extends ComputedNumber {
  readonly unit: string;
  readonly kind: NumberDeclaration["kind"];
}

/** A derivation's state: its numbers with their units, or why there are none. */
export interface Derived {
  readonly id: Id;
  readonly status: "computed" | "refused" | "failed" | "withheld" | "pending";
  /** Short word of a refusal: `too-few`, `unit-from-these-data`. */
  readonly reason: string | null;
  readonly why: Text | null;
  readonly used: readonly Id[];
  readonly leftOut: readonly LeftOut[];
  readonly merged: readonly (readonly Id[])[];
  readonly numbers: Readonly<Record<string, DerivedNumber>>;
  readonly bearings: readonly BearingOn[];
  readonly warnings: readonly string[];
  readonly run: Run | null;
  readonly outcome: Outcome | null;
}

/** The state of every derivation, and what is still to be computed. */
export interface Derivations {
  readonly byId: ReadonlyMap<Id, Derived>;
  /** Runs whose outcome the memo does not have. */
  readonly missing: readonly Run[];
  /** Derivations that lean on themselves. */
  readonly circles: readonly (readonly Id[])[];
}

/** The unit of each kind of quantity in the SI; `1` for counts and pure numbers. */
export const siSymbols: Readonly<Record<QuantityKind, string>> = {
  length: "m",
  mass: "kg",
  angle: "rad",
  time: "s",
  area: "m²",
  volume: "m³",
  count: "1",
  number: "1",
};

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
  const lost = new Set(lens.without ?? []);
  const sight = { graph, counts, choices: lens.instead ?? [], givenBy: givenUnder(graph, lens) };
  const isTrial = lost.size > 0 || sight.choices.length > 0;
  const prepareOne = preparing(graph, plugins, lens);
  const byId = new Map<Id, Derived>();
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
      return stateOf(
        derivation.id,
        "failed",
        say`Unexpected circle, expected a derivation that does not lean on itself`,
      );
    }
    open.push(derivation.id);
    const prepared = prepareOne(derivation, sight, (reference) => numberOf(reference));
    open.pop();
    const result = finishedBefore(prepared, memo) ?? finish(derivation, prepared);
    if (result.status === "pending" && result.run !== null) missing.set(result.run.key, result.run);
    finished.set(prepared, { result, outcome: outcomeIn(memo, result) });
    byId.set(derivation.id, result);
    return result;
  };

  // Of a row of numbers that are missing for want of one another each says why the first is, and not all between.
  const causes = new Map<Text, Text>();
  const firstCause = (why: Text): Text => causes.get(why) ?? why;

  const numberOf: NumberLookup = (reference) => {
    const dot = reference.lastIndexOf(".");
    const id = reference.slice(0, dot);
    const record = graph.records.get(id);
    if (dot < 0 || record?.list !== "derivations")
      return { why: say`Unknown number \`${reference}\`, expected DERIVATION.NUMBER` };
    const other = derived(record);
    if (other.status === "pending") return "pending";
    const name = reference.slice(dot + 1);
    const number = Object.hasOwn(other.numbers, name) ? other.numbers[name] : undefined;
    if (!number) {
      const cause = firstCause(other.why ?? say`the plug-in does not give it`);
      const why = say`Missing number \`${reference}\`: ${cause}`;
      causes.set(why, cause);
      return { why, refused: other.status === "refused" };
    }
    return asQuantity(reference, number);
  };

  const finish = (derivation: DerivationRecord, prepared: Prepared): Derived => {
    const { next, used, leftOut, merged } = prepared;
    const common = { used, leftOut, merged };
    if (next === "pending") return { ...stateOf(derivation.id, "pending", null), ...common };
    if ("withheld" in next) return { ...stateOf(derivation.id, "withheld", next.withheld), ...common };
    if ("failed" in next) return { ...stateOf(derivation.id, "failed", next.failed), ...common };
    if ("refused" in next)
      return { ...stateOf(derivation.id, "refused", next.why), ...common, reason: next.refused };
    const chosen = asChosen(next.run, derivation.id, plugins, sight.choices);
    const run: Run = isTrial ? { ...chosen, bare: true } : chosen;
    const gone = prepared.units.find((name) => unitIsLost(graph, name, lost));
    if (gone !== undefined)
      return {
        ...stateOf(derivation.id, "failed", say`The unit ${gone} is lost with its source`),
        ...common,
      };
    const plugin = plugins.find((one) => one.id === run.plugin);
    const overlap =
      unitFromTheseData(graph, prepared.units, used) ??
      foundInTheseData(plugin, derivation.values.parameters, used, {
        usedBy: (id) => byId.get(id)?.used ?? [],
        dataOf: (id) => dataOf(graph, id),
      });
    if (overlap !== null) {
      return {
        ...stateOf(derivation.id, "refused", overlap),
        ...common,
        reason: "unit-from-these-data",
        run,
      };
    }
    const kept = memo.get(run.key);
    if (!answers(kept, run)) return { ...stateOf(derivation.id, "pending", null), ...common, run };
    const outcome = discreet(kept, plugin, { run, used }, graph);
    if (outcome.status === "failed")
      return { ...stateOf(derivation.id, "failed", outcome.why), ...common, run, outcome };
    if (outcome.status === "refused") {
      return {
        ...stateOf(derivation.id, "refused", outcome.why),
        ...common,
        reason: outcome.reason,
        run,
        outcome,
      };
    }
    if (!plugin) throw new Error(`derive: an outcome of the plug-in ${run.plugin}, which is not there`);
    return {
      ...stateOf(derivation.id, "computed", null),
      ...common,
      leftOut: [...leftOut, ...outcome.leftOut],
      numbers: withUnits(plugin, run, outcome.numbers),
      bearings: bearingsOf(derivation, plugin, outcome.numbers, graph.settings.quantities),
      warnings: outcome.warnings,
      run,
      outcome,
    };
  };

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

/** What came of a preparation, with the outcome that the memo had for its run. */
interface Finished {
  readonly result: Derived;
  readonly outcome: Outcome | null;
}

/** What is prepared as it was before an edit, the same object, comes to what it came to, as long as its outcome is the same. */
const finished = new WeakMap<Prepared, Finished>();

function finishedBefore(prepared: Prepared, memo: ComputeMemo): Derived | null {
  const known = finished.get(prepared);
  return known && known.outcome === outcomeIn(memo, known.result) ? known.result : null;
}

const outcomeIn = (memo: ComputeMemo, { run }: Derived): Outcome | null =>
  run === null ? null : (memo.get(run.key) ?? null);

function stateOf(id: Id, status: Derived["status"], why: Text | null): Derived {
  return {
    id,
    status,
    reason: null,
    why,
    used: [],
    leftOut: [],
    merged: [],
    numbers: {},
    bearings: [],
    warnings: [],
    run: null,
    outcome: null,
  };
}

function withUnits(
  plugin: Plugin,
  run: Run,
  numbers: Readonly<Record<string, ComputedNumber>>,
): Derived["numbers"] {
  const first = plugin.inputs.flatMap((input) => run.inputs[input.name] ?? [])[0];
  const own = first ? siSymbols[first.quantity.kind] : "1";
  const kinds = new Map(plugin.numbers.map((one) => [one.name, one.kind]));
  return Object.fromEntries(
    Object.entries(numbers).map(([name, number]): [string, DerivedNumber] => {
      const kind = kinds.get(name) ?? "number";
      return [name, { ...number, unit: kind === "input" ? own : "1", kind }];
    }),
  );
}

function unitIsLost(graph: Graph, name: string, lost: ReadonlySet<Id>): boolean {
  const unit = graph.settings.units.find((one) => one.name === name);
  return unit !== undefined && unit.from.some((source) => lost.has(source));
}

/** What is measured, whoever measured it; any other evidence by its id. */
function dataOf(graph: Graph, id: Id): string {
  const record = graph.records.get(id);
  if (record?.list !== "measurements") return id;
  const { of, dimension, between } = record.values;
  return [of, graph.dimensionName(dimension), between ?? ""].join("\n");
}

/** Why one of some units may not be tested on these data: it was found in them, or named by a source that measured them. */
export function unitFromTheseData(graph: Graph, units: readonly string[], used: readonly Id[]): Text | null {
  for (const unit of graph.settings.units.filter((one) => units.includes(one.name))) {
    const found = new Set(unit.foundIn.flatMap((thing) => graph.withParts(thing)));
    const overlapping = used.some((id) => {
      const record = graph.records.get(id);
      const thing = record?.list === "measurements" ? record.values.of : id;
      return found.has(thing) || graph.provenance(id).sources.some((source) => unit.from.includes(source));
    });
    if (overlapping) return say`The unit ${unit.name} was found in these data, expected one known beforehand`;
  }
  return null;
}

function asQuantity(reference: string, number: ComputedNumber & { readonly unit: string }): Quantity {
  const kind = (Object.entries(siSymbols).find(([, symbol]) => symbol === number.unit)?.[0] ??
    "number") as QuantityKind;
  const { value, low, high } = number;
  return {
    text: reference,
    kind: number.unit === "1" ? "number" : kind,
    form: "value",
    unit: number.unit,
    unitSize: 1,
    value,
    low: low ?? value,
    high: high ?? value,
    u: low !== null && high !== null ? (high - low) / (2 * 1.959964) : 0,
    digit: 0,
    shared: [],
  };
}
