import { plugins } from "../../plugins/index.ts";
import type { Checked, Lens, Model, Outcome, Reach, SourceFile } from "../build.ts";
import { NoCorpus, readCorpusFolder } from "../host/corpus-folder.ts";
import { emptyMemo, evaluate } from "../host/evaluate.ts";
import { declaredInThreads } from "../host/guest/node-thread.ts";
import { standInFor } from "../host/guest/stand-in.ts";
import { memoStoreFor } from "../host/memo-store.ts";
import { computingInThreads } from "../host/threads/node-computing.ts";
import { allowedGuests } from "../host/permissions.ts";
import type { Plugin } from "../plugin.ts";
import { parseYear } from "../base/date/year.ts";
import { inEnglish } from "../base/text/said/english.ts";
import { suppositionIn } from "../link/suppose/supposition.ts";
import type { Supposition } from "../link/suppose/supposition.ts";
import { unknownSupposition } from "../link/suppose/under.ts";
import { shownTexts } from "../show/withhold.ts";
import { allowPlugin } from "./allow.ts";
import { Stop } from "./fault.ts";

/** A corpus as the command line worked it out. */
export interface Evaluated {
  readonly checked: Checked<Model>;
  readonly texts: ReadonlyMap<string, string>;
  /** The program's own plug-ins and those of the corpus that are allowed. */
  readonly plugins: readonly Plugin[];
}

/** What the user asked of an evaluation. */
export interface Asked {
  readonly asOf?: string;
  /** `EXAMINATION:OUTCOME`, taken as found. */
  readonly suppose?: string;
  readonly restsOn?: boolean;
  readonly history?: boolean;
  readonly plan?: boolean;
  readonly memo?: boolean;
  /** The name of a plug-in of the corpus that the user allows to run. */
  readonly allowPlugin?: string;
}

/** Reads a folder, computes whatever is missing, and keeps the numbers for the next time. */
export async function evaluated(folder: string, asked: Asked): Promise<Evaluated> {
  const files = filesOf(folder);
  if (asked.allowPlugin !== undefined) allowPlugin(folder, files, asked.allowPlugin);
  const lens: Lens = {
    ...(asked.asOf === undefined ? {} : { asOf: yearIn(asked.asOf) }),
    ...(asked.suppose === undefined ? {} : { suppose: outcomeIn(asked.suppose) }),
  };
  const reach: Reach = {
    ...(asked.restsOn ? { allRestsOn: true } : {}),
    ...(asked.history ? { history: true } : {}),
    ...(asked.plan ? { plan: true } : {}),
  };
  const store = asked.memo === false ? null : memoStoreFor(folder);
  const losses = asked.restsOn && store ? memoStoreFor(folder, "losses") : null;
  const kept = store?.load() ?? new Map<string, Outcome>();
  const memo = emptyMemo(new Map([...kept, ...(losses?.load() ?? [])]));
  const before = memo.compute.size;
  const script = new URL("./compute-worker.js", import.meta.url);
  const guests = await declaredInThreads(script, allowedGuests(folder, files, plugins));
  const all = [...plugins, ...guests.map(standInFor)];
  const computing = computingInThreads(script, guests);
  const progress = progressLine();
  const checked = await evaluate(files, all, memo, computing, { lens, reach, progress: progress.tell });
  progress.end();
  if (memo.compute.size > before) {
    if (losses) losses.save(new Map([...memo.compute].filter(([key]) => !kept.has(key))));
    else store?.save(memo.compute);
  }
  const { suppose } = lens;
  if (suppose && checked.model?.graph.supposed === null)
    throw new Stop(inEnglish(unknownSupposition(checked.model.graph, suppose)));
  const texts = new Map(files.map((file) => [file.path, file.text]));
  return { checked, texts: checked.model ? shownTexts(checked.model.graph, texts) : texts, plugins: all };
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
  throw new Stop(inEnglish(year.problem.message));
}

function outcomeIn(text: string): Supposition {
  const supposition = suppositionIn(text);
  if (supposition) return supposition;
  throw new Stop(`Unexpected \`${text}\`, expected an examination and its outcome: EXAMINATION:OUTCOME`);
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
