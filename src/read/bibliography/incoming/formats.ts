import type { SourceFile } from "../../source-file.ts";
import type { Finding } from "../../../base/finding.ts";
import { readBibtex } from "../bibtex/bibtex.ts";
import { readCslJson } from "../csl-json.ts";
import { readRis } from "../ris.ts";
import type { Source } from "../source.ts";

/** A format of bibliographies, named by the ending of its files: BibTeX or biblatex, RIS, CSL-JSON. */
export type Format = "bib" | "ris" | "json";

const readers = { bib: readBibtex, ris: readRis, json: readCslJson } as const;

/** The format of a bibliography, told by its ending, else by how its text begins; null where it is none. */
export function formatOf(path: string, text: string): Format | null {
  const ending = /\.([a-z]+)$/i.exec(path)?.[1]?.toLowerCase();
  if (ending === "bib" || ending === "ris" || ending === "json") return ending;
  const head = text.slice(0, 100_000);
  if (/^\uFEFF?\s*(?:\[\s*[{\]]|\{\s*")/.test(head)) return "json";
  if (/^\uFEFF?TY {1,2}-/m.test(head)) return "ris";
  return /^\uFEFF?[ \t]{0,200}@[A-Za-z]{1,60}\s{0,20}[{(]/m.test(head) ? "bib" : null;
}

/** The sources of a bibliography of a format, with what there is to say about them. */
export function readAs(
  format: Format,
  file: SourceFile,
): { readonly sources: readonly Source[]; readonly findings: readonly Finding[] } {
  return readers[format](file);
}
