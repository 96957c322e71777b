import type { HeldToBe } from "../terms/concepts.ts";
import { part } from "./ground.ts";
import type { Ground } from "./ground.ts";
import { at } from "./sheet.ts";
import type { Known, Node, Words } from "./sheet.ts";

/** A single statement in reified form: nothing of it stands in the data as a fact. */
export interface Proposition {
  readonly text: Words;
  /** Something that could be seen of things before one, and not only read or reasoned. */
  readonly observable?: boolean;
  readonly about: readonly Node[];
  /** The statement as a triple; null where it is in words alone. */
  readonly states: { readonly of: Node; readonly property: Known; readonly value: Node } | null;
}

/** Writes a proposition set of exactly one proposition, so that FALSE of it is false of that one. */
export function putProposition({ sheet }: Ground, node: Node, proposition: Proposition): Node {
  const { text, observable = false, about, states } = proposition;
  sheet.is(node, observable ? "crmsci:S29_Observable_Proposition" : "crminf:I17_One-Proposition_Set");
  putWording(sheet, node, text);
  sheet.has(node, "crminf:J28_contains_entity_reference", ...about);
  if (states) {
    sheet.has(node, "crminf:J30_has_domain", states.of);
    sheet.has(node, "crminf:J32_has_property_type", at(states.property));
    sheet.has(node, "crminf:J31_has_range", states.value);
  }
  return node;
}

/** Gives a proposition its words. */
export function putWording(sheet: Ground["sheet"], proposition: Node, text: Words): void {
  const wording = part(proposition, "wording");
  sheet.has(proposition, "rdfs:label", text);
  sheet.has(proposition, "crminf:J26_has_unambiguous_description", wording);
  sheet.is(wording, "crm:E73_Information_Object");
  sheet.has(wording, "crm:P190_has_symbolic_content", text);
}

/** Writes what an activity came to: a belief about a proposition. */
export function putBelief(
  { sheet }: Ground,
  activity: Node,
  belief: Node,
  { that, held }: { readonly that: Node; readonly held: HeldToBe },
): void {
  sheet.has(activity, "crminf:J2_concluded_that", belief);
  sheet.is(belief, "crminf:I2_Belief");
  sheet.has(belief, "crminf:J4_that", that);
  sheet.has(belief, "crminf:J5_holds_to_be", { words: held });
}
