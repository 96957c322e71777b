import { count, say } from "../../../base/text/said/said.ts";
import type { Said } from "../../../base/text/said/said.ts";
import { authorLabel, labelText } from "../../../link/names/label.ts";
import type { Graph, MeasurementRecord } from "../../../link/graph.ts";
import { byText } from "../../../base/order.ts";
import { apart, foundIn } from "../acceptance.ts";
import type { Rule } from "../rule.ts";
import { chained, few } from "../../../base/text/said/rows.ts";
import { tell, whose } from "../tell.ts";
import { comparable, conflict } from "./compare.ts";

export const conflictingMeasurements: Rule = {
  id: "conflicting-measurements",
  level: "warning",
  title: say`Two readings of one dimension of one thing differ by more than both allow.`,
  doc: say`Both stay evidence until an argument chooses. Compare the landmarks, the state and the instrument; say \`between\` where they were taken at different places. The difference asked for is twice the combined standard uncertainty, with the corpus's reproducibility added to each; bounds conflict when wholly on the wrong side.`,
  find: (view) => {
    const { graph } = view;
    const side = apart(graph, "conflicting-measurements");
    const causes = new Map<string, (readonly MeasurementRecord[])[]>();
    const all = comparable(view).flatMap((group) =>
      foundIn(
        graph,
        group,
        (some) => clashingIn(graph, some),
        (found) => found.map(({ id }) => id),
      ),
    );
    for (const clashing of all) {
      const who = [...new Set(clashing.map((one) => authorLabel(graph, one.id)))].sort(byText);
      const cause = `${graph.dimensionName(clashing[0]?.values.dimension ?? "")}\n${who.join("\n")}\n${side(clashing[0]?.id ?? "", ...clashing.map(({ id }) => id))}`;
      causes.set(cause, [...(causes.get(cause) ?? []), clashing]);
    }
    const findings = [...causes].map(([cause, groups]) => {
      const [dimension = ""] = cause.split("\n");
      const all = few(
        groups.map((group) => disagreement(graph, group)),
        (shown, others) => say`${shown} and ${count(others)} more are in dispute between them`,
      );
      const message = say`The ${dimension} of ${all}, expected readings that agree within their uncertainties.`;
      const about = groups.flat().map((one) => one.id);
      return tell(graph, "conflicting-measurements", "warning", about, message, { path: ["value"] });
    });
    return { findings };
  },
};

/** Those of some readings that another of them conflicts with; nothing where there are none. */
function clashingIn(
  graph: Graph,
  group: readonly MeasurementRecord[],
): readonly (readonly MeasurementRecord[])[] {
  const clashing = group.filter((one) => group.some((other) => other !== one && conflict(one, other, graph)));
  return clashing.length === 0 ? [] : [clashing];
}

/** One thing with its readings and whose they are. */
function disagreement(graph: Graph, group: readonly MeasurementRecord[]): Said {
  const [first] = group;
  const readings = chained(
    group.map((one) => say`${one.values.value.text} (${whose(graph, one.id)})`),
    (before, next) => say`${before} against ${next}`,
  );
  const thing = first ? labelText(graph, first.values.of) : "";
  return first?.values.between === undefined
    ? say`${thing} is given as ${readings}`
    : say`${thing} (${first.values.between}) is given as ${readings}`;
}
