import { parseEdtf } from "../../../base/date/edtf.ts";
import { yearText } from "../../../base/date/year.ts";
import { distinct } from "../../../base/order.ts";
import type { Id } from "../../../base/finding.ts";
import type { Text } from "../../../base/text/said/said.ts";
import { labelText } from "../../../link/names/label.ts";
import type { Graph, Linked, MeasurementRecord } from "../../../link/graph.ts";
import { fieldLines } from "../../pages/fields.ts";
import type { FieldLine } from "../../pages/fields.ts";
import type { Reported } from "../../report/report.ts";
import { shownUnder, withheldIn } from "../../withhold.ts";
import { scaleName } from "./record.ts";

/** A thing, a scholar or a measurement by its name. */
export interface Called {
  readonly id: Id;
  readonly name: Text;
}

/** A picture with what is known of it. */
export interface Picture {
  readonly id: Id;
  readonly name: Text;
  readonly file: string;
  readonly fields: readonly FieldLine[];
  /** What has to be known before anybody prints it, and is not. */
  readonly lacks: readonly ("credit" | "licence")[];
  /** Whether it may appear in what is written for others. */
  readonly isPublished: boolean;
}

/** A picture on a page of its own, with what measuring on it takes. */
export interface ImagePage extends Picture {
  readonly kind: string | null;
  readonly scale: string | null;
  readonly of: readonly Called[];
  /** What it shows, with the parts of that. */
  readonly things: readonly Called[];
  /** The year that it shows things in, else that in which it was printed; empty where neither is known. */
  readonly year: string;
  readonly hasSource: boolean;
  readonly scholars: readonly Called[];
  /** Names of dimensions that are lengths, and of those that are angles. */
  readonly lengths: readonly string[];
  readonly angles: readonly string[];
  /** Lengths of these things by which a scale can be set. */
  readonly known: readonly Called[];
  /** What was measured on it by its scale. */
  readonly measured: readonly Called[];
}

/** The pictures of a thing that may be shown. */
export function picturesOf(model: Reported, thing: Id): readonly Picture[] {
  const shown = shownUnder(model);
  return model.graph
    .list("images")
    .filter((one) => one.values.of.includes(thing) && shown(one.id))
    .map((one) => pictureOf(model.graph, one));
}

function pictureOf(graph: Graph, record: Linked<"images">): Picture {
  const { file, credit, licence, publish } = record.values;
  return {
    id: record.id,
    name: labelText(graph, record.id),
    file,
    fields: fieldLines(graph, record, "").filter((field) => field.name !== "of" && field.name !== "publish"),
    lacks: [
      ...(credit === undefined ? (["credit"] as const) : []),
      ...(licence === undefined ? (["licence"] as const) : []),
    ],
    isPublished: publish === true,
  };
}

/** The page of a picture; null where there is none of that name that may be shown. */
export function imagePage(model: Reported, id: Id): ImagePage | null {
  const { graph } = model;
  const record = graph.records.get(id);
  if (record?.list !== "images" || !shownUnder(model)(id)) return null;
  const withheld = withheldIn(graph);
  const called = (one: Id): Called => ({ id: one, name: labelText(graph, one) });
  const of = record.values.of.filter((one) => !withheld(one));
  const things = [...new Set(of.flatMap((one) => graph.withParts(one)))].filter((one) => !withheld(one));
  const measurements = graph.list("measurements").filter((one) => shownUnder(model)(one.id));
  const { kind = null, scale = null } = record.values;
  return {
    ...pictureOf(graph, record),
    kind,
    scale,
    of: of.map(called),
    things: things.map(called),
    year: yearOf(graph, record),
    hasSource: (record.values.from ?? []).length > 0,
    scholars: graph.list("scholars").flatMap((one) => (withheld(one.id) ? [] : [called(one.id)])),
    lengths: dimensionsOfKind(graph, measurements, "length"),
    angles: dimensionsOfKind(graph, measurements, "angle"),
    known: measurements
      .filter((one) => things.includes(one.values.of) && tellsLength(one))
      .map(({ id: one }) => called(one)),
    measured: measurements
      .filter((one) => one.values["shares-error"]?.with === scaleName(id))
      .map(({ id: one }) => called(one)),
  };
}

/** The thing is seen as it was when the picture was made. */
function yearOf(graph: Graph, record: Linked<"images">): string {
  const when = record.values.when === undefined ? null : parseEdtf(record.values.when);
  const made = when && "ok" in when ? (when.ok.high ?? when.ok.low) : null;
  const year = made ?? graph.provenance(record.id).year;
  return year === null ? "" : yearText(year);
}

function tellsLength({ values }: MeasurementRecord): boolean {
  const { state = "complete", spread, value } = values;
  return value.kind === "length" && value.u !== null && state === "complete" && spread !== true;
}

function dimensionsOfKind(
  graph: Graph,
  measurements: readonly MeasurementRecord[],
  kind: "length" | "angle",
): readonly string[] {
  const names = [
    ...graph.settings.dimensions.map((one) => one.name),
    ...measurements.map((one) => graph.dimensionName(one.values.dimension)),
  ];
  return distinct(names).filter((name) => graph.dimensionKind(name) === kind);
}
