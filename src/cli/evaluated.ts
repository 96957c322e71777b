import { plugins } from "../../plugins/index.ts";
import type { Checked, Lens, Model, Reach, SourceFile } from "../build.ts";
import { NoCorpus, readCorpusFolder } from "../host/corpus-folder.ts";
import { keptReading } from "../host/reading/kept.ts";
import { memoStoreFor, memoStoreWithLosses } from "../host/memo-store.ts";
import { atWork } from "../host/telling/told.ts";
import type { Plugin } from "../plugin.ts";
import { parseYear } from "../base/date/year.ts";
import { inEnglish } from "../base/text/said/english.ts";
import { suppositionIn } from "../link/suppose/supposition.ts";
import type { Supposition } from "../link/suppose/supposition.ts";
import { unknownSupposition } from "../link/suppose/under.ts";
import { textsOf } from "../read/source-file.ts";
import { quotedBy } from "../show/report/quoted.ts";
import { shownTexts } from "../show/withhold.ts";
import { allowPlugin } from "./desk/allow.ts";
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
  const reading = asked.memo === false ? null : keptReading(folder);
  const files = filesOf(folder, reading?.files);
  if (asked.allowPlugin !== undefined) allowPlugin(folder, files, asked.allowPlugin);
  const lens = lensOf(asked);
  const reach: Reach = {
    ...(asked.restsOn ? { allRestsOn: true } : {}),
    ...(asked.history ? { history: true } : {}),
    ...(asked.plan ? { plan: true } : {}),
  };
  const progress = progressLine();
  const work = await atWork(folder, files, {
    plugins,
    script: computeScript,
    store: asked.memo === false ? null : (asked.restsOn ? memoStoreWithLosses : memoStoreFor)(folder),
    ...(reading ? { reading } : {}),
    progress: progress.tell,
  });
  const checked = await work.under(lens, reach);
  progress.end();
  checkSupposed(checked.model, lens);
  const texts = textsOf(files);
  return {
    checked,
    texts: checked.model ? shownTexts(checked.model.graph, texts, quotedBy(checked.findings)) : texts,
    plugins: work.plugins,
  };
}

/** The script of the threads that compute, beside the program. */
export const computeScript: URL = new URL("./compute-worker.js", import.meta.url);

/** The files of a corpus; a folder that is none is told. */
export function filesOf(
  folder: string,
  read: () => readonly SourceFile[] = () => readCorpusFolder(folder),
): readonly SourceFile[] {
  try {
    return read();
  } catch (error) {
    if (error instanceof NoCorpus) throw new Stop(error.message);
    throw error;
  }
}

/** The lens that the options name. */
export function lensOf({ asOf, suppose }: Pick<Asked, "asOf" | "suppose">): Lens {
  return {
    ...(asOf === undefined ? {} : { asOf: yearIn(asOf) }),
    ...(suppose === undefined ? {} : { suppose: outcomeIn(suppose) }),
  };
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

/** A supposition that the corpus does not have is told. */
export function checkSupposed(model: Model | null, { suppose }: Lens): void {
  if (suppose && model?.graph.supposed === null)
    throw new Stop(inEnglish(unknownSupposition(model.graph, suppose)));
}

/** Where progress is told, and by which clock (milliseconds). */
interface Watching {
  readonly isTTY?: boolean;
  readonly write: (text: string) => void;
  readonly now: () => number;
}

const standardError: Watching = {
  isTTY: process.stderr.isTTY,
  write: (text) => void process.stderr.write(text),
  now: () => performance.now(),
};

/** Nothing is told before a run takes this long, in ms, and then no oftener than the second: on a screen, and elsewhere. */
const onScreen = [500, 80] as const;
const elsewhere = [30_000, 30_000] as const;

/**
 * Says on standard error how far a long run is: on a screen by one line that is written over and goes at the end, elsewhere,
 * in a log, by a line every half minute. What a run prints is as it would be without.
 */
export function progressLine({ isTTY = false, write, now }: Watching = standardError): {
  readonly tell: (text: string) => void;
  readonly end: () => void;
} {
  const [patience, pause] = isTTY ? onScreen : elsewhere;
  let next = now() + patience;
  let shown = false;
  return {
    tell: (text) => {
      if (now() < next) return;
      next = now() + pause;
      write(isTTY ? `\r\u001b[2K${text}` : `${text}\n`);
      shown = true;
    },
    end: () => {
      if (shown && isTTY) write("\r\u001b[2K");
    },
  };
}
