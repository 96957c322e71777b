import { edtfOfCsl } from "./issued.ts";
import { sourceClass } from "../../terms/source-classes.ts";
import { edtfWords } from "../dates.ts";
import { plain, spoken } from "../ground.ts";
import type { Ground } from "../ground.ts";

/** The sources: what they are called, whose they are and since when they are in print. Their whole entries are in the CSL-JSON file. */
export function putSources(ground: Ground): void {
  const { graph, sheet, shown, citable, node } = ground;
  for (const [key, { csl, label, members }] of graph.sources) {
    if (!citable(key) || members.length > 0) continue;
    const source = node(key);
    const sort = sourceClass(csl);
    sheet.is(source, "crm:E73_Information_Object", ...(sort === null ? [] : [sort]));
    sheet.has(source, "rdfs:label", plain(label));
    if (csl.title !== undefined)
      sheet.has(source, "dcterms:title", spoken(csl.title, languageIn(csl.language)));
    sheet.has(source, "dcterms:creator", ...graph.authorsOf(key).filter(shown).map(node));
    const issued = edtfOfCsl(csl["original-date"] ?? csl.issued);
    if (issued !== null) sheet.has(source, "dcterms:issued", edtfWords(issued));
    if (typeof csl.DOI === "string") sheet.has(source, "dcterms:identifier", plain(doiOf(csl.DOI)));
    if (typeof csl["ISBN"] === "string")
      sheet.has(source, "dcterms:identifier", plain(`ISBN ${csl["ISBN"]}`));
  }
}

/** A language as bibliographies name it, where it is a tag. */
function languageIn(language: string | undefined): string | undefined {
  return language !== undefined && /^[a-z]{2,3}(?:-[a-z0-9]{2,8})*$/i.test(language) ? language : undefined;
}

/** A DOI as an address. */
function doiOf(doi: string): string {
  const bare = /10\.\d{4,9}\/\S+/.exec(doi)?.[0];
  return bare === undefined ? doi : `https://doi.org/${bare}`;
}
