import { edtfYear } from "../../../base/date/edtf.ts";
import type { Id } from "../../../base/finding.ts";
import { labelOf } from "../../../link/names/label.ts";
import type { Graph } from "../../../link/graph.ts";
import type { Citation } from "../../../read/grammar/field.ts";
import { withheldIn } from "../../withhold.ts";
import { listed } from "./table.ts";
import type { ColumnOf } from "./table.ts";

/** As much of a record as says where it was said. */
export interface Sourced {
  readonly id: Id;
  readonly values: { readonly from?: readonly Citation[]; readonly via?: Citation };
}

/** The columns that say in which source a record stands, and through which it was read. */
export function sourceColumns(graph: Graph): readonly ColumnOf<Sourced>[] {
  return [
    {
      name: "source",
      holds: "text",
      doc: "Where it is said: the key of the source in the bibliography, with the place in it.",
      cell: ({ values }) => listed((values.from ?? []).flatMap((one) => placesOf(graph, one))),
    },
    {
      name: "via",
      holds: "text",
      doc: "The source it was really read in, where it is second-hand.",
      cell: ({ id }) => listed(graph.provenance(id).via.filter(not(withheldIn(graph)))),
    },
  ];
}

/** The year of something in EDTF, where 480 BC is -0479. */
export function yearIn(year: number | null | undefined): string | null {
  return year === null || year === undefined ? null : edtfYear(year);
}

/** What scholars are called, those left out that are withheld. */
export function namesOf(graph: Graph, scholars: readonly Id[]): string | null {
  return listed(scholars.filter(not(withheldIn(graph))).map((one) => labelOf(graph, one)));
}

/** The key and the place behind a citation; a passage's are its own. */
function placesOf(graph: Graph, { key, locator }: Citation): readonly string[] {
  if (withheldIn(graph)(key)) return [];
  const record = graph.records.get(key);
  if (record?.list !== "passages") return [locator === null ? key : `${key} ${locator}`];
  const { from, at } = record.values;
  return (from ?? []).flatMap((one) => placesOf(graph, { key: one.key, locator: at }));
}

const not =
  (holds: (id: Id) => boolean) =>
  (id: Id): boolean =>
    !holds(id);
