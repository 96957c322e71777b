import type { Id } from "../../../../base/finding.ts";
import type { ArgumentRecord } from "../../../../link/graph.ts";
import { putBelief } from "../beliefs.ts";
import { putActors, putSaid, putTypes, putYear } from "../cited.ts";
import { part } from "../ground.ts";
import type { Ground } from "../ground.ts";
import { at } from "../sheet.ts";
import type { Known, Node } from "../sheet.ts";

/**
 * The arguments: inferences from premises to a belief about a claim. One against a claim concludes that it is FALSE. CRMinf has no term
 * for an attack on anything else: on another argument it undercuts, on what arguments lean on it undermines.
 */
export function putArguments(ground: Ground): void {
  const { graph, sheet, shown, listed, node, words, label } = ground;
  for (const record of graph.list("arguments")) {
    const { id, values } = record;
    if (!shown(id)) continue;
    const argument = node(id);
    sheet.is(argument, "crminf:I5_Inference_Making");
    sheet.has(argument, "rdfs:label", label(id));
    if (values.text !== undefined) sheet.has(argument, "crm:P3_has_note", words(values.text));
    if (values["why-strength"] !== undefined)
      sheet.has(argument, "crm:P3_has_note", words(values["why-strength"]));
    putTypes(ground, argument, `vr:${values.strength ?? "ordinary"}`);
    sheet.has(argument, "crminf:J3_applied", at(logicOf(record)));
    putActors(ground, argument, id);
    putYear(ground, argument, values.year);
    putSaid(ground, argument, values);
    values.because.forEach((premise, place) => {
      const belief = premiseOf(ground, argument, premise, place);
      if (belief) sheet.has(argument, "crminf:J1_used_as_premise", belief);
    });
    if (values.therefore !== undefined && listed(values.therefore))
      putBelief(ground, argument, part(argument, "belief"), { that: node(values.therefore), held: "TRUE" });
    (values.against ?? []).forEach((target, place) => putAttack(ground, argument, target, place));
  }
}

function logicOf({ values }: ArgumentRecord): Known {
  const { scheme } = values;
  return scheme === undefined || scheme === "other" ? "vr:from-something-else" : `vr:from-${scheme}`;
}

/** The belief that an argument leans on: that of the evidence; of a claim, which nobody need hold, one of the argument's own. */
function premiseOf(ground: Ground, argument: Node, premise: Id, place: number): Node | null {
  const { graph, sheet, shown, listed, node, model } = ground;
  const record = graph.records.get(premise);
  if (!record) return null;
  if (record.list === "claims") {
    if (!listed(premise)) return null;
    const belief = part(argument, `premise-${place + 1}`);
    sheet.is(belief, "crminf:I2_Belief");
    sheet.has(belief, "crminf:J4_that", node(premise));
    sheet.has(belief, "crminf:J5_holds_to_be", { words: "TRUE" });
    return belief;
  }
  if (!shown(premise)) return null;
  if (record.list === "positions" && !listed(record.values.claim)) return null;
  if (record.list === "derivations" && model.derivations.byId.get(premise)?.status !== "computed")
    return null;
  return part(node(premise), "belief");
}

function putAttack(ground: Ground, argument: Node, target: Id, place: number): void {
  const { graph, sheet, shown, listed, node } = ground;
  const list = graph.records.get(target)?.list;
  if (list === "claims") {
    if (listed(target))
      putBelief(ground, argument, part(argument, `against-${place + 1}`), {
        that: node(target),
        held: "FALSE",
      });
  } else if (shown(target)) {
    sheet.has(argument, list === "arguments" ? "vr:undercuts" : "vr:undermines", node(target));
  }
}
