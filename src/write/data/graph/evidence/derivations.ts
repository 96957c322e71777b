import type { Id } from "../../../../base/finding.ts";
import { canonical, isList } from "../../../../base/json.ts";
import type { Json } from "../../../../base/json.ts";
import { inEnglish } from "../../../../base/text/said/english.ts";
import type { DerivedNumber, Derived } from "../../../../derive/derived/derived.ts";
import { siSymbols } from "../../../../derive/derived/derived.ts";
import type { QuantityKind } from "../../../../base/quantity.ts";
import type { DerivationRecord } from "../../../../link/graph.ts";
import { decimal, openUnits } from "../../terms/units.ts";
import { putBelief, putProposition } from "../beliefs.ts";
import { putTypes } from "../cited.ts";
import { part, plain } from "../ground.ts";
import type { Ground } from "../ground.ts";
import { typed } from "../sheet.ts";
import type { Node } from "../sheet.ts";
import { putUnit } from "./dimension.ts";

/**
 * The computations: a method applied to measurements and observations, with its settings, the key of the run and its numbers, and
 * what the compilers said beforehand that these would mean for which claim. One that gave no number says why.
 */
export function putDerivations(ground: Ground): void {
  const { graph, sheet, shown, node, words, label, compilers, model } = ground;
  for (const record of graph.list("derivations")) {
    const { id, values } = record;
    const derived = model.derivations.byId.get(id);
    if (!shown(id) || !derived) continue;
    const activity = node(id);
    sheet.is(activity, "prov:Activity", "crm:E7_Activity");
    sheet.has(activity, "rdfs:label", label(id));
    if (values.text !== undefined) sheet.has(activity, "crm:P3_has_note", words(values.text));
    if (values.note !== undefined) sheet.has(activity, "crm:P3_has_note", words(values.note));
    sheet.has(activity, "prov:wasAssociatedWith", methodOf(ground, record));
    putSettings(ground, activity, record);
    if (derived.run) sheet.has(activity, "vr:run-key", plain(derived.run.key));
    for (const one of usedBy(ground, derived)) {
      sheet.is(one, "prov:Entity");
      sheet.has(activity, "prov:used", one);
    }
    if (derived.status !== "computed") {
      putTypes(ground, activity, "vr:not-computed");
      if (derived.why !== null)
        sheet.has(activity, "crm:P3_has_note", { words: inEnglish(derived.why), lang: "en" });
      continue;
    }
    sheet.is(activity, "crmsci:S6_Data_Evaluation", "crminf:I5_Inference_Making");
    sheet.has(activity, "crm:P14_carried_out_by", compilers);
    sheet.has(activity, "crminf:J3_applied", methodOf(ground, record));
    const things = thingsOf(ground, derived).map(node);
    sheet.has(activity, "crmsci:O11_described", ...things);
    const numbers = Object.entries(derived.numbers).map(([name, number]) =>
      putNumber(ground, activity, name, number),
    );
    sheet.has(activity, "crmsci:O10_assigned_dimension", ...numbers);
    putConclusions(ground, activity, derived, things);
  }
}

/** What was computed on: of a measurement its dimension, which is the number; anything else as a whole. */
function usedBy({ graph, shown, node }: Ground, { used }: Derived): readonly Node[] {
  return used
    .filter(shown)
    .map((id) => (graph.records.get(id)?.list === "measurements" ? part(node(id), "dimension") : node(id)));
}

/** The things that the measurements and observations used are of. */
function thingsOf({ graph, shown }: Ground, { used }: Derived): readonly Id[] {
  const things = used.filter(shown).flatMap((id): readonly Id[] => {
    const record = graph.records.get(id);
    if (record?.list === "measurements") return [record.values.of];
    return record?.list === "observations" ? record.values.of : record?.list === "artefacts" ? [id] : [];
  });
  return [...new Set(things)].filter(shown);
}

/** The plug-in, in the version that was run where it was run: a piece of software, and the logic that was applied. */
function methodOf({ sheet, named, asked }: Ground, { values }: DerivationRecord): Node {
  const version = asked.versions.get(values.plugin);
  const name = version === undefined ? values.plugin : `${values.plugin} ${version}`;
  const method = named("method", name);
  sheet.is(method, "prov:SoftwareAgent", "crminf:I3_Inference_Logic");
  sheet.has(method, "rdfs:label", plain(name));
  if (version !== undefined) sheet.has(method, "owl:versionInfo", plain(version));
  return method;
}

/** The settings as recorded; none where they name something that may not be shown. */
function putSettings(ground: Ground, activity: Node, { values }: DerivationRecord): void {
  const { graph, sheet, shown, citable } = ground;
  if (values.looks !== undefined) sheet.has(activity, "vr:looks", typed(String(values.looks), "xsd:integer"));
  const { parameters } = values;
  if (parameters === undefined) return;
  const hidden = textsIn(parameters).some((text) => {
    const id = text.split(".")[0] ?? "";
    const unit = graph.settings.units.find(({ name }) => name === text);
    if (unit && unit.from.length > 0 && !unit.from.some(citable)) return true;
    return [text, id].some((one) => graph.records.has(one) && !shown(one));
  });
  if (!hidden) sheet.has(activity, "vr:settings", plain(canonical(parameters)));
}

function textsIn(json: Json): readonly string[] {
  if (json === null || typeof json !== "object") return [String(json)];
  return (isList(json) ? json : Object.values(json)).flatMap(textsIn);
}

function putNumber(ground: Ground, activity: Node, name: string, number: DerivedNumber): Node {
  const { sheet } = ground;
  const node = part(activity, `number-${name}`);
  const kind = kindOf(number);
  const { perSI } = openUnits[kind];
  sheet.is(node, "crm:E54_Dimension", "prov:Entity");
  putTypes(ground, node, "vr:computed-number");
  sheet.has(node, "vr:number-name", plain(name));
  sheet.has(node, "prov:wasGeneratedBy", activity);
  const { value, low, high } = number;
  sheet.has(node, "crm:P90_has_value", typed(decimal(value * perSI), "xsd:decimal"));
  if (low !== null)
    sheet.has(node, "crm:P90a_has_lower_value_limit", typed(decimal(low * perSI), "xsd:decimal"));
  if (high !== null)
    sheet.has(node, "crm:P90b_has_upper_value_limit", typed(decimal(high * perSI), "xsd:decimal"));
  putUnit(ground, node, kind);
  return node;
}

/** The kind of quantity that a number is, by its unit in the SI. */
function kindOf({ unit, kind }: DerivedNumber): QuantityKind {
  if (kind === "count") return "count";
  const found = Object.entries(siSymbols).find(([, symbol]) => symbol === unit && symbol !== "1");
  return (found?.[0] ?? "number") as QuantityKind;
}

/** That the numbers came out so, and what was said beforehand that this would mean. */
function putConclusions(ground: Ground, activity: Node, derived: Derived, things: readonly Node[]): void {
  const { node, label, listed } = ground;
  const that = putProposition(ground, part(activity, "proposition"), {
    text: label(derived.id),
    about: things,
    states: null,
  });
  putBelief(ground, activity, part(activity, "belief"), { that, held: "TRUE" });
  derived.bearings.forEach(({ claim, bearing, strength }, place) => {
    if (!listed(claim)) return;
    const belief = part(activity, `bearing-${place + 1}`);
    const held = bearing === "supports" ? "TRUE" : bearing === "disputes" ? "FALSE" : "UNKNOWN";
    putBelief(ground, activity, belief, { that: node(claim), held });
    putTypes(ground, belief, `vr:${strength}`);
  });
}
