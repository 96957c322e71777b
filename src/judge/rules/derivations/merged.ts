import type { Id } from "../../../base/finding.ts";
import { row, say } from "../../../base/text/said/said.ts";
import type { Said } from "../../../base/text/said/said.ts";
import type { Graph } from "../../../link/graph.ts";
import { labelText } from "../../../link/names/label.ts";
import type { Rule } from "../rule.ts";
import { few } from "../../../base/text/said/rows.ts";
import { byCause, quotedLabel, tell, whose } from "../tell.ts";

/** Computations that took the mean of several readings, those that took the same means in one finding. */
export const repeatsMerged: Rule = {
  id: "repeats-merged",
  level: "note",
  title: say`Several readings of one dimension entered a computation as one mean.`,
  doc: say`One dimension of one thing enters once. The mean is weighted by the uncertainties and keeps at least half the difference as its own. Name the better source in \`prefer\` to take its reading instead.`,
  find: ({ graph, derivations }) => {
    const merging = [...derivations.byId.values()].filter((one) => one.merged.length > 0);
    const causeOf = ({ merged }: (typeof merging)[number]): string =>
      merged.map((ids) => ids.join(" ")).join("\n");
    const findings = byCause(merging, causeOf).map((group) => {
      const names = few(group.map(({ id }) => quotedLabel(graph, id)));
      const means = few(group[0].merged.map((ids) => meanOf(graph, ids)));
      const message =
        group.length === 1
          ? say`${names} takes the mean of several readings: ${means}.`
          : say`${names} take the mean of several readings: ${means}.`;
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

function meanOf(graph: Graph, ids: readonly Id[]): Said {
  const record = graph.records.get(ids[0] ?? "");
  const who = row(ids.map((id) => whose(graph, id)));
  if (record?.list !== "measurements") return say` (${who})`;
  return say`${record.values.dimension} of ${labelText(graph, record.values.of)} (${who})`;
}
