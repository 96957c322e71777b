import type { Command } from "commander";
import { nearest } from "../../base/nearest.ts";
import { kinds } from "../../host/telling/kinds.ts";
import type { Kind } from "../../host/telling/kind.ts";
import { Stop } from "../fault.ts";
import { askedIn, commandOf, placesOf, usualCommand } from "./options.ts";
import type { Usual } from "./options.ts";
import { write } from "./write.ts";

/** Gives the program its command to write what a corpus is waited for with; every kind has options of its own. */
export function addWrite(program: Command): void {
  program
    .command("write")
    .description("write the review, the figures, the tables and what else a corpus is told as")
    .argument("[words...]")
    .usage("KIND [CORPUS] --to PATH")
    .allowUnknownOption()
    .helpOption(false)
    .action(async (_words: readonly string[], _options: object, { args }: Command) => {
      const [name, ...others] = usualCommand().parseOptions([...args]).operands;
      if (name === undefined || (name === "help" && others.length === 0)) return help(args);
      return writeKind(name, args);
    });
}

async function writeKind(name: string, args: readonly string[]): Promise<void> {
  const load = Object.hasOwn(kinds, name) ? kinds[name] : undefined;
  if (load === undefined) throw new Stop(unknownKind(name));
  const kind = await load();
  const command = commandOf(name, kind);
  const at = args.indexOf(name);
  await command
    .action((folder: string, usual: Usual) => write(name, kind, folder, usual, askedIn(command, kind)))
    .parseAsync([...args.slice(0, at), ...args.slice(at + 1)], { from: "user" });
}

function unknownKind(name: string): string {
  const names = Object.keys(kinds);
  const near = nearest(name, names);
  return `Unknown kind \`${name}\`, expected ${(near.length > 0 ? near : names).join(" or ")}`;
}

/** What can be written, and as what. */
async function help(args: readonly string[]): Promise<void> {
  if (args.length > 0 && !args.some((one) => ["-h", "--help", "help"].includes(one)))
    throw new Stop(
      `Missing kind, expected one of ${Object.keys(kinds).join(", ")}: variorum write KIND CORPUS --to PATH`,
    );
  const all = await Promise.all(
    Object.entries(kinds).map(async ([name, load]): Promise<readonly [string, Kind]> => [name, await load()]),
  );
  const width = Math.max(...all.map(([name]) => name.length));
  const lines = all.flatMap(([name, kind]) => [
    `  ${name.padEnd(width)}  ${kind.doc}`,
    `  ${"".padEnd(width)}  to ${placesOf(kind)}`,
  ]);
  process.stdout.write(
    [
      "Usage: variorum write KIND [CORPUS] --to PATH",
      "",
      "Writes what a corpus is waited for with; without a corpus named, of the folder you stand in.",
      "",
      "Kinds:",
      ...lines,
      "",
      "variorum write KIND --help shows the options of a kind.",
      "",
    ].join("\n"),
  );
}
