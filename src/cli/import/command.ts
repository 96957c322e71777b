import type { Command } from "commander";
import { InvalidArgumentError } from "commander";
import { importReport } from "../../show/desk/import/report.ts";
import { imported } from "./import.ts";
import type { Importing } from "./import.ts";
import { importText } from "./print.ts";

/** Gives the program its command to bring bibliographies into a corpus; exits with 1 where an entry could not be read. */
export function addImport(program: Command): void {
  program
    .command("import")
    .description(
      "bring bibliographies into a corpus: BibTeX, RIS or CSL-JSON; what is there already is left alone",
    )
    .argument("<files...>", "the files: .bib, .ris, .json")
    .option("--into <corpus>", "the folder of the corpus")
    .option("--merge <what>", "of what is there already: missing adds the fields that it lacks", missing)
    .option("--json", "print one JSON document")
    .action((files: readonly string[], options: Importing) => {
      const told = imported(files, options);
      const text = options.json ? JSON.stringify(importReport(told), null, 2) : importText(told).join("\n");
      process.stdout.write(`${text}\n`);
      process.exitCode = told.failures.length > 0 ? 1 : 0;
    });
}

function missing(given: string): string {
  if (given === "missing") return given;
  throw new InvalidArgumentError("Expected missing.");
}
