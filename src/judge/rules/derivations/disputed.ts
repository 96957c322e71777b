import { trialsOf } from "../../../derive/choices.ts";
import type { Trial } from "../../../derive/choices.ts";
import type { Derived } from "../../../derive/derive.ts";
import type { Run } from "../../../derive/run.ts";
import { labelOf } from "../../../link/label.ts";
import type { Rule, View } from "../rule.ts";
import { inWords, tell } from "../tell.ts";

/** Verdicts that turn when another scholar's readings are used. */
export const verdictDependsOnDisputedMeasurement: Rule = {
  id: "verdict-depends-on-disputed-measurement",
  level: "warning",
  title: "What a number says of a claim changes with the readings that are used.",
  doc: "The derivation was run again with each source's readings throughout, and with each single reading, where several sources measured the same dimension. The readings that turn the verdict are worth a second look at the thing before anything else.",
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
  const whole = turning.filter(({ choice }) => choice.prefer !== undefined);
  const shown = whole.length > 0 ? whole : turning;
  const ways = shown.map(({ choice, turned }) => {
    const name = labelOf(graph, choice.prefer ?? choice.use ?? "");
    const said = [...new Set(turned.values())].map((word) =>
      word === "inconclusive" ? "is inconclusive" : word,
    );
    return `with ${choice.prefer === undefined ? name : `the readings of ${name}`} it ${inWords(said)}`;
  });
  const was = derived.bearings.find((one) => one.claim === claims[0])?.bearing ?? "inconclusive";
  const verb = was === "inconclusive" ? "is inconclusive about" : was;
  const names = inWords(claims.map((claim) => `“${labelOf(graph, claim)}”`));
  const message = `“${labelOf(graph, derived.id)}” ${verb} ${names}, but ${inWords(ways)}.`;
  const about = [derived.id, ...claims, ...turning.flatMap(({ choice }) => choice.use ?? [])];
  return tell(graph, "verdict-depends-on-disputed-measurement", "warning", about, message, {
    path: ["inputs"],
  });
}
