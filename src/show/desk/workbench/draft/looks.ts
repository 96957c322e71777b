import type { Id } from "../../../../base/finding.ts";
import { canonical } from "../../../../base/json.ts";
import type { Json } from "../../../../base/json.ts";
import { hashOf } from "../../../../base/text/hash.ts";
import { derive } from "../../../../derive/derive.ts";
import { runOf } from "../../../../derive/run.ts";
import type { ComputeMemo } from "../../../../derive/run.ts";
import type { Graph } from "../../../../link/graph.ts";
import type { Plugin } from "../../../../plugin.ts";
import { mapsIn } from "../../../numbers/value.ts";
import type { Draft } from "./draft.ts";

/**
 * The settings of a derivation as one key: what was selected, the parameters and the limits asked of the numbers, in the
 * record as it is, whatever year or outcome is looked at. Which claim the limits are about is no part of it, nor is how
 * often one looked. Null where nothing can be computed.
 */
export function settingsKey(
  graph: Graph,
  plugins: readonly Plugin[],
  compute: ComputeMemo,
  id: Id,
): string | null {
  const whole = graph.supposed?.before ?? graph;
  const record = whole.records.get(id);
  const run = derive(whole, plugins, compute, {}, [id]).byId.get(id)?.run ?? null;
  const plugin = plugins.find((one) => one.id === run?.plugin);
  if (record?.list !== "derivations" || run === null || plugin === undefined) return null;
  const { key: _, plugin: __, ...computedOn } = run;
  const { key } = runOf(plugin, { ...computedOn, looks: 1 });
  const limits = (record.values["bears-on"] ?? []).flatMap(({ supports, disputes }) => {
    const asked = [mapsIn(supports), mapsIn(disputes)] as unknown as Json;
    return supports === undefined && disputes === undefined ? [] : [canonical(asked)];
  });
  return hashOf(canonical([key, [...new Set(limits)].sort()]));
}

/**
 * How often these data were looked at by this draft, with these settings too where they are given, after the looks counted
 * elsewhere; at least once.
 */
export function looksOf({ looksBefore, seen }: Draft, key: string | null = null, elsewhere = 0): number {
  const settings = new Set(key === null ? seen : [...seen, key]);
  return Math.max(1, elsewhere + looksBefore + settings.size);
}

/**
 * Looks that a new draft comes after: at the claims it bears on, by the same method, as many as other derivations of the
 * corpus took, or as one of them counts where that is more. A recorded one has counted them already.
 */
export function looksElsewhere(graph: Graph, { of }: Draft, id: Id): number {
  const record = graph.records.get(id);
  if (of !== null || record?.list !== "derivations") return 0;
  const claims = new Set((record.values["bears-on"] ?? []).map(({ claim }) => claim));
  const others = graph
    .list("derivations")
    .filter(
      ({ id: other, values }) =>
        other !== id &&
        values.plugin === record.values.plugin &&
        (values["bears-on"] ?? []).some(({ claim }) => claims.has(claim)),
    );
  return Math.max(others.length, ...others.map(({ values }) => values.looks ?? 1));
}

/** A draft after the number of some settings was seen: that can never be unseen. */
export function afterSeeing(draft: Draft, key: string): Draft {
  return draft.seen.includes(key) ? draft : { ...draft, seen: [...draft.seen, key] };
}
