import { readFileSync } from "node:fs";
import { join } from "node:path";
import { plugins } from "../../plugins/index.ts";
import type { Finding } from "../../src/base/finding.ts";
import { inEnglish } from "../../src/base/text/said/english.ts";
import type { Checked, Model } from "../../src/build.ts";
import { readCorpusFolder } from "../../src/host/corpus-folder.ts";
import { computingHere, emptyMemo, evaluate } from "../../src/host/evaluate.ts";

/** A corpus folder, read, computed in this thread and judged. */
export function evaluated(folder: string): Promise<Checked<Model>> {
  return evaluate(readCorpusFolder(folder), plugins, emptyMemo(), computingHere(plugins));
}

/** Where a finding stands, counted in the text of its file: `file:line:column`, or `-` where no place is to blame. */
export function placeIn(folder: string, { at }: Finding): string {
  if (!at) return "-";
  const before = readFileSync(join(folder, at.file), "utf8").slice(0, at.start);
  const lines = before.split(/\r\n|\r|\n/);
  return `${at.file}:${lines.length}:${(lines.at(-1) ?? "").length + 1}`;
}

/** A finding as one line of text. */
export function lineOf(folder: string, one: Finding): string {
  return `${placeIn(folder, one)} ${one.level} ${one.rule} ${inEnglish(one.message)}`;
}
