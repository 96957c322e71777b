import type { Graph } from "../../link/graph.ts";
import type { Plugin } from "../../plugin.ts";
import { conditionOf } from "../bearing.ts";
import type { Comparison } from "../bearing.ts";
import type { Derived } from "../derived/derived.ts";
import { drawsIn } from "./draws.ts";

/** Standard errors of a drawn p within which it counts as near a limit: less than 1 in 10,000 lie further off. */
const near = 4;

/**
 * Whether a p from few draws lies so near a limit it is compared with that more draws could carry it over. The
 * standard error of a p from B draws is √(p (1 − p) / B), of one adjusted for k looks at most √k times as large.
 */
export function isNearLimit(graph: Graph, plugins: readonly Plugin[], derived: Derived): boolean {
  const { run } = derived;
  const plugin = plugins.find((one) => one.id === run?.plugin);
  const draws = run === null ? null : drawsIn(run);
  if (run === null || plugin === undefined || draws === null) return false;
  const names = plugin.numbers.filter(({ kind }) => kind === "probability").map(({ name }) => name);
  return comparisonsOf(graph, plugin, derived).some((one) => {
    const p = derived.numbers[one.number]?.value;
    if (p === undefined || !names.includes(one.number)) return false;
    return [one.low, one.high].filter(Number.isFinite).some((limit) => {
      const reach = near * Math.sqrt((run.looks * Math.max(p, limit)) / draws);
      return Math.abs(p - limit) <= reach;
    });
  });
}

function comparisonsOf(graph: Graph, plugin: Plugin, { id }: Derived): readonly Comparison[] {
  const record = graph.records.get(id);
  const entries = record?.list === "derivations" ? (record.values["bears-on"] ?? []) : [];
  return entries
    .flatMap(({ supports, disputes }) => [supports, disputes])
    .map((written) => conditionOf(written, plugin, graph.settings.quantities))
    .flatMap((read) => ("condition" in read ? read.condition.flat() : []));
}
