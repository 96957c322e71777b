import { readFileSync } from "node:fs";
import { join } from "node:path";
import { formats } from "./inputs/input.ts";
import type { Input } from "./inputs/input.ts";
import { filesBelow } from "./inputs/seeds.ts";

/** A find that was kept: its folder, which has a small corpus, and the one file of it that was the input. */
export interface Kept {
  readonly name: string;
  readonly path: string;
}

/** The finds that were kept, by the table of their README: a line each, with what was wrong. */
export function keptIn(folder: string): readonly Kept[] {
  const rows = readFileSync(join(folder, "README.md"), "utf8").matchAll(
    /^\| `([^`]+)`\s*\| `([^`]+)`\s*\|/gmu,
  );
  return [...rows].map(([, name = "", path = ""]) => ({ name, path }));
}

/** The input of a find, whose folder is named by its format first. */
export function inputOf(folder: string, { name, path }: Kept): Input {
  const format = formats.find((one) => name.startsWith(`${one}-`));
  if (format === undefined)
    throw new Error(`Unknown format of ${name}, expected one of ${formats.join(", ")}`);
  const beside = filesBelow(join(folder, name)).filter((one) => one.path !== path);
  return { format, how: "found", path, bytes: readFileSync(join(folder, name, path)), beside };
}
