import { authorLabel, labelOf } from "../../../link/label.ts";
import type { ObservationRecord } from "../../../link/graph.ts";
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
    const findings = comparable(view).flatMap((group) => {
      const clashing = group.filter((one) =>
        group.some((other) => other !== one && conflict(one, other, graph)),
      );
      const [first] = clashing;
      if (!first) return [];
      const readings = clashing.map((one) => `${one.values.value.text} (${authorLabel(graph, one.id)})`);
      const message = `The ${first.values.dimension} of ${labelOf(graph, first.values.of)} is given as ${inWords(readings)}, expected readings that agree within their uncertainties.`;
      const about = clashing.map((one) => one.id);
      return [tell(graph, "conflicting-measurements", "warning", about, message, { path: ["value"] })];
    });
    return { findings };
  },
};

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
      const message = `${first[0].values.feature ?? "A feature"} on ${inWords(name)} was seen (${who(seen)}) and looked for in vain (${who(missed)}), expected one or the other.`;
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
