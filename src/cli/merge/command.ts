import type { Command } from "commander";
import { Stop } from "../fault.ts";
import { mergeInto } from "./driver.ts";
import type { Handed } from "./driver.ts";
import { setUp } from "./set-up.ts";
import { settle } from "./settle.ts";
import type { Settling } from "./settle.ts";

interface Options extends Handed, Settling {
  readonly setUp?: boolean;
  readonly settle?: boolean;
}

/** Gives the program its command to merge versions of a file, as git calls it and by hand; exits with 1 where something clashes. */
export function addMerge(program: Command): void {
  program
    .command("merge-files")
    .description(
      "merge two versions of a file of a corpus by record, as git calls it; or settle one that clashes",
    )
    .argument(
      "[files...]",
      "BASE OURS THEIRS, merged into OURS; with --set-up a corpus, with --settle one file",
    )
    .usage("BASE OURS THEIRS | --settle FILE [--take ours|theirs|both|N=ours…] | --set-up [CORPUS]")
    .option(
      "--path <path>",
      "where the file lies, when its versions have other names: its ending tells what it is",
    )
    .option("--marks <number>", "how many signs a mark of a conflict has (7)")
    .option("--ours-name <name>", "what the second version is called in the marks")
    .option("--theirs-name <name>", "what the third is called")
    .option("--settle", "show both versions of what clashes in a file, and write what is chosen")
    .option(
      "--take <choice>",
      "with --settle: ours, theirs or both, for all or for one place: 2=theirs",
      more,
      [],
    )
    .option("--by-lines", "with --settle: by lines, as they are typed")
    .option("--set-up", "have git call this command for the files of a corpus, in this clone")
    .action(async (files: readonly string[], options: Options) => {
      if (options.setUp && options.settle)
        throw new Stop("Unexpected --set-up together with --settle, expected one of them");
      if (!options.settle && (options.take.length > 0 || options.byLines))
        throw new Stop(
          `Unexpected ${options.byLines ? "--by-lines" : "--take"} alone, expected it together with --settle`,
        );
      if (options.setUp) return say(await setUp(one(files, "a corpus") ?? "."));
      if (options.settle) {
        const file = one(files, "a file");
        if (file === undefined)
          throw new Stop("Missing file, expected one: variorum merge-files --settle FILE");
        const { lines, settled } = settle(file, options);
        say(lines);
        process.exitCode = settled ? 0 : 1;
        return;
      }
      const [base, ours, theirs, ...others] = files;
      if (base === undefined || ours === undefined || theirs === undefined || others.length > 0)
        throw new Stop(
          `Unexpected number of ${files.length} files, expected three: variorum merge-files BASE OURS THEIRS`,
        );
      process.exitCode = mergeInto([base, ours, theirs], options) ? 0 : 1;
    });
}

function one(files: readonly string[], what: string): string | undefined {
  if (files.length > 1) throw new Stop(`Unexpected number of ${files.length} paths, expected ${what}`);
  return files[0];
}

function say(lines: readonly string[]): void {
  process.stdout.write(`${lines.join("\n")}\n`);
}

function more(given: string, before: readonly string[]): readonly string[] {
  return [...before, given];
}
