import { authorLabel, labelOf } from "../../../link/label.ts";
import type { Graph, MeasurementRecord, ObservationRecord } from "../../../link/graph.ts";
import { byText } from "../../../base/order.ts";
import type { Rule } from "../../rule.ts";
import { inWords, tell } from "../../tell.ts";
import { alterations, comparable, conflict } from "./compare.ts";

export const conflictingMeasurements: Rule = {
  id: "conflicting-measurements",
  level: "warning",
  title: "Two readings of one dimension of one thing differ by more than both allow.",
  doc: "Both stay evidence until an argument chooses. Compare the landmarks, the state and the instrument; say `between` where they were taken at different places. The difference asked for is twice the combined standard uncertainty, with the corpus's reproducibility added to each; bounds conflict when wholly on the wrong side.",
  find: (view) => {
    const { graph } = view;
    const causes = new Map<string, (readonly MeasurementRecord[])[]>();
    for (const group of comparable(view)) {
      const clashing = group.filter((one) =>
        group.some((other) => other !== one && conflict(one, other, graph)),
      );
      if (clashing.length === 0) continue;
      const who = [...new Set(clashing.map((one) => authorLabel(graph, one.id)))].sort(byText);
      const cause = `${graph.dimensionName(clashing[0]?.values.dimension ?? "")}\n${who.join("\n")}`;
      causes.set(cause, [...(causes.get(cause) ?? []), clashing]);
    }
    const findings = [...causes].map(([cause, groups]) => {
      const [dimension = ""] = cause.split("\n");
      const message = `The ${dimension} of ${inWords(fewOf(groups.map((group) => disagreement(graph, group))))}, expected readings that agree within their uncertainties.`;
      const about = groups.flat().map((one) => one.id);
      return tell(graph, "conflicting-measurements", "warning", about, message, { path: ["value"] });
    });
    return { findings };
  },
};

/** One thing with its readings and whose they are. */
function disagreement(graph: Graph, group: readonly MeasurementRecord[]): string {
  const [first] = group;
  const readings = group.map((one) => `${one.values.value.text} (${authorLabel(graph, one.id)})`);
  return `${first ? labelOf(graph, first.values.of) : ""} is given as ${readings.join(" against ")}`;
}

/** The first three of a list, and how many more there are. */
function fewOf(names: readonly string[]): readonly string[] {
  return names.length > 4
    ? [...names.slice(0, 3), `${names.length - 3} more things are in dispute between them`]
    : names;
}

export const conflictingObservations: Rule = {
  id: "conflicting-observations",
  level: "warning",
  title: "One saw a feature of a thing, another looked for it and says it is not there.",
  doc: "Both stay evidence until an argument chooses. Ask who looked how, and whether anything was done to the thing between.",
  find: ({ graph, judgement }) => {
    const groups = new Map<string, ObservationRecord[]>();
    for (const record of graph.list("observations")) {
      const { feature, of } = record.values;
      if (feature === undefined || !judgement.counts(record.id)) continue;
      const key = `${[...of].sort().join(" ")}\n${graph.featureName(feature)}`;
      groups.set(key, [...(groups.get(key) ?? []), record]);
    }
    const findings = [...groups.values()].flatMap((group) => {
      const seen = group.filter((one) => (one.values.present ?? "true") === "true");
      const missed = group.filter((one) => one.values.present === "false");
      const pairs = seen.flatMap((one) =>
        missed.filter((other) => !alteredBetween(one, other)).map((other) => [one, other] as const),
      );
      const [first] = pairs;
      if (!first) return [];
      const both = [...new Set(pairs.flat())];
      const name = first[0].values.of.map((id) => labelOf(graph, id));
      const who = (list: readonly ObservationRecord[]): string =>
        inWords([
          ...new Set(list.filter((one) => both.includes(one)).map((one) => authorLabel(graph, one.id))),
        ]);
      const message = `“${first[0].values.feature ?? ""}” on ${inWords(name)} was seen (${who(seen)}) and looked for in vain (${who(missed)}), expected one or the other.`;
      return [
        tell(
          graph,
          "conflicting-observations",
          "warning",
          both.map((one) => one.id),
          message,
          { path: ["present"] },
        ),
      ];
    });
    return { findings };

    function alteredBetween(a: ObservationRecord, b: ObservationRecord): boolean {
      const years = [a, b].map((one) => one.values.year ?? graph.provenance(one.id).year ?? Number.NaN);
      const [from, to] = [Math.min(...years), Math.max(...years)];
      const kinds = ["loss", "restoration", "conservation", "sampling"];
      const things = [...new Set([...a.values.of, ...b.values.of])];
      return things.some((thing) =>
        alterations(thing, graph, kinds).some((year) => year >= from && year <= to),
      );
    }
  },
};
