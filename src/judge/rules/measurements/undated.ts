import type { Id } from "../../../base/finding.ts";
import type { Rule } from "../rule.ts";
import { tell } from "../tell.ts";

export const undatedRecord: Rule = {
  id: "undated-record",
  level: "note",
  title: "A position, observation or measurement has no year, and its sources have none.",
  doc: "It then counts in every year of the replay. Give the record a `year`, or the bibliography entry a date.",
  find: ({ graph, judgement }) => {
    const about: Id[] = [];
    for (const list of ["positions", "observations", "measurements"] as const) {
      for (const { id } of graph.list(list)) {
        if (judgement.counts(id) && graph.provenance(id).year === null) about.push(id);
      }
    }
    if (about.length === 0) return { findings: [] };
    const many = about.length === 1 ? "One record has" : `${about.length} records have`;
    const message = `${many} no year and no dated source, expected a year so that the dispute can be replayed.`;
    return { findings: [tell(graph, "undated-record", "note", about, message)] };
  },
};
