import type { Finding } from "../../../base/finding.ts";
import { placesIn } from "../../../base/text/lines/place.ts";
import { inEnglish } from "../../../base/text/said/english.ts";
import type { Reported } from "../../report/report.ts";
import { shownFindings } from "../../withhold.ts";
import { withoutTellingPlaces } from "../given/places.ts";
import { listed, tableOf } from "./table.ts";
import type { ColumnOf, DataTable } from "./table.ts";

/** Every finding that may be shown, in the order in which they are told. */
export function findingTable(
  { graph }: Pick<Reported, "graph">,
  findings: readonly Finding[],
  texts: ReadonlyMap<string, string>,
): DataTable {
  return tableOf(
    {
      name: "findings",
      doc: "One row for each finding: what contradicts, what is unsupported, what is amiss.",
    },
    columns(texts),
    withoutTellingPlaces(graph, shownFindings(graph, findings)),
  );
}

function columns(texts: ReadonlyMap<string, string>): readonly ColumnOf<Finding>[] {
  const placeOf = placesIn(texts);
  return [
    {
      name: "rule",
      holds: "text",
      doc: "The rule that tells it; variorum explain RULE says what it means.",
      cell: ({ rule }) => rule,
    },
    { name: "level", holds: "text", doc: "error, warning or note.", cell: ({ level }) => level },
    {
      name: "about",
      holds: "text",
      doc: "The ids of the records that it is about.",
      cell: ({ about }) => listed(about),
    },
    {
      name: "message",
      holds: "text",
      doc: "What was found, in a sentence.",
      cell: ({ message }) => inEnglish(message),
    },
    {
      name: "accepted",
      holds: "text",
      doc: "Why it was accepted, where it was.",
      cell: ({ accepted }) => accepted ?? null,
    },
    {
      name: "file",
      holds: "text",
      doc: "The file of the corpus that it stands in.",
      cell: ({ at }) => at?.file ?? null,
    },
    {
      name: "line",
      holds: "number",
      doc: "The line of that file, from 1.",
      cell: ({ at }) => (at ? placeOf(at).line : null),
    },
  ];
}
