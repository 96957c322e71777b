import { inEnglish } from "../../../base/text/said/english.ts";
import { count, row, say } from "../../../base/text/said/said.ts";
import type { Row } from "../../../base/text/said/said.ts";
import type { Graph, ObservationRecord } from "../../../link/graph.ts";
import { authorLabel } from "../../../link/names/label.ts";
import { apart, foundIn } from "../acceptance.ts";
import type { Rule } from "../rule.ts";
import { few, quoted } from "../../../base/text/said/rows.ts";
import { byCause, labels, tell, whose } from "../tell.ts";
import { alteredBetween } from "./compare.ts";

export const conflictingObservations: Rule = {
  id: "conflicting-observations",
  level: "warning",
  title: say`One saw a feature of a thing, another looked for it and says it is not there.`,
  doc: say`Both stay evidence until an argument chooses. Ask who looked how, and whether anything was done to the thing between.`,
  find: ({ graph, judgement }) => {
    const groups = new Map<string, ObservationRecord[]>();
    for (const record of graph.list("observations")) {
      const { feature, of } = record.values;
      if (feature === undefined || !judgement.counts(record.id)) continue;
      const key = `${[...of].sort().join(" ")}\n${graph.featureName(feature)}`;
      groups.set(key, [...(groups.get(key) ?? []), record]);
    }
    const disagreeing = [...groups.values()].flatMap((group) =>
      foundIn(
        graph,
        group,
        (some) => disagreeingIn(graph, some),
        ({ both }) => both.map(({ id }) => id),
      ),
    );
    const side = apart(graph, "conflicting-observations");
    const findings = byCause(disagreeing, ({ first, both, seen, missed }) =>
      [
        graph.featureName(first.values.feature ?? ""),
        inEnglish(say`${seen}`),
        inEnglish(say`${missed}`),
        side(first.id, ...both.map(({ id }) => id)),
      ].join("\n"),
    ).map((group) => {
      const [{ first, seen, missed }] = group;
      const names = few(
        group.map((one) => labels(graph, one.first.values.of)),
        (shown, others) => say`${shown} and ${count(others)} more things`,
      );
      const message = say`${quoted(first.values.feature ?? "")} on ${names} was seen (${seen}) and looked for in vain (${missed}), expected one or the other.`;
      const about = group.flatMap(({ both }) => both.map(({ id }) => id));
      return tell(graph, "conflicting-observations", "warning", about, message, { path: ["present"] });
    });
    return { findings };
  },
};

/** Observations of one thing that cannot both be right, and whose they are in words. */
interface Disagreement {
  readonly first: ObservationRecord;
  readonly both: readonly ObservationRecord[];
  readonly seen: Row;
  readonly missed: Row;
}

function disagreeingIn(graph: Graph, group: readonly ObservationRecord[]): readonly Disagreement[] {
  const seen = group.filter((one) => (one.values.present ?? "true") === "true");
  const missed = group.filter((one) => one.values.present === "false");
  const pairs = seen.flatMap((one) =>
    missed.filter((other) => !alteredBetween(one, other, graph)).map((other) => [one, other] as const),
  );
  const [first] = pairs;
  if (!first) return [];
  const both = [...new Set(pairs.flat())];
  const who = (list: readonly ObservationRecord[]): Row =>
    authorsOf(
      graph,
      list.filter((one) => both.includes(one)),
    );
  return [{ first: first[0], both, seen: who(seen), missed: who(missed) }];
}

/** Whose some observations are, each once. */
function authorsOf(graph: Graph, list: readonly ObservationRecord[]): Row {
  return row([...new Map(list.map(({ id }) => [authorLabel(graph, id), whose(graph, id)])).values()]);
}
