import type { PositionRecord } from "../../../link/graph.ts";
import type { Id } from "../../../base/finding.ts";
import { latestPositions } from "../../../judge/argument.ts";
import { labelOf } from "../../../link/names/label.ts";
import type { Reported } from "../../report/report.ts";
import { listedUnder, shownUnder } from "../../withhold.ts";
import { sourceColumns, yearIn } from "./sources.ts";
import { tableOf } from "./table.ts";
import type { ColumnOf, DataTable } from "./table.ts";

/** A position as one of those who took it has it. */
interface Row extends PositionRecord {
  readonly scholar: Id;
}

/** Every position that may be shown: who holds what of which claim, since when, and in which words. */
export function positionTable(model: Reported): DataTable {
  const shown = shownUnder(model);
  const listable = listedUnder(model);
  const rows = model.graph
    .list("positions")
    .filter(({ id, values }) => shown(id) && listable(values.claim))
    .flatMap((record) => record.values.who.filter(shown).map((scholar): Row => ({ ...record, scholar })));
  return tableOf(
    {
      name: "positions",
      doc: "One row for each position that a scholar took on a claim, earlier ones among them.",
    },
    columns(model),
    rows,
  );
}

function columns({ graph, judgement }: Reported): readonly ColumnOf<Row>[] {
  const latest = new Set(
    latestPositions(graph, judgement.counts).map((one) => `${one.position}\n${one.scholar}`),
  );
  return [
    { name: "id", holds: "text", doc: "The name of the record in the corpus.", cell: ({ id }) => id },
    { name: "scholar", holds: "text", doc: "The id of the scholar.", cell: ({ scholar }) => scholar },
    {
      name: "scholar-name",
      holds: "text",
      doc: "What the scholar is called.",
      cell: ({ scholar }) => labelOf(graph, scholar),
    },
    { name: "claim", holds: "text", doc: "The id of the claim.", cell: ({ values }) => values.claim },
    {
      name: "claim-text",
      holds: "text",
      doc: "The claim in a sentence.",
      cell: ({ values }) => {
        const claim = graph.records.get(values.claim);
        return claim?.list === "claims" ? claim.values.text : null;
      },
    },
    {
      name: "stance",
      holds: "text",
      doc: "holds, rejects, doubts or leaves-open.",
      cell: ({ values }) => values.stance,
    },
    {
      name: "latest",
      holds: "truth",
      doc: "Whether it is the scholar's latest position on that claim.",
      cell: ({ id, scholar }) => latest.has(`${id}\n${scholar}`),
    },
    {
      name: "certainty",
      holds: "text",
      doc: "certain, probable, possible or unlikely, as the author puts it.",
      cell: ({ values }) => values.certainty ?? null,
    },
    {
      name: "words",
      holds: "text",
      doc: "The scholar's own words.",
      cell: ({ values }) => values.words ?? null,
    },
    {
      name: "year",
      holds: "text",
      doc: "When it was said, in EDTF: -0479 is 480 BC.",
      cell: ({ id, values }) => yearIn(values.year ?? graph.provenance(id).year),
    },
    ...sourceColumns(graph),
  ];
}
