import type { Id } from "../../base/finding.ts";
import type { Standing } from "../../judge/judge.ts";
import { wholesOf } from "../../judge/rules/measurements/compare.ts";
import type { ArtefactRecord } from "../../link/graph.ts";
import type { Text } from "../../base/text/said/said.ts";
import { labelText } from "../../link/names/label.ts";
import { companionFor } from "../../link/origin/companions.ts";
import type { Companion } from "../../read/settings/companions/corpus.ts";
import { fieldLines } from "../pages/fields.ts";
import type { FieldLine } from "../pages/fields.ts";
import { claimText } from "../pages/question.ts";
import type { Reported } from "../report/report.ts";
import { citableUnder, placeWithheld, shownUnder, withheldIn } from "../withhold.ts";
import { dimensionsOf } from "./dimensions.ts";
import type { Measured } from "./dimensions.ts";
import { drawingWithParts } from "./drawing/drawing.ts";
import type { Drawing } from "./drawing/drawing.ts";
import { eventsOfThing } from "./history/events.ts";
import type { Event } from "./history/events.ts";
import { looksAt } from "./history/looks.ts";
import type { Look } from "./history/looks.ts";
import { observedOn } from "./observed.ts";
import type { Observed } from "./observed.ts";
import { picturesOf } from "./picture/page.ts";
import type { Picture } from "./picture/page.ts";
import { labelOfThing } from "./tree.ts";

/** The name of a thing, leading to its page. */
export interface Named {
  readonly id: Id;
  readonly name: Text;
}

/** An answer that would not stand without a thing, and the part of it that it hangs on, unless that is withheld. */
export interface Hanging {
  readonly claim: Id;
  readonly text: string;
  readonly standing: Standing;
  readonly part: Named | null;
}

/** Everything that is known of one thing. */
export interface ArtefactPage {
  readonly id: Id;
  readonly name: Text;
  readonly kind: string | null;
  readonly wholes: readonly Named[];
  readonly parts: readonly Named[];
  /** What it is: numbers, material, dates, where found and kept, notes. */
  readonly facts: readonly FieldLine[];
  /** Who lets you see it. */
  readonly access: readonly FieldLine[];
  readonly placeWithheld: boolean;
  /** The other corpus that it is taken from; null for a thing of this one. */
  readonly takenFrom: Companion | null;
  readonly drawing: Drawing | null;
  readonly dimensions: readonly Measured[];
  readonly observed: readonly Observed[];
  readonly events: readonly Event[];
  readonly looks: readonly Look[];
  readonly images: readonly Picture[];
  readonly hanging: readonly Hanging[];
}

/** Fields that the page says elsewhere, or not at all. */
const elsewhere: readonly string[] = [
  "name",
  "kind",
  "part of",
  "history",
  "shape",
  "access",
  "withhold location",
];

/** The page of one thing; null where there is none of that name. */
export function artefactPage(model: Reported, id: Id): ArtefactPage | null {
  const { graph } = model;
  const record = graph.records.get(id);
  const withheld = withheldIn(graph);
  if (record?.list !== "artefacts" || !shownUnder(model)(id)) return null;
  const named = (one: Id): Named => ({ id: one, name: labelText(graph, one) });
  const wholes = wholesOf(id, graph)
    .slice(1)
    .filter((one) => !withheld(one));
  const name = labelOfThing(graph, record);
  const fields = fieldLines(graph, datedUnder(model, record), name);
  const hidden = placeWithheld(model.graph, id);
  const events = eventsOfThing(model, id);
  return {
    id,
    name,
    kind: record.values.kind ?? null,
    wholes: wholes.map(named).reverse(),
    parts: graph
      .withParts(id)
      .filter((one) => graph.wholeOf.get(one) === id && !withheld(one))
      .map(named),
    facts: fields.filter(
      (field) => !elsewhere.includes(field.name) && !(hidden && field.name === "found at"),
    ),
    access: fields.filter((field) => field.name === "access"),
    placeWithheld: hidden,
    takenFrom: companionFor(graph, id),
    drawing: drawingWithParts(model, id),
    dimensions: dimensionsOf(model, id),
    observed: observedOn(model, id),
    events,
    looks: looksAt(model, id, events),
    images: picturesOf(model, id),
    hanging: hangingOn(model, id),
  };
}

/** The thing with the dates that somebody gives it who is in print by the year of the lens. */
function datedUnder(model: Reported, record: ArtefactRecord): ArtefactRecord {
  const citable = citableUnder(model);
  const { date, ...values } = record.values;
  const given = (date ?? []).filter(
    ({ from = [] }) => from.length === 0 || from.some((one) => citable(one.key)),
  );
  return { ...record, values: given.length > 0 ? { ...values, date: given } : values };
}

/** Answers that rest on the thing or on a part of it: without the whole they would not stand either. */
function hangingOn({ graph, judgement, restsOn }: Reported, id: Id): readonly Hanging[] {
  const withheld = withheldIn(graph);
  const things = new Set(graph.withParts(id));
  return [...restsOn].flatMap(([claim, losses]) => {
    const thing = losses.find((one) => things.has(one));
    const standing = judgement.standings.get(claim);
    if (thing === undefined || standing === undefined || withheld(claim)) return [];
    const part = thing === id || withheld(thing) ? null : { id: thing, name: labelText(graph, thing) };
    return [{ claim, text: claimText(graph, claim), standing, part }];
  });
}
