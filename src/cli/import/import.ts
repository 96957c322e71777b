import { basename } from "node:path";
import { inEnglish } from "../../base/text/said/english.ts";
import type { SourceFile } from "../../build.ts";
import { arrivedIn } from "../../read/bibliography/incoming/arrived.ts";
import type { Arrived } from "../../read/bibliography/incoming/arrived.ts";
import { formatOf } from "../../read/bibliography/incoming/formats.ts";
import { importPlan, shelfFor } from "../../show/desk/import/plan.ts";
import { importTold } from "../../show/desk/import/told.ts";
import type { ImportTold } from "../../show/desk/import/told.ts";
import { Stop } from "../fault.ts";
import { goalOf, written } from "./importing.ts";
import type { Importing } from "./importing.ts";

/** Brings bibliographies into a corpus and tells what became of each entry; no file is written where one of them cannot be had. */
export function imported(coming: readonly SourceFile[], { into, merge }: Importing): ImportTold {
  const { folder, graph, files } = goalOf(into);
  const arrived = coming.map(arrivedAs);
  const asked = { choices: new Map(), duplicates: merge === "missing" ? "merge" : "leave" } as const;
  const told = importTold(graph, importPlan(graph, shelfFor(graph, files), arrived, asked));
  if (told.problem !== null) throw new Stop(inEnglish(told.problem));
  const names = coming.map(({ path }) => basename(path)).join(", ");
  written(folder, `Bibliography brought in from ${names}`, told.changes);
  return told;
}

function arrivedAs(file: SourceFile): Arrived {
  const format = formatOf(file.path, file.text);
  if (format !== null) return arrivedIn(file, format);
  throw new Stop(
    `Unknown kind of file \`${file.path}\`, expected BibTeX, RIS or CSL-JSON (.bib, .ris or .json), or a table (.csv or .tsv)`,
  );
}
