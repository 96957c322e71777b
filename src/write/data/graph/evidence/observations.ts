import type { ObservationRecord } from "../../../../link/graph.ts";
import type { HeldToBe } from "../../terms/concepts.ts";
import { putBelief, putProposition } from "../beliefs.ts";
import { ownConcept, putActors, putSaid, putTypes, putYear } from "../cited.ts";
import { part } from "../ground.ts";
import type { Ground } from "../ground.ts";
import { at } from "../sheet.ts";
import type { Known, Words } from "../sheet.ts";

type Present = NonNullable<ObservationRecord["values"]["present"]>;

const told: Readonly<Record<Present, { readonly held: HeldToBe; readonly type: Known }>> = {
  true: { held: "TRUE", type: "vr:seen" },
  false: { held: "FALSE", type: "vr:observed-absence" },
  unclear: { held: "UNKNOWN", type: "vr:cannot-be-told" },
  "not-reported": { held: "UNKNOWN", type: "vr:not-reported" },
};

/**
 * The observations: somebody's belief about one proposition. Where the record names the feature, that is that it is there; else
 * it is the record's own sentence, which is then held to be true whatever it says. With the thing before them it is an observation of CRMsci, else a
 * statement that leans on a picture or a report. An absence is a belief held to be FALSE about a set of one proposition, never
 * a value observed; what could not be told and what a source passes over are UNKNOWN, each for its own reason.
 */
export function putObservations(ground: Ground): void {
  const { graph, sheet, shown, node, words } = ground;
  for (const { id, values } of graph.list("observations")) {
    if (!shown(id)) continue;
    const observation = node(id);
    const things = values.of.filter(shown).map(node);
    const present = values.present ?? "true";
    // Silence is no look at the thing, whatever the source looked at.
    const before = values.basis === "autopsy" && present !== "not-reported";
    const [only] = values.of.length === 1 ? things : [];
    const feature =
      values.feature === undefined ? null : ownConcept(ground, "feature", graph.featureName(values.feature));
    sheet.is(observation, "crminf:I1_Argumentation");
    if (before) {
      sheet.is(observation, "crmsci:S27_Observation");
      sheet.has(observation, "crmsci:O35_observed_entity", ...things);
    }
    sheet.has(observation, "vr:concerns", ...things);
    sheet.has(observation, "rdfs:label", words(values.text));
    putTypes(ground, observation, told[present].type, `vr:${values.basis ?? "basis-not-stated"}`);
    putActors(ground, observation, id);
    putYear(ground, observation, values.year);
    putSaid(ground, observation, values);
    const that = putProposition(ground, part(observation, "proposition"), {
      text: present === "true" || values.feature === undefined ? words(values.text) : thereIs(ground, values),
      observable: before,
      about: things,
      states: only && feature ? { of: only, property: "vr:bears-feature-of-type", value: feature } : null,
    });
    const held = feature ? told[present].held : "TRUE";
    putBelief(ground, observation, part(observation, "belief"), { that, held });
    if (before && present === "true" && only && feature) {
      sheet.is(observation, "crmsci:S4_Single_Observation");
      sheet.has(observation, "crmsci:O8_observed", only);
      sheet.has(observation, "crmsci:O9_observed_property_type", at("vr:bears-feature-of-type"));
      sheet.has(observation, "crmsci:O16_observed_value", feature);
    }
  }
}

/** That the feature is there, in words: what was looked for, and not what was found. */
function thereIs({ shown, label }: Ground, { feature = "", of }: ObservationRecord["values"]): Words {
  const things = of.filter(shown).map((id) => label(id).words);
  return { words: `The feature “${feature}” is present on: ${things.join("; ")}.`, lang: "en" };
}
