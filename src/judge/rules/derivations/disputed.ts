import { bearingOn } from "../../../derive/bearing.ts";
import { trialsOf } from "../../../derive/choices.ts";
import type { Trial } from "../../../derive/choices.ts";
import type { Derived } from "../../../derive/derive.ts";
import type { Run } from "../../../derive/run.ts";
import type { Choice } from "../../../derive/lens.ts";
import { formatSI } from "../../../base/quantity/quantity-print.ts";
import type { Graph } from "../../../link/graph.ts";
import { labelOf } from "../../../link/names/label.ts";
import type { Rule, View } from "../rule.ts";
import { inWords, tell } from "../tell.ts";
import { saidAlone, saidOf } from "./saying.ts";

/** Verdicts that turn when another scholar's readings are used. */
export const verdictDependsOnDisputedMeasurement: Rule = {
  id: "verdict-depends-on-disputed-measurement",
  level: "warning",
  title: "What a number says of a claim changes with the readings that are used.",
  doc: "The derivation was run again with each source's readings throughout, and with each single reading, where several sources measured the same dimension; and with each other size that goes by the name of its unit. The readings that turn the verdict are worth a second look at the thing before anything else.",
  find: (view) => {
    const missing = new Map<string, Run>();
    const findings = [...view.derivations.byId.values()].flatMap((derived) => {
      const trials = trialsOf(view, derived, (id) => view.judgement.standings.get(id) === "stands");
      for (const run of trials.flatMap((trial) => trial.missing)) missing.set(run.key, run);
      const turning = trials.filter((trial) => trial.turned.size > 0);
      return turning.length === 0 ? [] : [told(view, derived, turning)];
    });
    return { findings, missing: [...missing.values()] };
  },
};

function told({ graph }: View, derived: Derived, turning: readonly Trial[]) {
  const claims = [...new Set(turning.flatMap(({ turned }) => [...turned.keys()]))];
  const whole = turning.filter(({ choice }) => choice.use === undefined);
  const shown = whole.length > 0 ? whole : turning;
  const ways = shown.map(({ choice, turned }) => {
    const [alike, ...others] = new Set(turned.values());
    const short = turned.size === claims.length && others.length === 0 && alike !== undefined;
    const says = short ? saidAlone[alike] : saidOf(graph, turned);
    return `with ${takenIn(graph, choice)} it ${says}`;
  });
  const was = new Map(
    claims.map((claim) => [claim, bearingOn(derived.bearings, claim) ?? "inconclusive"] as const),
  );
  const message = `“${labelOf(graph, derived.id)}” ${saidOf(graph, was)}, but ${inWords(ways)}.`;
  const about = [derived.id, ...claims, ...turning.flatMap(({ choice }) => choice.use ?? [])];
  return tell(graph, "verdict-depends-on-disputed-measurement", "warning", about, message, {
    path: ["inputs"],
  });
}

/** What another choice takes, in words. */
function takenIn(graph: Graph, { prefer, use, unit }: Choice): string {
  if (unit !== undefined) return `the ${unit.name} of ${formatSI(unit.size, unit.kind)}`;
  return prefer === undefined ? labelOf(graph, use ?? "") : `the readings of ${labelOf(graph, prefer)}`;
}
