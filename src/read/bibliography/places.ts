import { count, say } from "../../base/text/said/said.ts";
import { lineSpan } from "../decode/collector.ts";
import type { Collector } from "../decode/collector.ts";
import type { SourceFile } from "../source-file.ts";

/** The most entries read from one bibliography. */
export const mostEntries = 200_000;

/** The finding that ends the reading of a bibliography with more entries than that. */
export function tooMany(found: Collector, file: SourceFile, at: number): void {
  const message = say`Unexpected number of more than ${count(mostEntries)} entries, expected them divided among several files`;
  found.bad(message, lineSpan(file, at), { rule: "unreadable-file" });
}

/** Finds the first match of a pattern (global, by lines) after a place, the end of the text when there is none; places may only grow. */
export function lineFinder(text: string, pattern: RegExp): (after: number) => number {
  let found = -1;
  return (after) => {
    if (found > after) return found;
    pattern.lastIndex = after + 1;
    found = pattern.exec(text)?.index ?? text.length;
    return found;
  };
}
