import type { Id } from "../../../../base/finding.ts";
import type { Ground } from "../ground.ts";
import type { Known } from "../sheet.ts";

/**
 * What the record says of one source citing another, and no more: what was read at second hand is cited by the source it was
 * read in; who copies a figure uses its data; who argues against what another source sees, measures, computes or argues disputes it,
 * where that source is not the later of the two. To hold another claim than another source is no citation, and nobody is said to
 * refute. CiTO relates documents and never propositions.
 */
export function putCitations(ground: Ground): void {
  const { graph, sheet, shown, citable, node } = ground;
  const cites = (citing: readonly Id[], relation: Known, cited: readonly Id[]): void => {
    for (const one of citing)
      for (const other of cited)
        if (one !== other && citable(one) && citable(other) && mayCite(ground, one, other)) {
          sheet.has(node(one), relation, node(other));
          sheet.has(node(one), "cito:cites", node(other));
        }
  };
  for (const record of graph.records.values()) {
    if (!shown(record.id)) continue;
    const { sources, via } = graph.provenance(record.id);
    cites(
      via,
      record.list === "passages" && record.values.quote !== undefined
        ? "cito:includesQuotationFrom"
        : "cito:cites",
      sources,
    );
    if (record.list === "measurements" && record.values.repeats !== undefined) {
      const { repeats } = record.values;
      cites(
        sources,
        "cito:usesDataFrom",
        graph.sources.has(repeats) ? [repeats] : graph.provenance(repeats).sources,
      );
    }
    if (record.list === "arguments")
      for (const target of record.values.against ?? [])
        if (graph.records.get(target)?.list !== "claims" && shown(target))
          cites(sources, "cito:disputes", graph.provenance(target).sources);
  }
}

/** Nobody cites what came after them. */
function mayCite({ graph }: Ground, citing: Id, cited: Id): boolean {
  const [year, other] = [graph.sources.get(citing)?.year, graph.sources.get(cited)?.year];
  return year === undefined || year === null || other === undefined || other === null || other <= year;
}
