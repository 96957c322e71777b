import type { Command } from "commander";
import { Stop } from "../fault.ts";
import { writeVisit } from "./visit.ts";
import type { Writing } from "./visit.ts";

/** What can be written. */
const kinds = ["visit"] as const;

/** Gives the program its command to write sheets to be taken along. */
export function addWrite(program: Command): void {
  program
    .command("write")
    .description("write a sheet for a visit: what to measure and look for, and what each outcome decides")
    .argument("<kind>", `what to write: ${kinds.join(" or ")}`)
    .argument("[corpus]", "the folder of the corpus", ".")
    .option("--to <path>", "the file to write: .html to be printed or filled in on a laptop, or .md")
    .option("--examination <id>", "the examination that the visit is for")
    .option("--keeper <name>", "all that is to be looked at with one keeper")
    .option("--also <ids...>", "with --keeper: things of the keeper's that are to be on the sheet besides")
    .option("--with-values", "earlier values too, on a leaf of their own at the end")
    .option("--over", "write over a file that is there")
    .action((kind: string, folder: string, options: Writing) => {
      if (!kinds.some((one) => one === kind))
        throw new Stop(`Unknown kind \`${kind}\`, expected ${kinds.join(" or ")}`);
      return writeVisit(folder, options);
    });
}
