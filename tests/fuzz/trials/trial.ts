import type { SourceFile } from "../../../src/build.ts";
import { mostBytesOf, textOf } from "../../../src/host/corpus-folder.ts";
import type { Input } from "../inputs/input.ts";
import { corpusFaults } from "./corpus.ts";
import type { Faults } from "./corpus.ts";
import { importFaults } from "./importing.ts";
import { paperFaults } from "./paper.ts";
import type { Opening } from "./paper.ts";
import { recordsFaults } from "./records.ts";
import { styleFaults } from "./style.ts";

/** What a trial is done with: the project's folder, and what opens papers; null where none are tried. */
export interface Bench {
  readonly root: string;
  readonly opening: Opening | null;
}

/** Puts an input through all that reads it; `place` chooses what is done besides. A throw is a fault by its kind and place. */
export async function tried(input: Input, place: number, bench: Bench): Promise<Faults> {
  try {
    const { format, path, bytes, beside } = input;
    if (format === "paper") return bench.opening ? await paperFaults(path, bytes, bench.opening) : [];
    const file = fileOf(path, bytes);
    const faults = [...corpusFaults([...beside, file], place)];
    if (format === "records" || format === "settings") faults.push(...recordsFaults(file, place));
    if (format === "style") faults.push(...styleFaults(file, bench.root));
    if (["bibtex", "ris", "csl-json", "table"].includes(format)) faults.push(...importFaults(file, place));
    return [...new Set(faults)];
  } catch (error) {
    return [thrownAs(error)];
  }
}

/** The file as the program finds it in a folder: too large, no text, or a text. */
function fileOf(path: string, bytes: Uint8Array): SourceFile {
  const most = mostBytesOf(path) ?? Infinity;
  return bytes.length > most ? { path, text: "", problem: "too large" } : textOf(path, bytes);
}

/** A throw by what it says, without what is of this one input, and by the functions it came through. */
function thrownAs(error: unknown): string {
  if (!(error instanceof Error)) return `throws ${String(error).slice(0, 80)}`;
  const named = [...(error.stack ?? "").matchAll(/^ +at (?:async )?([\w.$<>]+)/gmu)].map(([, name]) => name);
  // A circle may be met at any of its functions.
  const isRound = error instanceof RangeError && /call stack/u.test(error.message);
  const through = isRound ? [...new Set(named)].sort() : named.slice(0, 3);
  const said = error.message
    .split("\n")[0]
    ?.replaceAll(/["'`].*["'`]|\d+/gu, "…")
    .slice(0, 120);
  return `throws ${error.name}: ${said} (${through.join(" < ")})`;
}
