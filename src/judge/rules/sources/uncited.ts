import type { Id } from "../../../base/finding.ts";
import { say } from "../../../base/text/said/said.ts";
import type { AnyLinked } from "../../../link/graph.ts";
import { apart } from "../acceptance.ts";
import type { Rule } from "../rule.ts";
import { byCause, labels, tell } from "../tell.ts";

export const uncitedSource: Rule = {
  id: "uncited-source",
  level: "note",
  title: say`A source of the bibliography is cited by no record.`,
  doc: say`Either there is nothing in it, which a reading with the status nothing-in-it records, or something was forgotten.`,
  ofTheRecord: true,
  find: ({ graph }) => {
    const cited = new Set<Id>(graph.settings.units.flatMap((unit) => unit.from));
    for (const record of graph.records.values()) {
      const { sources, via } = graph.provenance(record.id);
      for (const key of [...sources, ...via]) cited.add(key);
      for (const key of citedInside(record)) cited.add(key);
      if (record.list === "readings") for (const { key } of record.values.from) cited.add(key);
    }
    const members = new Set([...graph.sources.values()].flatMap((source) => source.members));
    const about = [...graph.sources.keys()].filter((key) => !cited.has(key) && !members.has(key));
    const findings = byCause(about, apart(graph, "uncited-source")).map((keys) => {
      const names = labels(graph, keys);
      const message =
        keys.length === 1
          ? say`${names} is cited by no record, expected a record or a reading.`
          : say`${names} are cited by no record, expected a record or a reading.`;
      return tell(graph, "uncited-source", "note", keys, message);
    });
    return { findings };
  },
};

/** Keys cited in the dates and the history of a thing. */
function citedInside(record: AnyLinked): readonly Id[] {
  if (record.list !== "artefacts") return [];
  const entries = [...(record.values.date ?? []), ...(record.values.history ?? [])];
  return entries.flatMap((entry) => (entry.from ?? []).map(({ key }) => key));
}
