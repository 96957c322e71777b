import type { Finding, Id, Level } from "../../base/finding.ts";
import type { Graph } from "../../link/graph.ts";
import { labelOf } from "../../link/label.ts";
import { placesIn } from "../place.ts";
import { shownFindings } from "../withhold.ts";

/** A finding for a page: its words, what it is about, where it stands. */
export interface FindingLine {
  readonly rule: string;
  readonly level: Level;
  readonly message: string;
  readonly about: readonly { readonly id: Id; readonly text: string }[];
  readonly at: { readonly file: string; readonly line: number } | null;
  readonly mend: string | null;
  readonly accepted: string | null;
}

/** Findings in words; records that are not there are left out of what they are about. */
export function findingLines(
  graph: Graph | null,
  findings: readonly Finding[],
  texts: ReadonlyMap<string, string>,
): readonly FindingLine[] {
  const place = placesIn(texts);
  return shownFindings(graph, findings).map((one) => {
    const at = one.at ? place(one.at) : null;
    const known = one.about.filter((id) => graph?.records.has(id) || graph?.sources.has(id));
    return {
      rule: one.rule,
      level: one.level,
      message: one.message,
      about: known.map((id) => ({ id, text: graph ? labelOf(graph, id) : id })),
      at: at ? { file: at.file, line: at.line } : null,
      mend: one.fix?.label ?? null,
      accepted: one.accepted,
    };
  });
}
