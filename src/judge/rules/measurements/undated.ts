import type { Id } from "../../../base/finding.ts";
import { count, say } from "../../../base/text/said/said.ts";
import { apart } from "../acceptance.ts";
import type { Rule } from "../rule.ts";
import { byCause, tell } from "../tell.ts";

export const undatedRecord: Rule = {
  id: "undated-record",
  level: "note",
  title: say`A position, observation or measurement has no year, and its sources have none.`,
  doc: say`It then counts in every year of the replay. Give the record a \`year\`, or the bibliography entry a date.`,
  ofTheRecord: true,
  find: ({ graph, judgement }) => {
    const about: Id[] = [];
    for (const list of ["positions", "observations", "measurements"] as const) {
      for (const { id } of graph.list(list)) {
        if (judgement.counts(id) && graph.provenance(id).year === null) about.push(id);
      }
    }
    const findings = byCause(about, apart(graph, "undated-record")).map((ids) => {
      const message =
        ids.length === 1
          ? say`One record has no year and no dated source, expected a year so that the dispute can be replayed.`
          : say`${count(ids.length)} records have no year and no dated source, expected a year so that the dispute can be replayed.`;
      return tell(graph, "undated-record", "note", ids, message);
    });
    return { findings };
  },
};
