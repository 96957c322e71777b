import type { Quantity } from "../../../../base/quantity.ts";
import { decimal, gettyDimensions, openUnits } from "../../terms/units.ts";
import { ownConcept, putTypes } from "../cited.ts";
import { plain } from "../ground.ts";
import type { Ground } from "../ground.ts";
import { at, typed } from "../sheet.ts";
import type { Known, Node, Words } from "../sheet.ts";

const forms: Readonly<Record<Quantity["form"], Known>> = {
  value: "vr:one-value",
  approximate: "vr:approximate",
  range: "vr:range",
  "at-least": "vr:at-least",
  "at-most": "vr:at-most",
};

/**
 * Writes a quantity as a dimension: the value where the text gives one, the limits it is put between, the unit, and the figure as
 * it was printed. A range has no central value, and a bound has one limit and nothing else.
 */
export function putQuantity(ground: Ground, dimension: Node, quantity: Quantity): void {
  const { sheet } = ground;
  const { form, kind, value, low, high, u, text } = quantity;
  const { perSI } = openUnits[kind];
  const number = (one: number | null): Words | null =>
    one === null ? null : typed(decimal(one * perSI), "xsd:decimal");
  sheet.is(dimension, "crm:E54_Dimension");
  putTypes(ground, dimension, forms[form]);
  if (form === "value" || form === "approximate") sheet.has(dimension, "crm:P90_has_value", number(value));
  sheet.has(dimension, "crm:P90a_has_lower_value_limit", number(low));
  sheet.has(dimension, "crm:P90b_has_upper_value_limit", number(high));
  sheet.has(dimension, "vr:standard-uncertainty", number(u));
  sheet.has(dimension, "vr:as-printed", plain(text));
  putUnit(ground, dimension, kind);
}

/** Gives a dimension the unit of its kind. */
export function putUnit({ sheet }: Ground, dimension: Node, kind: Quantity["kind"]): void {
  const { unit, ucum, label } = openUnits[kind];
  const node = at(unit);
  sheet.is(node, "crm:E58_Measurement_Unit");
  sheet.has(node, "rdfs:label", { words: label, lang: "en" });
  sheet.has(node, "qudt:ucumCode", plain(ucum));
  sheet.has(dimension, "crm:P91_has_unit", node);
}

/** What a dimension is a dimension of: the corpus's own concept, beside that of Getty's AAT where the names are the same. */
export function dimensionConcept(ground: Ground, written: string): Node {
  const { graph, sheet, words } = ground;
  const name = graph.dimensionName(written);
  const concept = ownConcept(ground, "dimension", name);
  const setting = graph.settings.dimensions.find((one) => graph.dimensionName(one.name) === name);
  if (setting) sheet.has(concept, "skos:altLabel", ...setting.also.map(plain));
  if (setting && setting.taken !== null) sheet.has(concept, "skos:definition", words(setting.taken));
  const getty = Object.hasOwn(gettyDimensions, name.toLowerCase())
    ? gettyDimensions[name.toLowerCase()]
    : undefined;
  if (getty !== undefined) sheet.has(concept, "skos:closeMatch", at(getty));
  return concept;
}
