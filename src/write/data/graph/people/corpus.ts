import { inEnglish } from "../../../../base/text/said/english.ts";
import { withholdingSaid } from "../../../../show/telling/withholding.ts";
import { putLicence } from "../licence.ts";
import { part, plain } from "../ground.ts";
import type { Ground } from "../ground.ts";
import { typed } from "../sheet.ts";
import type { Node } from "../sheet.ts";

/** The corpus itself: what it is called, who made it, what may be done with it, and that something is kept back. */
export function putCorpus(ground: Ground): void {
  const { graph, sheet, corpus, compilers, words, asked, model } = ground;
  const { settings } = graph;
  sheet.is(corpus, "crm:E73_Information_Object", "prov:Entity");
  sheet.has(corpus, "dcterms:title", words(settings.title));
  sheet.has(corpus, "rdfs:label", words(settings.title));
  sheet.has(corpus, "dcterms:issued", typed(asked.today, "xsd:date"));
  sheet.has(corpus, "dcterms:creator", compilers);
  putLicence(ground, corpus, settings.licence ?? undefined);
  if (settings.version !== null) sheet.has(corpus, "owl:versionInfo", plain(settings.version));
  if (settings.citeAs !== null) sheet.has(corpus, "dcterms:bibliographicCitation", plain(settings.citeAs));
  if (model.lens.asOf !== undefined) sheet.has(corpus, "vr:as-of", yearOf(model.lens.asOf));
  putCompilers(ground);
  const withheld = withholdingSaid(graph).map((one) => ({ words: inEnglish(one), lang: "en" }));
  sheet.has(corpus, "dwc:informationWithheld", ...withheld);
}

const yearOf = (year: number): ReturnType<typeof typed> => typed(String(year), "xsd:integer");

function putCompilers({ graph, sheet, corpus, compilers }: Ground): void {
  sheet.is(compilers, "crm:E74_Group", "prov:Agent");
  sheet.has(compilers, "rdfs:label", { words: "the compilers of the corpus", lang: "en" });
  graph.settings.authors.forEach(({ name, orcid, role }, place) => {
    const author = part(corpus, `compiler-${place + 1}`);
    sheet.is(author, "crm:E39_Actor", "prov:Agent");
    sheet.has(author, "rdfs:label", plain(name));
    sheet.has(compilers, "crm:P107_has_current_or_former_member", author);
    if (role !== undefined) sheet.has(author, "crm:P3_has_note", plain(role));
    putOrcid(sheet, author, orcid);
  });
}

/** Ties a person to their ORCID. */
function putOrcid(sheet: Ground["sheet"], person: Node, orcid: string | undefined): void {
  const number = /\d{4}-\d{4}-\d{4}-\d{3}[\dX]/.exec(orcid ?? "")?.[0];
  if (number === undefined) return;
  const identifier = part(person, "orcid");
  sheet.is(identifier, "crm:E42_Identifier");
  sheet.has(identifier, "crm:P190_has_symbolic_content", plain(number));
  sheet.has(person, "crm:P1_is_identified_by", identifier);
  sheet.has(person, "owl:sameAs", { iri: `https://orcid.org/${number}` });
}

/** The scholars, with the spellings of their names. */
export function putScholars(ground: Ground): void {
  const { graph, sheet, shown, node } = ground;
  for (const { id, values } of graph.list("scholars")) {
    if (!shown(id)) continue;
    const person = node(id);
    sheet.is(person, "crm:E21_Person", "prov:Person");
    sheet.has(person, "rdfs:label", plain(values.name));
    sheet.has(person, "skos:altLabel", ...(values["known-as"] ?? []).map(plain));
    if (values.note !== undefined) sheet.has(person, "crm:P3_has_note", ground.words(values.note));
    putOrcid(sheet, person, values.orcid);
  }
}
