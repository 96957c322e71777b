import type { Finding } from "../../../base/finding.ts";
import { row, say } from "../../../base/text/said/said.ts";
import type { Hole, Said } from "../../../base/text/said/said.ts";
import { bearingOn } from "../../../derive/bearing.ts";
import { trialsOf } from "../../../derive/choices.ts";
import type { Trial } from "../../../derive/choices.ts";
import type { Derived } from "../../../derive/derived/derived.ts";
import type { Run } from "../../../derive/run.ts";
import type { Choice } from "../../../derive/lens.ts";
import { formatSI } from "../../../base/quantity/quantity-print.ts";
import type { Graph } from "../../../link/graph.ts";
import { labelText } from "../../../link/names/label.ts";
import { withheldIn } from "../../../link/withheld.ts";
import { atOnce } from "../../resting/at-once.ts";
import type { Found, Rule, View } from "../rule.ts";
import { quotedLabel, tell } from "../tell.ts";
import { saidAlone, saidOf } from "./saying.ts";

/** Verdicts that turn when another scholar's readings are used. */
export const verdictDependsOnDisputedMeasurement: Rule = {
  id: "verdict-depends-on-disputed-measurement",
  level: "warning",
  title: say`What a number says of a claim changes with the readings that are used.`,
  doc: say`The derivation was run again with each source's readings throughout, and with each single reading, where several sources measured the same dimension; and with each other size that goes by the name of its unit, or of a unit that measurements are written in. The readings that turn the verdict are worth a second look at the thing before anything else.`,
  find: (view) => atOnce(finding(view)),
  finding,
};

function* finding(view: View): Generator<void, Found> {
  const missing = new Map<string, Run>();
  const findings: Finding[] = [];
  for (const derived of view.derivations.byId.values()) {
    const trials = trialsOf(view, derived, (id) => view.judgement.standings.get(id) === "stands");
    for (const run of trials.flatMap((trial) => trial.missing)) missing.set(run.key, run);
    const turning = trials.filter((trial) => trial.turned.size > 0);
    if (turning.length > 0) findings.push(told(view, derived, turning));
    yield;
  }
  return { findings, missing: [...missing.values()] };
}

function told({ graph }: View, derived: Derived, all: readonly Trial[]) {
  const withheld = withheldIn(graph);
  // What may not be told keeps nothing else from being told.
  const open = all.filter(({ choice: { use } }) => use === undefined || !withheld(use));
  const turning = open.length > 0 ? open : all;
  const claims = [...new Set(turning.flatMap(({ turned }) => [...turned.keys()]))];
  const whole = turning.filter(({ choice }) => choice.use === undefined);
  const shown = whole.length > 0 ? whole : turning;
  const ways = shown.map(({ choice, turned }) => {
    const [alike, ...others] = new Set(turned.values());
    const short = turned.size === claims.length && others.length === 0 && alike !== undefined;
    const says = short ? saidAlone[alike] : saidOf(graph, turned);
    return withTaken(graph, choice, says);
  });
  const was = new Map(
    claims.map((claim) => [claim, bearingOn(derived.bearings, claim) ?? "inconclusive"] as const),
  );
  const message = say`${quotedLabel(graph, derived.id)} ${saidOf(graph, was)}, but ${row(ways)}.`;
  const about = [derived.id, ...claims, ...turning.flatMap(({ choice }) => choice.use ?? [])];
  return tell(graph, "verdict-depends-on-disputed-measurement", "warning", about, message, {
    path: ["inputs"],
  });
}

/** What another choice takes, and what the number says with it. */
function withTaken(graph: Graph, { prefer, use, unit, written }: Choice, says: Hole): Said {
  if (unit !== undefined) return say`with the ${unit.name} of ${formatSI(unit.size, unit.kind)} it ${says}`;
  if (written !== undefined)
    return say`with each ${written.unit} of the measurements read as ${formatSI(written.as.size, written.as.kind)} it ${says}`;
  return prefer === undefined
    ? say`with ${labelText(graph, use ?? "")} it ${says}`
    : say`with the readings of ${labelText(graph, prefer)} it ${says}`;
}
