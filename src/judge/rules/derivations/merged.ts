import type { Id } from "../../../base/finding.ts";
import type { Graph } from "../../../link/graph.ts";
import { authorLabel, labelOf } from "../../../link/names/label.ts";
import type { Rule } from "../rule.ts";
import { byCause, fewOf, inWords, tell } from "../tell.ts";

/** Computations that took the mean of several readings, those that took the same means in one finding. */
export const repeatsMerged: Rule = {
  id: "repeats-merged",
  level: "note",
  title: "Several readings of one dimension entered a computation as one mean.",
  doc: "One dimension of one thing enters once. The mean is weighted by the uncertainties and keeps at least half the difference as its own. Name the better source in `prefer` to take its reading instead.",
  find: ({ graph, derivations }) => {
    const merging = [...derivations.byId.values()].filter((one) => one.merged.length > 0);
    const causeOf = ({ merged }: (typeof merging)[number]): string =>
      merged.map((ids) => ids.join(" ")).join("\n");
    const findings = byCause(merging, causeOf).map((group) => {
      const names = inWords(fewOf(group.map(({ id }) => `“${labelOf(graph, id)}”`)));
      const means = inWords(fewOf(group[0].merged.map((ids) => meanOf(graph, ids))));
      const takes = group.length === 1 ? "takes" : "take";
      const message = `${names} ${takes} the mean of several readings: ${means}.`;
      return tell(
        graph,
        "repeats-merged",
        "note",
        group.map(({ id }) => id),
        message,
      );
    });
    return { findings };
  },
};

function meanOf(graph: Graph, ids: readonly Id[]): string {
  const record = graph.records.get(ids[0] ?? "");
  const what =
    record?.list === "measurements"
      ? `${record.values.dimension} of ${labelOf(graph, record.values.of)}`
      : "";
  return `${what} (${inWords(ids.map((id) => authorLabel(graph, id)))})`;
}
