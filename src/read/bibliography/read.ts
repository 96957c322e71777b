import { finding } from "../../base/finding.ts";
import type { Finding } from "../../base/finding.ts";
import { say } from "../../base/text/said/said.ts";
import { readBibtex } from "./bibtex/bibtex.ts";
import { readCslJson } from "./csl-json.ts";
import { readRis } from "./ris.ts";
import type { Source } from "./source.ts";
import type { SourceFile } from "../source-file.ts";

export type { Source } from "./source.ts";

/** The sources of a bibliography file: BibTeX, RIS or CSL-JSON, told by its ending. */
export function readBibliography(file: SourceFile): {
  readonly sources: readonly Source[];
  readonly findings: readonly Finding[];
} {
  if (file.path.endsWith(".bib")) return readBibtex(file);
  if (file.path.endsWith(".ris")) return readRis(file);
  if (file.path.endsWith(".json")) return readCslJson(file);
  const at = { file: file.path, start: 0, end: 0 };
  return {
    sources: [],
    findings: [
      finding(
        "unreadable-file",
        say`Unknown kind of bibliography, expected ${".bib"}, ${".ris"} or ${".json"}`,
        at,
      ),
    ],
  };
}
