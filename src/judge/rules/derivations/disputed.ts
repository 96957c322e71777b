import type { Id } from "../../../base/finding.ts";
import { derive } from "../../../derive/derive.ts";
import type { Derived } from "../../../derive/derive.ts";
import type { Choice } from "../../../derive/lens.ts";
import type { Run } from "../../../derive/run.ts";
import { labelOf } from "../../../link/label.ts";
import type { Rule, View } from "../../rule.ts";
import { inWords, tell } from "../../tell.ts";

/** Verdicts that turn when another scholar's readings are used. */
export const verdictDependsOnDisputedMeasurement: Rule = {
  id: "verdict-depends-on-disputed-measurement",
  level: "warning",
  title: "What a number says of a claim changes with the readings that are used.",
  doc: "The derivation was run again with each source's readings throughout, and with each single reading, where several sources measured the same dimension. The readings that turn the verdict are worth a second look at the thing before anything else.",
  find: (view) => {
    const missing = new Map<string, Run>();
    const findings = [...view.derivations.byId.values()].flatMap((derived) => {
      const turning: { readonly choice: Choice; readonly bearings: ReadonlyMap<Id, string> }[] = [];
      for (const choice of choicesFor(view, derived)) {
        const { other, runs } = underChoice(view, derived.id, choice);
        for (const run of runs) missing.set(run.key, run);
        if (!other) continue;
        const bearings = changed(derived, other);
        if (bearings.size > 0) turning.push({ choice, bearings });
      }
      return turning.length === 0 ? [] : [told(view, derived, turning)];
    });
    return { findings, missing: [...missing.values()] };
  },
};

/** The other choices there are: each source that has a reading where several do, and each single such reading. */
function choicesFor({ graph, judgement }: View, derived: Derived): readonly Choice[] {
  const record = graph.records.get(derived.id);
  if (derived.status !== "computed" || derived.bearings.length === 0 || record?.list !== "derivations")
    return [];
  const alternatives = [
    ...derived.merged.flat(),
    ...derived.leftOut.filter((one) => one.why === "another reading was taken").map((one) => one.id),
  ].filter((id) => judgement.standings.get(id) === "stands");
  const sources = new Set(alternatives.flatMap((id) => graph.provenance(id).sources.slice(0, 1)));
  return [
    ...[...sources].map((prefer) => ({ derivation: derived.id, prefer })),
    ...alternatives.map((use) => ({ derivation: derived.id, use })),
  ];
}

function underChoice(
  view: View,
  id: Id,
  choice: Choice,
): { readonly other: Derived | null; readonly runs: readonly Run[] } {
  const lens = { ...view.lens, instead: [...(view.lens.instead ?? []), choice] };
  const { byId, missing } = derive(view.graph, view.plugins, view.memo, lens, (one) => one === id);
  const other = byId.get(id) ?? null;
  const runs = missing.filter((run) => other?.run?.key === run.key);
  return { other: other?.status === "pending" ? null : other, runs };
}

/** The claims of which another choice says something else, with what it says. */
function changed(one: Derived, other: Derived): ReadonlyMap<Id, string> {
  const before = new Map(one.bearings.map((bearing) => [bearing.claim, bearing.bearing]));
  const after = new Map(other.bearings.map((bearing) => [bearing.claim, bearing.bearing as string]));
  const pairs = [...before].map(
    ([claim, was]) => [claim, was, after.get(claim) ?? "says nothing of"] as const,
  );
  return new Map(pairs.filter(([, was, is]) => was !== is).map(([claim, , is]) => [claim, is]));
}

function told(
  { graph }: View,
  derived: Derived,
  turning: readonly { readonly choice: Choice; readonly bearings: ReadonlyMap<Id, string> }[],
) {
  const claims = [...new Set(turning.flatMap(({ bearings }) => [...bearings.keys()]))];
  const whole = turning.filter(({ choice }) => choice.prefer !== undefined);
  const shown = whole.length > 0 ? whole : turning;
  const ways = shown.map(({ choice, bearings }) => {
    const name = labelOf(graph, choice.prefer ?? choice.use ?? "");
    const said = [...new Set(bearings.values())].map((word) =>
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
