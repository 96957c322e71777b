import type { Command } from "commander";
import { InvalidArgumentError } from "commander";
import { importReport } from "../../show/desk/import/report.ts";
import { isTable } from "../../show/desk/import/table/coming.ts";
import { tableImportReport } from "../../show/desk/import/table/told/report.ts";
import { Stop } from "../fault.ts";
import { imported } from "./import.ts";
import { comingFile } from "./importing.ts";
import type { Importing } from "./importing.ts";
import { tableText } from "./print-table.ts";
import { importText } from "./print.ts";
import { tableImported } from "./table.ts";
import { bringVisits, isVisitFile } from "../write/returned.ts";
import { unsteered } from "../print/paint.ts";

/** Gives the program its command to bring bibliographies and tables into a corpus; exits with 1 where something could not come in. */
export function addImport(program: Command): void {
  program
    .command("import")
    .description(
      "bring bibliographies (BibTeX, RIS, CSL-JSON) or a table of measurements or artefacts into a corpus; what is there already is left alone",
    )
    .argument("<files...>", "the files: .bib, .ris, .json; or one .csv or .tsv")
    .option("--into <corpus>", "the folder of the corpus")
    .option(
      "--merge <what>",
      "of what is there already: missing adds the fields that it lacks",
      oneOf("missing"),
    )
    .option(
      "--as <list>",
      "what the rows of a table are: artefacts or measurements",
      oneOf("artefacts", "measurements"),
    )
    .option("--columns <pairs>", 'what columns are: "Inv. no.=of, D (cm)=diameter in cm"', more, [])
    .option("--decimal <sign>", "the decimal sign of a table: point or comma", oneOf("point", "comma"))
    .option(
      "--all <field=value>",
      "a field that every row of a table gets which has none of its own",
      more,
      [],
    )
    .option(
      "--keep <how>",
      "a table as records, or as a table that corpus.yaml names",
      oneOf("records", "table"),
    )
    .option("--json", "print one JSON document")
    .action((paths: readonly string[], options: Importing) => {
      if (paths.some(isVisitFile)) return bringVisits(paths, options);
      const files = paths.map(comingFile);
      const [first] = files;
      if (first && files.some(isTable)) {
        if (files.length > 1)
          throw new Stop(
            "Unexpected files beside a table, expected one table at a time, and no bibliography",
          );
        const told = tableImported(first, options);
        say(options, tableImportReport(told), () => tableText(told), told.failures.length > 0);
      } else {
        beTables(options);
        const told = imported(files, options);
        say(options, importReport(told), () => importText(told), told.failures.length > 0);
      }
    });
}

function say(options: Importing, report: object, lines: () => readonly string[], failed: boolean): void {
  const text = options.json ? JSON.stringify(report, null, 2) : unsteered(lines().join("\n"));
  process.stdout.write(`${text}\n`);
  process.exitCode = failed ? 1 : 0;
}

/** Options of tables say nothing of bibliographies. */
function beTables({ as, columns = [], decimal, all = [], keep }: Importing): void {
  const given = [
    ["--as", as !== undefined],
    ["--columns", columns.length > 0],
    ["--decimal", decimal !== undefined],
    ["--all", all.length > 0],
    ["--keep", keep !== undefined],
  ] as const;
  const one = given.find(([, is]) => is)?.[0];
  if (one !== undefined) throw new Stop(`Unexpected ${one} for a bibliography, expected it with a table`);
}

function oneOf(...all: readonly string[]): (given: string) => string {
  return (given) => {
    if (all.includes(given)) return given;
    throw new InvalidArgumentError(`Expected ${all.join(" or ")}.`);
  };
}

function more(given: string, before: readonly string[]): readonly string[] {
  return [...before, given];
}
