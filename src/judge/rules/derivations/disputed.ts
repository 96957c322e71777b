import type { Id } from "../../../base/finding.ts";
import { bearingOn } from "../../../derive/bearing.ts";
import type { Bearing } from "../../../derive/bearing.ts";
import { trialsOf } from "../../../derive/choices.ts";
import type { Trial } from "../../../derive/choices.ts";
import type { Derived } from "../../../derive/derive.ts";
import type { Run } from "../../../derive/run.ts";
import type { Graph } from "../../../link/graph.ts";
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

type Saying = Bearing | "says nothing of";

function told({ graph }: View, derived: Derived, turning: readonly Trial[]) {
  const claims = [...new Set(turning.flatMap(({ turned }) => [...turned.keys()]))];
  const whole = turning.filter(({ choice }) => choice.prefer !== undefined);
  const shown = whole.length > 0 ? whole : turning;
  const ways = shown.map(({ choice, turned }) => {
    const name = labelOf(graph, choice.prefer ?? choice.use ?? "");
    const [alike, ...others] = new Set(turned.values());
    const short = turned.size === claims.length && others.length === 0 && alike !== undefined;
    const says = short ? alone[alike] : inSentence(graph, turned);
    return `with ${choice.prefer === undefined ? name : `the readings of ${name}`} it ${says}`;
  });
  const was = new Map(
    claims.map((claim) => [claim, bearingOn(derived.bearings, claim) ?? "inconclusive"] as const),
  );
  const message = `“${labelOf(graph, derived.id)}” ${inSentence(graph, was)}, but ${inWords(ways)}.`;
  const about = [derived.id, ...claims, ...turning.flatMap(({ choice }) => choice.use ?? [])];
  return tell(graph, "verdict-depends-on-disputed-measurement", "warning", about, message, {
    path: ["inputs"],
  });
}

const alone: Readonly<Record<Saying, string>> = {
  supports: "supports",
  disputes: "disputes",
  inconclusive: "is inconclusive",
  "says nothing of": "says nothing",
};

/** What a number says of each of some claims: `supports “A” and “B” and disputes “C”`. */
function inSentence(graph: Graph, said: ReadonlyMap<Id, Saying>): string {
  const parts = [...new Set(said.values())].map((saying) => {
    const those = [...said].flatMap(([claim, one]) => (one === saying ? [`“${labelOf(graph, claim)}”`] : []));
    return `${saying === "inconclusive" ? "is inconclusive about" : saying} ${inWords(those)}`;
  });
  return inWords(parts);
}
