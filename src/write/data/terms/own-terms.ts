import { at, sheetOf, typed } from "../graph/sheet.ts";
import type { Known, Triple, Words } from "../graph/sheet.ts";
import { concepts } from "./concepts.ts";
import type { ConceptScheme } from "./concepts.ts";
import { prefixes } from "./prefixes.ts";
import { ownProperties } from "./properties.ts";

const english = (words: string): Words => ({ words, lang: "en" });

/** Our own terms, declared: each concept in its scheme, each property with what it says. */
export function ownTerms(): readonly Triple[] {
  const sheet = sheetOf();
  const ontology = { iri: prefixes.vr };
  sheet.is(ontology, "owl:Ontology");
  sheet.has(ontology, "dcterms:title", english("Terms for scholars' disputes about things"));
  sheet.has(
    ontology,
    "rdfs:comment",
    english(
      "What CIDOC CRM, CRMinf and CRMsci have no term for: attacks between arguments, what was looked for and not reported, how a dimension survives, and standings, which a program works out and nobody holds. The IRI is a placeholder in a domain that RFC 2606 keeps for examples.",
    ),
  );
  for (const [name, { title, has }] of Object.entries(concepts as Readonly<Record<string, ConceptScheme>>)) {
    const scheme = { iri: `${prefixes.vr}${name}-scheme` };
    sheet.is(scheme, "skos:ConceptScheme");
    sheet.has(scheme, "skos:prefLabel", english(title));
    for (const [concept, [label, meaning]] of Object.entries(has)) {
      const node = at(`vr:${concept}` as Known);
      sheet.is(node, "skos:Concept", "crm:E55_Type");
      if (name === "scheme") sheet.is(node, "crminf:I3_Inference_Logic");
      if (name === "relation") sheet.is(node, "crmsci:S9_Property_Type");
      sheet.has(node, "skos:inScheme", scheme);
      sheet.has(node, "skos:prefLabel", english(label));
      sheet.has(node, "rdfs:label", english(label));
      if (name === "certainty") sheet.has(node, "skos:notation", typed(meaning, "xsd:string"));
      else sheet.has(node, "skos:definition", english(meaning));
    }
  }
  for (const [name, [label, meaning]] of Object.entries(ownProperties)) {
    const node = at(`vr:${name}` as Known);
    sheet.is(node, "rdf:Property");
    sheet.has(node, "rdfs:label", english(label));
    sheet.has(node, "rdfs:comment", english(meaning));
    sheet.has(node, "rdfs:isDefinedBy", ontology);
  }
  return sheet.triples();
}
