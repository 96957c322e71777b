import { inEnglish } from "../../../../base/text/said/english.ts";
import { first, say } from "../../../../base/text/said/said.ts";
import type { Id } from "../../../../base/finding.ts";
import { newId } from "../../../../link/edit/new-id.ts";
import type { Graph } from "../../../../link/graph.ts";
import { labelOf } from "../../../../link/names/label.ts";
import type { Written, WrittenMap } from "../../../../read/edit/written.ts";
import { measurableIn, picturedIn, visibleIn } from "../sheet/keys.ts";
import { sightOf } from "../sheet/sight.ts";
import { fieldsOf, nothingMeasured } from "./filled.ts";
import { hasImage, hasMeasured, hasSeen } from "./already.ts";
import { outcomeRecords } from "./outcome.ts";
import type { ReadingsTold } from "./readings.ts";
import { isOpenThing, signature, visitOf, withoutEmpty } from "./signable.ts";
import type { Naming, Signable } from "./signable.ts";

/** The records that a visit adds, by their lists. */
export interface Coming {
  readonly records: Readonly<Record<VisitList, readonly WrittenMap[]>>;
  readonly counts: Readonly<Record<VisitList, number>>;
  /** Keys of rows that the corpus has already. */
  readonly already: readonly string[];
}

/** The lists that a visit adds to. */
export type VisitList = "measurements" | "observations" | "images" | "arguments";

/** The records of a visit, each as one would write it by hand. */
export function recordsFor(graph: Graph, given: Signable): Coming {
  const taken = new Set<Id>();
  const naming: Naming = (list, words) => {
    const id = newId(graph, list, { short: words }, taken);
    taken.add(id);
    return id;
  };
  const already: string[] = [];
  const measurements = given.measured.flatMap(([key, told]) => {
    const record = measurement(graph, key, told, given);
    if (!record || hasMeasured(graph, record, given.signed.day)) {
      if (record) already.push(key);
      return [];
    }
    const { of, dimension } = record;
    return [
      { id: naming("measurements", `${lastOf(of)} ${String(dimension)} ${given.signed.day}`), ...record },
    ];
  });
  const seen = Object.keys(given.filled.looked).flatMap((key) => {
    const record = observation(graph, key, given);
    if (!record || hasSeen(graph, record, given.signed.day)) {
      if (record) already.push(key);
      return [];
    }
    const { of, feature } = record;
    return [
      { id: naming("observations", `${lastOf(of)} ${String(feature)} ${given.signed.day}`), ...record },
    ];
  });
  const found = outcomeRecords(graph, given, naming);
  const images = Object.keys(given.filled.pictures).flatMap((key) => image(graph, key, given, naming));
  const records = {
    measurements,
    observations: [...seen, ...found.observations],
    images,
    arguments: found.arguments,
  };
  const counts = {
    measurements: measurements.length,
    observations: records.observations.length,
    images: images.length,
    arguments: found.arguments.length,
  };
  return { records, counts, already };
}

function measurement(
  graph: Graph,
  key: string,
  told: ReadingsTold,
  { filled, signed }: Signable,
): WrittenMap | null {
  const about = measurableIn(key);
  if (!about || told.value === null) return null;
  const fields = fieldsOf(filled.measured, key) ?? nothingMeasured;
  const between = (fields.between ?? about.between).trim();
  const several = told.readings.length > 1;
  const early = fields.seen
    ? inEnglish(say`Earlier values were looked at before all readings were taken.`)
    : "";
  return withoutEmpty({
    of: about.of,
    dimension: graph.dimensionName(about.dimension),
    value: told.value,
    state: fields.state === "complete" ? "" : fields.state,
    basis: filled.basis === "" ? "autopsy" : filled.basis,
    between,
    instrument: (fields.instrument.trim() === "" ? filled.instrument : fields.instrument).trim(),
    "to-nearest": told.nearest,
    ...(several ? { readings: told.readings, n: String(told.readings.length) } : {}),
    condition: (fieldsOf(filled.conditions, about.of) ?? "").trim(),
    ...signature(signed),
    note: [visitOf(signed), early, fields.note.trim()].filter((one) => one !== "").join(" "),
  });
}

function observation(graph: Graph, key: string, { filled, signed }: Signable): WrittenMap | null {
  const about = visibleIn(key);
  const fields = fieldsOf(filled.looked, key);
  const known = about?.of.every((id) => isOpenThing(graph, id)) ?? false;
  if (!about || !fields || fields.present === "" || !known || about.of.length === 0) return null;
  const own = fields.text.trim();
  const text = own === "" ? inEnglish(first(say`${about.feature}: ${sightOf(fields.present)}.`)) : own;
  const early = fields.seen ? inEnglish(say`What others had seen was looked at before.`) : "";
  return withoutEmpty({
    of: about.of.length === 1 ? (about.of[0] ?? "") : about.of,
    text,
    feature: about.feature,
    present: fields.present,
    basis: filled.basis === "" ? "autopsy" : filled.basis,
    ...signature(signed),
    note: [visitOf(signed), early].filter((one) => one !== "").join(" "),
  });
}

function image(
  graph: Graph,
  key: string,
  { filled, signed }: Signable,
  naming: Naming,
): readonly WrittenMap[] {
  const of = picturedIn(key);
  const { file = "", scale = "" } = fieldsOf(filled.pictures, key) ?? {};
  const name = file.trim().replaceAll("\\", "/");
  if (of === null || name === "" || !isOpenThing(graph, of)) return [];
  const path = name.startsWith("images/") ? name : `images/${name}`;
  if (hasImage(graph, of, path)) return [];
  return [
    withoutEmpty({
      id: naming("images", `${lastOf(of)} photograph ${signed.day}`),
      of,
      file: path,
      kind: "photograph",
      scale: scale.trim(),
      "made-by": signed.by === null ? "" : labelOf(graph, signed.by),
      when: signed.day,
    }),
  ];
}

function lastOf(of: Written | undefined): string {
  const one = typeof of === "string" ? of : Array.isArray(of) ? String(of[0] ?? "") : "";
  return one.split("/").at(-1) ?? "";
}
