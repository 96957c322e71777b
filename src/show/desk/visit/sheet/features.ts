import type { Id } from "../../../../base/finding.ts";
import { folded } from "../../../../link/dimension.ts";
import type { Graph } from "../../../../link/graph.ts";
import { withheldIn } from "../../../../link/withheld.ts";
import { named } from "../../../judged/standpoints/named.ts";
import type { Named } from "../../../judged/standpoints/named.ts";
import { featureKey } from "./keys.ts";
import { oldSight } from "./old.ts";
import type { OldValue } from "./old.ts";
import type { Visited } from "./examined.ts";

/** A feature that is to be looked for on a visit. */
export interface FeatureRow {
  readonly key: string;
  readonly of: readonly Named[];
  readonly feature: string;
  readonly asked: boolean;
  /** Not to be shown before it was looked for. */
  readonly old: readonly OldValue[];
}

/** What is to be looked for: first what outcomes ask for, then what others have reported of the things. */
export function featureRows(graph: Graph, { examinations, things }: Visited): readonly FeatureRow[] {
  const withheld = withheldIn(graph);
  const recorded = graph
    .list("observations")
    .filter((one) => one.values.feature !== undefined && !withheld(one.id));
  const asked = examinations.flatMap(({ of, outcomes }) => {
    const shown = of.filter((id) => !withheld(id));
    const seen = outcomes.flatMap((one) => one.sees.map((sight) => ({ of: shown, feature: sight.feature })));
    const spoken = outcomes
      .flatMap((one) => one.against)
      .flatMap((id) => recorded.find((one) => one.id === id) ?? [])
      .map(({ values }) => ({
        of: values.of.filter((id) => !withheld(id)),
        feature: values.feature ?? "",
      }));
    return [...seen, ...spoken];
  });
  const besides = recorded
    .filter(({ values }) => values.of.some((id) => things.includes(id)))
    .map(({ values }) => ({
      of: values.of.filter((id) => !withheld(id)),
      feature: values.feature ?? "",
    }));
  const rows = new Map<string, FeatureRow>();
  for (const [{ of, feature: written }, isAsked] of [
    ...asked.map((one) => [one, true] as const),
    ...besides.map((one) => [one, false] as const),
  ]) {
    const feature = graph.featureName(written);
    const key = featureKey({ of, feature });
    if (rows.has(key) || of.length === 0) continue;
    const same = recorded.filter(
      ({ values }) =>
        folded(graph.featureName(values.feature ?? "")) === folded(feature) && meets(values.of, of),
    );
    rows.set(key, {
      key,
      of: of.map((id) => named(graph, id)),
      feature,
      asked: isAsked,
      old: same.map((one) => oldSight(graph, one)),
    });
  }
  return [...rows.values()];
}

function meets(some: readonly Id[], others: readonly Id[]): boolean {
  return some.some((id) => others.includes(id));
}
