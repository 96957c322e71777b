import type { Id } from "../../../../base/finding.ts";
import type { Reported } from "../../../report/report.ts";
import { citableUnder } from "../../../withhold.ts";
import type { Cited } from "../slides.ts";

/** The sources that what a slide tells of was taken from, those it was really read in first, each once. */
export function citedFor(model: Reported, about: readonly Id[]): readonly Cited[] {
  const { graph } = model;
  const citable = citableUnder(model);
  const keys = about.flatMap((id) => {
    if (graph.sources.has(id)) return [id];
    const { sources, via } = graph.provenance(id);
    return [...sources, ...via];
  });
  return [...new Set(keys)].flatMap((key): readonly Cited[] => {
    const source = graph.sources.get(key);
    return source !== undefined && citable(key) ? [{ id: key, label: source.label }] : [];
  });
}
