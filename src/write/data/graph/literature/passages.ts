import { fieldsOf, isList } from "../../../../base/json.ts";
import type { Json } from "../../../../base/json.ts";
import { placeOf } from "../cited.ts";
import { part, plain, spoken } from "../ground.ts";
import type { Ground } from "../ground.ts";
import { typed } from "../sheet.ts";
import type { Known, Node } from "../sheet.ts";

/** The passages: where they stand in print, their words, and the selectors of the Web Annotation model that find them again. */
export function putPassages(ground: Ground): void {
  const { graph, sheet, shown, citable, node, words, label } = ground;
  for (const { id, values } of graph.list("passages")) {
    if (!shown(id) || !citable(id)) continue;
    const passage = node(id);
    sheet.is(passage, "oa:SpecificResource", "crm:E73_Information_Object");
    sheet.has(passage, "rdfs:label", label(id));
    sheet.has(passage, "vr:locator", plain(values.at));
    for (const { key } of values.from ?? []) {
      if (!citable(key)) continue;
      sheet.has(passage, "oa:hasSource", node(key));
      sheet.has(passage, "crm:P106i_forms_part_of", node(key));
    }
    if (values.via) sheet.has(passage, "vr:read-in", placeOf(ground, passage, "via", values.via));
    if (values.quote !== undefined)
      sheet.has(passage, "crm:P190_has_symbolic_content", spoken(values.quote, values.lang));
    if (values.translation !== undefined) sheet.has(passage, "vr:translation", words(values.translation));
    for (const note of [values.paraphrase, values.note])
      if (note !== undefined) sheet.has(passage, "crm:P3_has_note", words(note));
    const selector = part(passage, "selector");
    if (values.selector !== undefined) {
      for (const one of isList(values.selector) ? values.selector : [values.selector])
        if (putSelector(ground, selector, one)) sheet.has(passage, "oa:hasSelector", selector);
    } else if (values.quote !== undefined) {
      putSelector(ground, selector, { type: "TextQuoteSelector", exact: values.quote });
      sheet.has(passage, "oa:hasSelector", selector);
    }
  }
}

const classes: Readonly<Record<string, Known>> = {
  FragmentSelector: "oa:FragmentSelector",
  TextQuoteSelector: "oa:TextQuoteSelector",
  TextPositionSelector: "oa:TextPositionSelector",
  DataPositionSelector: "oa:DataPositionSelector",
  SvgSelector: "oa:SvgSelector",
  CssSelector: "oa:CssSelector",
  XPathSelector: "oa:XPathSelector",
};

const texts: readonly (readonly [string, Known])[] = [
  ["value", "rdf:value"],
  ["exact", "oa:exact"],
  ["prefix", "oa:prefix"],
  ["suffix", "oa:suffix"],
];

/** Writes a selector and those that refine it; false where it is none of the model's (W3C 2017), and nothing is written. */
function putSelector(ground: Ground, node: Node, json: Json): boolean {
  const fields = fieldsOf(json);
  const type = typeof fields["type"] === "string" ? fields["type"] : "";
  const sort = Object.hasOwn(classes, type) ? classes[type] : undefined;
  if (sort === undefined) return false;
  const { sheet } = ground;
  sheet.is(node, sort);
  for (const [name, property] of texts)
    if (typeof fields[name] === "string") sheet.has(node, property, plain(fields[name]));
  for (const name of ["start", "end"] as const) {
    const at = Number(fields[name]);
    if (fields[name] !== undefined && Number.isInteger(at) && at >= 0)
      sheet.has(node, `oa:${name}`, typed(String(at), "xsd:nonNegativeInteger"));
  }
  const standard = fields["conformsTo"];
  if (typeof standard === "string" && /^https?:\/\/[^\s<>"{}|\\^`]+$/.test(standard))
    sheet.has(node, "dcterms:conformsTo", { iri: standard });
  const finer = part(node, "refined");
  if (fields["refinedBy"] !== undefined && putSelector(ground, finer, fields["refinedBy"]))
    sheet.has(node, "oa:refinedBy", finer);
  return true;
}
