import { authorLabel, labelOf } from "../../../link/label.ts";
import type { ObservationRecord } from "../../../link/graph.ts";
import type { Rule } from "../rule.ts";
import { inWords, tell } from "../tell.ts";
import { alteredBetween } from "./compare.ts";

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
        missed.filter((other) => !alteredBetween(one, other, graph)).map((other) => [one, other] as const),
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
  },
};
