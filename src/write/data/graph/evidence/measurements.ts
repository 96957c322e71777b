import type { MeasurementRecord } from "../../../../link/graph.ts";
import { putBelief, putProposition } from "../beliefs.ts";
import { putActors, putSaid, putTypes, putYear } from "../cited.ts";
import { part, plain } from "../ground.ts";
import type { Ground } from "../ground.ts";
import { typed } from "../sheet.ts";
import type { Node } from "../sheet.ts";
import { dimensionConcept, putQuantity } from "./dimension.ts";

type Values = MeasurementRecord["values"];

/**
 * The measurements. On the thing itself it is an E16 of one thing and one dimension, between landmarks an S21 of a relative
 * dimension; a figure taken from a cast, a picture or a report, or an estimate of the original, is an S6: to measure takes the
 * presence of the thing.
 */
export function putMeasurements(ground: Ground): void {
  const { graph, sheet, shown, node, label } = ground;
  for (const { id, values } of graph.list("measurements")) {
    if (!shown(id) || !shown(values.of)) continue;
    const [act, thing] = [node(id), node(values.of)];
    const dimension = part(act, "dimension");
    putAct(ground, act, thing, dimension, values);
    sheet.has(act, "rdfs:label", label(id));
    putTypes(ground, act, `vr:${values.basis ?? "basis-not-stated"}`);
    putActors(ground, act, id);
    putYear(ground, act, values.year);
    putSaid(ground, act, values);
    putHow(ground, act, values);
    // From smallest to largest of several things is no error of one.
    putQuantity(ground, dimension, values.spread === true ? { ...values.value, u: null } : values.value);
    sheet.has(dimension, "crm:P2_has_type", dimensionConcept(ground, values.dimension));
    putTypes(
      ground,
      dimension,
      `vr:${values.state ?? "complete"}`,
      ...(values.spread === true ? (["vr:spread"] as const) : []),
    );
    const that = putProposition(ground, part(act, "proposition"), {
      text: label(id),
      about: [thing],
      states: { of: thing, property: "vr:has-dimension", value: dimension },
    });
    putBelief(ground, act, part(act, "belief"), { that, held: "TRUE" });
  }
}

function putAct({ sheet }: Ground, act: Node, thing: Node, dimension: Node, values: Values): void {
  sheet.has(act, "vr:concerns", thing);
  if (values.basis !== "autopsy" || values.state === "reconstructed") {
    sheet.is(act, "crmsci:S6_Data_Evaluation", "crminf:I5_Inference_Making");
    sheet.has(act, "crmsci:O11_described", thing);
    sheet.has(act, "crmsci:O10_assigned_dimension", dimension);
    return;
  }
  if (values.between === undefined) {
    sheet.is(act, "crm:E16_Measurement");
    sheet.has(act, "crm:P39_measured", thing);
    sheet.has(act, "crm:P40_observed_dimension", dimension);
    return;
  }
  sheet.is(act, "crmsci:S21_Measurement");
  sheet.is(dimension, "crmsci:S25_Relative_Dimension");
  landmarksOf(values.between).forEach((name, place) => {
    const landmark = part(act, `landmark-${place + 1}`);
    sheet.is(landmark, "crm:E26_Physical_Feature");
    sheet.has(landmark, "rdfs:label", plain(name));
    sheet.has(thing, "crm:P46_is_composed_of", landmark);
    sheet.has(act, "crmsci:O24_measured", landmark);
    sheet.has(dimension, "crmsci:O33_is_relative_to", landmark);
  });
  sheet.has(act, "crmsci:O39_observed_dimension", dimension);
}

/** The landmarks of a text such as `hole 1 to hole 2`; the whole text where it does not part in two. */
function landmarksOf(between: string): readonly string[] {
  const parts = between.split(/\s+(?:to|–|—|→)\s+/u).map((one) => one.trim());
  return parts.length === 2 && parts.every((one) => one !== "") ? parts : [between];
}

function putHow(ground: Ground, act: Node, values: Values): void {
  const { graph, sheet, shown, citable, node, words } = ground;
  if (values.between !== undefined) sheet.has(act, "vr:taken-between", words(values.between));
  if (values.instrument !== undefined) sheet.has(act, "vr:instrument", words(values.instrument));
  if (values.condition !== undefined) sheet.has(act, "vr:condition", words(values.condition));
  if (values["to-nearest"]) sheet.has(act, "vr:rounded-to", plain(values["to-nearest"].text));
  if (values.n !== undefined) sheet.has(act, "vr:number-of-readings", typed(String(values.n), "xsd:integer"));
  sheet.has(act, "vr:single-reading", ...(values.readings ?? []).map(({ text }) => plain(text)));
  const shared = values["shares-error"];
  if (shared) sheet.has(act, "vr:shares-error-with", plain(`${shared.with}: ${shared.of.text}`));
  const { repeats } = values;
  if (repeats !== undefined && (graph.sources.has(repeats) ? citable : shown)(repeats))
    sheet.has(act, "vr:repeats", node(repeats));
}
