import { fileURLToPath } from "node:url";
import { plugins } from "../plugins/index.ts";
import type { Memo, Outcome } from "../src/build.ts";
import { readCorpusFolder } from "../src/host/corpus-folder.ts";
import { computingHere, emptyMemo, evaluate } from "../src/host/evaluate.ts";

/** The folder of the demo corpus. */
export const demoFolder = fileURLToPath(new URL("../demo-corpus", import.meta.url));

let known: Promise<ReadonlyMap<string, Outcome>> | null = null;

async function outcomes(): Promise<ReadonlyMap<string, Outcome>> {
  const memo = emptyMemo();
  await evaluate(readCorpusFolder(demoFolder), plugins, memo, computingHere(plugins));
  return memo.compute;
}

/** A memo of its own that has the demo's numbers, which are computed once for all files that one process tests. */
export async function demoMemo(): Promise<Memo> {
  known ??= outcomes();
  return emptyMemo(await known);
}
