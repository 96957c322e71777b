import type { Id } from "../../base/finding.ts";
import { say } from "../../base/text/said/said.ts";
import type { DerivationRecord, Graph } from "../../link/graph.ts";
import type { Plugin } from "../../plugin.ts";
import { bearingsOf } from "../bearing.ts";
import type { Lens } from "../lens.ts";
import type { Prepared } from "../prepare/prepare.ts";
import { answers, discreet } from "../run.ts";
import type { ComputeMemo, Outcome, Run } from "../run.ts";
import { asChosen } from "../trials/draws.ts";
import { withoutNumbers, withUnits } from "./derived.ts";
import type { Derived } from "./derived.ts";
import { testedOnItself } from "./own-data.ts";

/** From what a preparation becomes a state. */
interface Ground {
  readonly graph: Graph;
  readonly plugins: readonly Plugin[];
  readonly memo: ComputeMemo;
  readonly lens: Lens;
  /** What the derivations already told compute on. */
  readonly usedBy: (derivation: Id) => readonly Id[];
}

/** What is common to every state of one derivation that was prepared. */
type Entered = Pick<Derived, "used" | "leftOut" | "merged">;

/** What a derivation comes to once it is prepared; the same preparation comes to the same as long as its outcome is the same. */
export function finishing(ground: Ground): (derivation: DerivationRecord, prepared: Prepared) => Derived {
  const lost = new Set(ground.lens.without ?? []);
  return (derivation, prepared) => {
    const known = finished.get(prepared);
    if (known && known.outcome === outcomeIn(ground.memo, known.result)) return known.result;
    const result = finish(ground, lost, derivation, prepared);
    finished.set(prepared, { result, outcome: outcomeIn(ground.memo, result) });
    return result;
  };
}

/** What came of a preparation, with the outcome that the memo had for its run. */
interface Finished {
  readonly result: Derived;
  readonly outcome: Outcome | null;
}

const finished = new WeakMap<Prepared, Finished>();

const outcomeIn = (memo: ComputeMemo, { run }: Derived): Outcome | null =>
  run === null ? null : (memo.get(run.key) ?? null);

function finish(
  ground: Ground,
  lost: ReadonlySet<Id>,
  derivation: DerivationRecord,
  prepared: Prepared,
): Derived {
  const { id } = derivation;
  const { next, used, leftOut, merged } = prepared;
  const entered: Entered = { used, leftOut, merged };
  if (next === "pending") return { ...withoutNumbers(id, "pending", null), ...entered };
  if ("withheld" in next) return { ...withoutNumbers(id, "withheld", next.withheld), ...entered };
  if ("failed" in next) return { ...withoutNumbers(id, "failed", next.failed), ...entered };
  if ("refused" in next)
    return { ...withoutNumbers(id, "refused", next.why), ...entered, reason: next.refused };
  const { graph, plugins, lens } = ground;
  const choices = lens.instead ?? [];
  const chosen = asChosen(next.run, id, plugins, choices);
  const run: Run = lost.size > 0 || choices.length > 0 ? { ...chosen, bare: true } : chosen;
  const gone = prepared.units.find((name) => unitIsLost(graph, name, lost));
  if (gone !== undefined)
    return {
      ...withoutNumbers(id, "failed", say`The unit ${gone} is lost with its source`),
      ...entered,
    };
  const plugin = plugins.find((one) => one.id === run.plugin);
  const overlap = testedOnItself(graph, plugin, derivation, prepared, ground.usedBy);
  if (overlap !== null)
    return { ...withoutNumbers(id, "refused", overlap), ...entered, reason: "unit-from-these-data", run };
  return recalled(ground, derivation, plugin, run, entered);
}

/** What the memo has for a run. */
function recalled(
  { graph, memo }: Ground,
  derivation: DerivationRecord,
  plugin: Plugin | undefined,
  run: Run,
  entered: Entered,
): Derived {
  const { id } = derivation;
  const kept = memo.get(run.key);
  if (!answers(kept, run)) return { ...withoutNumbers(id, "pending", null), ...entered, run };
  const outcome = discreet(kept, plugin, { run, used: entered.used }, graph);
  if (outcome.status === "failed")
    return { ...withoutNumbers(id, "failed", outcome.why), ...entered, run, outcome };
  if (outcome.status === "refused")
    return {
      ...withoutNumbers(id, "refused", outcome.why),
      ...entered,
      reason: outcome.reason,
      run,
      outcome,
    };
  if (!plugin) throw new Error(`derive: an outcome of the plug-in ${run.plugin}, which is not there`);
  return {
    ...withoutNumbers(id, "computed", null),
    ...entered,
    leftOut: [...entered.leftOut, ...outcome.leftOut],
    numbers: withUnits(plugin, run, outcome.numbers),
    bearings: bearingsOf(derivation, plugin, outcome.numbers, graph.settings.quantities),
    warnings: outcome.warnings,
    run,
    outcome,
  };
}

function unitIsLost(graph: Graph, name: string, lost: ReadonlySet<Id>): boolean {
  const unit = graph.settings.units.find((one) => one.name === name);
  return unit !== undefined && unit.from.some((source) => lost.has(source));
}
