import { Command } from "commander";
import type { Asked, Kind, KindOption } from "../../host/telling/kind.ts";

/** What every kind is asked with. */
export interface Usual {
  readonly to?: string;
  readonly over?: boolean;
  readonly asOf?: string;
  readonly suppose?: string;
  readonly memo?: boolean;
}

/** The command of one kind with its own options. */
export function commandOf(name: string, kind: Kind): Command {
  const command = quiet(new Command(`variorum write ${name}`))
    .description(`Writes ${kind.doc}.`)
    .argument("[corpus]", "the folder of the corpus", ".");
  for (const option of kind.options) command.option(flagOf(option), option.doc);
  return usual(command, kind);
}

/** Only the options of every kind, to tell the words of a command apart from what belongs to its options. */
export function usualCommand(): Command {
  return usual(quiet(new Command("variorum write")), null)
    .helpOption(false)
    .allowUnknownOption();
}

/** A command that tells its errors by throwing them, in one line. */
function quiet(command: Command): Command {
  return command
    .exitOverride()
    .helpOption("-h, --help", "show this help")
    .showSuggestionAfterError(true)
    .configureOutput({ writeOut: (text) => process.stdout.write(text), writeErr: () => undefined });
}

function usual(command: Command, kind: Kind | null): Command {
  return command
    .option("--to <path>", kind ? `where to write: ${placesOf(kind)}` : "where to write")
    .option("--over", "write over what is there")
    .option("--as-of <year>", "what was in print by the end of that year: 1951, or 480 BC")
    .option("--suppose <outcome>", "as if an examination had ended so: EXAMINATION:OUTCOME")
    .option("--no-memo", "compute every number anew");
}

/** The names that a kind may be written under, in words. */
export function placesOf({ formats, several }: Kind): string {
  const files = formats.filter((one) => one !== "zip").map((one) => `.${one}`);
  if (several) return `a folder, a .zip${files.length > 0 ? `, or one file in ${orList(files)}` : ""}`;
  return `a file in ${orList(files)}`;
}

function orList(words: readonly string[]): string {
  return words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} or ${words.at(-1) ?? ""}`;
}

function flagOf({ name, takes, several }: KindOption): string {
  if (takes === null) return `--${name}`;
  return several === true ? `--${name} <${takes}...>` : `--${name} <${takes}>`;
}

/** What was asked of a kind, by the names of its options. */
export function askedIn(command: Command, kind: Kind): Asked {
  const given: Readonly<Record<string, unknown>> = command.opts();
  return Object.fromEntries(
    kind.options.flatMap(({ name, several }): readonly (readonly [string, Asked[string]])[] => {
      const value = given[name.replace(/-(.)/g, (_, letter: string) => letter.toUpperCase())];
      if (value === true || (typeof value === "string" && several !== true)) return [[name, value]];
      if (value === undefined) return [];
      const words = [value].flat().flatMap((one) => String(one).split(","));
      return [[name, words.map((one) => one.trim()).filter((one) => one !== "")]];
    }),
  );
}
