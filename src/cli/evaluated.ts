import { plugins } from "../../plugins/index.ts";
import type { Checked, Lens, Model, Reach, SourceFile } from "../build.ts";
import { NoCorpus, readCorpusFolder } from "../host/corpus-folder.ts";
import { emptyMemo, evaluate } from "../host/evaluate.ts";
import { memoStoreFor } from "../host/memo-store.ts";
import { computingInThreads } from "../host/node-computing.ts";
import { parseYear } from "../base/date/year.ts";
import { shownTexts } from "../show/withhold.ts";
import { Stop } from "./fault.ts";

/** A corpus as the command line worked it out. */
export interface Evaluated {
  readonly checked: Checked<Model>;
  readonly texts: ReadonlyMap<string, string>;
}

/** What the user asked of an evaluation. */
export interface Asked {
  readonly asOf?: string;
  readonly restsOn?: boolean;
  readonly history?: boolean;
  readonly memo?: boolean;
}

/** Reads a folder, computes whatever is missing, and keeps the numbers for the next time. */
export async function evaluated(folder: string, asked: Asked): Promise<Evaluated> {
  const files = filesOf(folder);
  const lens: Lens = asked.asOf === undefined ? {} : { asOf: yearIn(asked.asOf) };
  const reach: Reach = {
    ...(asked.restsOn ? { allRestsOn: true } : {}),
    ...(asked.history ? { history: true } : {}),
  };
  const store = asked.memo === false ? null : memoStoreFor(folder);
  const memo = emptyMemo(store?.load());
  const before = memo.compute.size;
  const computing = computingInThreads(new URL("./compute-worker.js", import.meta.url));
  const progress = progressLine();
  const checked = await evaluate(files, plugins, memo, computing, { lens, reach, progress: progress.tell });
  progress.end();
  if (memo.compute.size > before) store?.save(memo.compute);
  const texts = new Map(files.map((file) => [file.path, file.text]));
  return { checked, texts: checked.model ? shownTexts(checked.model.graph, texts) : texts };
}

function filesOf(folder: string): readonly SourceFile[] {
  try {
    return readCorpusFolder(folder);
  } catch (error) {
    if (error instanceof NoCorpus) throw new Stop(error.message);
    throw error;
  }
}

function yearIn(text: string): number {
  const year = parseYear(text);
  if ("ok" in year) return year.ok;
  throw new Stop(year.problem.message);
}

/** A line on standard error that says how far a long run is; nothing where nobody watches, and nothing in the first half second. */
function progressLine(): { readonly tell: (text: string) => void; readonly end: () => void } {
  const { stderr } = process;
  const begun = performance.now();
  let shown = false;
  return {
    tell: (text) => {
      if (!stderr.isTTY || performance.now() - begun < 500) return;
      stderr.write(`\r\u001b[2K${text}`);
      shown = true;
    },
    end: () => {
      if (shown) stderr.write("\r\u001b[2K");
    },
  };
}
