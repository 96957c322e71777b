/**
 * The vocabularies that open data is written in, by the prefix that stands for each. CIDOC CRM 7.1.3, CRMinf 1.2.1, CRMsci 3.2,
 * CiTO 2.8.2, FaBiO 2.3, Web Annotation (2017), PROV-O (2013), SKOS (2009), QUDT 3, Darwin Core; `vr:` is our own.
 */
export const prefixes = {
  aat: "http://vocab.getty.edu/aat/",
  cito: "http://purl.org/spar/cito/",
  crm: "http://www.cidoc-crm.org/cidoc-crm/",
  crminf: "http://www.cidoc-crm.org/extensions/crminf/",
  crmsci: "http://www.cidoc-crm.org/extensions/crmsci/",
  dcterms: "http://purl.org/dc/terms/",
  dwc: "http://rs.tdwg.org/dwc/terms/",
  edtf: "http://id.loc.gov/datatypes/edtf/",
  fabio: "http://purl.org/spar/fabio/",
  oa: "http://www.w3.org/ns/oa#",
  owl: "http://www.w3.org/2002/07/owl#",
  prov: "http://www.w3.org/ns/prov#",
  qudt: "http://qudt.org/schema/qudt/",
  rdf: "http://www.w3.org/1999/02/22-rdf-syntax-ns#",
  rdfs: "http://www.w3.org/2000/01/rdf-schema#",
  skos: "http://www.w3.org/2004/02/skos/core#",
  unit: "http://qudt.org/vocab/unit/",
  vr: "https://example.org/variorum/ns#",
  xsd: "http://www.w3.org/2001/XMLSchema#",
} as const;

/** A prefix of ours. */
export type Prefix = keyof typeof prefixes;

/** A term of one of the vocabularies, as `crm:P2_has_type`. */
export type Prefixed = `${Prefix}:${string}`;

/** The whole IRI of a term. */
export function iriOf(term: Prefixed): string {
  const at = term.indexOf(":");
  return prefixes[term.slice(0, at) as Prefix] + term.slice(at + 1);
}

const local = /^[A-Za-z0-9_][A-Za-z0-9_-]*$/;
const byLength = Object.entries(prefixes).toSorted(([, a], [, b]) => b.length - a.length);

/** An IRI by its prefix, where it is in one of the vocabularies and its name needs no escape; else null. */
export function shortened(iri: string): Prefixed | null {
  for (const [prefix, space] of byLength) {
    const name = iri.slice(space.length);
    if (iri.startsWith(space) && local.test(name)) return `${prefix as Prefix}:${name}`;
  }
  return null;
}
