import { listNames } from "../../../read/grammar/kinds.ts";

/** Media types by the ending of a file (IANA). */
const types: Readonly<Record<string, string>> = {
  csv: "text/csv",
  graphml: "application/graphml+xml",
  jpg: "image/jpeg",
  js: "text/javascript",
  json: "application/json",
  jsonld: "application/ld+json",
  md: "text/markdown",
  png: "image/png",
  svg: "image/svg+xml",
  ttl: "text/turtle",
  yaml: "application/yaml",
};

/** The media type of a file by its name. */
export function mediaTypeOf(path: string): string {
  return types[path.slice(path.lastIndexOf(".") + 1)] ?? "application/octet-stream";
}

/** What the files of the data are, by their paths. */
const descriptions: Readonly<Record<string, string>> = {
  "README.md": "What is in this folder, in plain words.",
  "data.ttl": "What was recorded, as RDF in Turtle after CIDOC CRM 7.1.3, CRMsci 3.2 and CRMinf 1.2.1.",
  "data.jsonld": "The same as JSON-LD 1.1.",
  "terms.ttl": "The terms that the RDF uses and no published vocabulary has.",
  "sources.json": "The sources as CSL-JSON 1.0.2.",
  "dispute.graphml": "Claims, arguments and evidence with what speaks for and against what, as GraphML.",
  "standings.json":
    "What follows from the whole record: standings, numbers and findings, as the program reports them.",
  "differences.json":
    "Where the corpus in this folder, read by itself, gives other standings and numbers than the whole record.",
  "corpus/corpus.yaml": "Title, units, dimensions and settings of the corpus.",
  "corpus/bibliography.json": "The sources that the records cite, as CSL-JSON.",
  "tables/measurements.csv": "One row for each measurement.",
  "tables/positions.csv": "One row for each position of a scholar.",
  "tables/claims.csv": "One row for each claim, with its standing.",
  "tables/findings.csv": "One row for each finding.",
  "tables/dictionary.csv": "What stands in each column of the other tables.",
};

/** What a file of the crate is, in a sentence; nothing of one that its name tells. */
export function descriptionOf(path: string): string | undefined {
  const list = /^corpus\/([a-z]+)(?:-\d+)?\.yaml$/.exec(path)?.[1];
  if (list !== undefined && (listNames as readonly string[]).includes(list))
    return `Records of the corpus: ${list}.`;
  if (path.startsWith("corpus/plugins/"))
    return "A plug-in that came with the corpus; the program runs it only where it is allowed to.";
  return descriptions[path];
}
