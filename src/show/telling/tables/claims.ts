import type { Id } from "../../../base/finding.ts";
import { latestPositions } from "../../../judge/argument.ts";
import type { Stance } from "../../../judge/argument.ts";
import type { ClaimRecord } from "../../../link/graph.ts";
import type { Reported } from "../../report/report.ts";
import { listedUnder, withheldIn } from "../../withhold.ts";
import { namesOf, sourceColumns } from "./sources.ts";
import { listed, tableOf } from "./table.ts";
import type { ColumnOf, DataTable } from "./table.ts";

/** Every claim that may be listed, with its standing and what it stands on. */
export function claimTable(model: Reported): DataTable {
  const { graph } = model;
  const listable = listedUnder(model);
  return tableOf(
    { name: "claims", doc: "One row for each claim, with what follows of it from the record." },
    [...said(model), ...standing(model), ...taken(model)],
    graph.list("claims").filter(({ id }) => listable(id)),
  );
}

function said({ graph }: Reported): readonly ColumnOf<ClaimRecord>[] {
  const withheld = withheldIn(graph);
  const questions = graph.list("questions").filter(({ id }) => !withheld(id));
  return [
    { name: "id", holds: "text", doc: "The name of the record in the corpus.", cell: ({ id }) => id },
    { name: "text", holds: "text", doc: "The claim in a sentence.", cell: ({ values }) => values.text },
    {
      name: "answers",
      holds: "text",
      doc: "The ids of the questions that it answers.",
      cell: ({ id }) =>
        listed(questions.filter(({ values }) => values.answers.includes(id)).map((one) => one.id)),
    },
    {
      name: "about",
      holds: "text",
      doc: "The ids of the things that it is about.",
      cell: ({ values }) => listed((values.about ?? []).filter((one) => !withheld(one))),
    },
  ];
}

function standing({ graph, judgement, footings, restsOn }: Reported): readonly ColumnOf<ClaimRecord>[] {
  const withheld = withheldIn(graph);
  return [
    {
      name: "standing",
      holds: "text",
      doc: "stands, open (a live contradiction decides it), falls or unsupported.",
      cell: ({ id }) => judgement.standings.get(id) ?? null,
    },
    {
      name: "footing",
      holds: "text",
      doc: "What arguments for it reach, attacks left aside: observed, silent, attested or bare.",
      cell: ({ id }) => footings.get(id) ?? null,
    },
    {
      name: "rests-on",
      holds: "text",
      doc: "Artefacts, sources and scholars without each of which it would not stand; told of answers to questions.",
      cell: ({ id }) => listed((restsOn.get(id) ?? []).filter((one) => !withheld(one))),
    },
    {
      name: "not-both-with",
      holds: "text",
      doc: "The ids of claims that cannot be right together with it.",
      cell: ({ id }) => listed(graph.rivalsOf(id).filter((one) => !withheld(one) && judgement.listed(one))),
    },
  ];
}

function taken({ graph, judgement }: Reported): readonly ColumnOf<ClaimRecord>[] {
  const withheld = withheldIn(graph);
  const latest = latestPositions(graph, judgement.counts).filter((one) => !withheld(one.position));
  const who = (claim: Id, stance: Stance["stance"]): string | null =>
    namesOf(
      graph,
      latest.filter((one) => one.claim === claim && one.stance === stance).map((one) => one.scholar),
    );
  return [
    {
      name: "held-by",
      holds: "text",
      doc: "Scholars whose latest position holds it.",
      cell: ({ id }) => who(id, "holds"),
    },
    {
      name: "rejected-by",
      holds: "text",
      doc: "Scholars whose latest position rejects it.",
      cell: ({ id }) => who(id, "rejects"),
    },
    {
      name: "doubted-by",
      holds: "text",
      doc: "Scholars whose latest position doubts it.",
      cell: ({ id }) => who(id, "doubts"),
    },
    {
      name: "left-open-by",
      holds: "text",
      doc: "Scholars whose latest position leaves it open.",
      cell: ({ id }) => who(id, "leaves-open"),
    },
    ...sourceColumns(graph).slice(0, 1),
  ];
}
