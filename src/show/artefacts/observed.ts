import type { Id } from "../../base/finding.ts";
import { yearWords } from "../../base/date/year-words.ts";
import type { Text } from "../../base/text/said/said.ts";
import type { Standing } from "../../judge/judge.ts";
import type { ObservationRecord } from "../../link/graph.ts";
import { authorOrCorpus, labelText } from "../../link/names/label.ts";
import { citedPieces } from "../pages/fields.ts";
import type { Piece } from "../pages/pieces.ts";
import type { Reported } from "../report/report.ts";
import { shownUnder, withheldIn } from "../withhold.ts";

/** How a trace was found on a thing, as the format has it. */
export type Presence = "true" | "false" | "unclear" | "not-reported";

/** An observation on a thing or on a part of it. */
export interface Observed {
  readonly id: Id;
  readonly text: string;
  readonly feature: string | null;
  readonly present: Presence;
  readonly basis: string | null;
  readonly year: Text | null;
  readonly by: Text;
  readonly from: readonly Piece[];
  readonly standing: Standing | null;
  /** The parts or other things it is of, where it is not of the thing alone. */
  readonly on: readonly { readonly id: Id; readonly name: Text }[];
}

/** What was seen, looked for or passed over on a thing and its parts: on itself first, then as the corpus has it. */
export function observedOn(model: Reported, id: Id): readonly Observed[] {
  const { graph, judgement } = model;
  const withheld = withheldIn(graph);
  const shown = shownUnder(model);
  const things = new Set(graph.withParts(id).filter((one) => !withheld(one)));
  const records = graph
    .list("observations")
    .filter((one) => shown(one.id) && one.values.of.some((thing) => things.has(thing)));
  const isOwn = (one: ObservationRecord): boolean => one.values.of.includes(id);
  return [...records.filter(isOwn), ...records.filter((one) => !isOwn(one))].map(({ id: name, values }) => {
    const year = values.year ?? graph.provenance(name).year;
    const of = values.of.filter((thing) => !withheld(thing));
    return {
      id: name,
      text: values.text,
      feature: values.feature ?? null,
      present: values.present ?? "true",
      basis: values.basis ?? null,
      year: year === null ? null : yearWords(year),
      by: authorOrCorpus(graph, name),
      from: citedPieces(graph, values.from ?? []),
      standing: judgement.standings.get(name) ?? null,
      on:
        of.length === 1 && of[0] === id
          ? []
          : of.map((thing) => ({ id: thing, name: labelText(graph, thing) })),
    };
  });
}
