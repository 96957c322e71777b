import type { Command } from "commander";
import { newFolder, startCorpus, startPlugin } from "./new.ts";
import { openCorpus } from "./open.ts";

/** Gives the program its command to open a corpus; the one that is meant where none is named. */
export function addOpen(program: Command): void {
  program
    .command("open", { isDefault: true })
    .description("serve the corpus to a browser on this machine, and open it")
    .argument("[corpus]", "the folder of the corpus", ".")
    .option("--port <number>", "a port of your own choice")
    .option("--no-browser", "only print the address")
    .action((folder: string, options: { readonly port?: string; readonly browser: boolean }) =>
      openCorpus(folder, options),
    );
}

/** Gives the program its command to start a corpus, or a plug-in in one. */
export function addNew(program: Command): void {
  program
    .command("new")
    .description("start a corpus in a new folder, or a plug-in in a corpus")
    .argument("[folder]", "where; with --plugin the folder of the corpus")
    .option("--plugin <name>", "write a plug-in to begin from")
    .action((given: string | undefined, { plugin }: { readonly plugin?: string }) => {
      const folder = plugin === undefined ? newFolder(given) : (given ?? ".");
      const lines =
        plugin === undefined
          ? [`${folder}: ${startCorpus(folder).join(", ")}`, `Next: variorum check ${folder}`]
          : startPlugin(folder, plugin);
      process.stdout.write(`${lines.join("\n")}\n`);
    });
}
