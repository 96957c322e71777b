import type { Checked, Lens, Memo, Model, Outcome, Reach, SourceFile } from "../../build.ts";
import type { Finding } from "../../base/finding.ts";
import { say } from "../../base/text/said/said.ts";
import type { Text } from "../../base/text/said/said.ts";
import { isWhole } from "../../derive/run.ts";
import type { Graph } from "../../link/graph.ts";
import type { Plugin } from "../../plugin.ts";
import { entryAt } from "../../read/yaml/tree.ts";
import { emptyMemo, evaluate } from "../evaluate.ts";
import { declaredInThreads } from "../guest/node-thread.ts";
import { standInFor } from "../guest/stand-in.ts";
import type { MemoStore } from "../memo-store.ts";
import { allowedGuests } from "../permissions.ts";
import type { KeptReading } from "../reading/kept.ts";
import { computingInThreads } from "../threads/node-computing.ts";
import type { Told } from "./kind.ts";

/** What a corpus is worked out with. */
export interface Tools {
  /** The program's own plug-ins. */
  readonly plugins: readonly Plugin[];
  /** The script of the threads that compute. */
  readonly script: URL;
  /** Where outcomes are kept for the next time; null where none are to be. */
  readonly store: MemoStore | null;
  /** What was read of the folder before, and is kept for the next time; left out where nothing is to be. */
  readonly reading?: Pick<KeptReading, "memo" | "keep">;
  /** Is told how far a long run is. */
  readonly progress?: (text: string) => void;
}

/** A corpus at work: the same files under any lens, with every number computed and kept. */
export interface AtWork {
  readonly files: readonly SourceFile[];
  /** The program's own plug-ins and those of the corpus that are allowed. */
  readonly plugins: readonly Plugin[];
  readonly memo: Memo;
  readonly under: (lens: Lens, reach?: Reach) => Promise<Checked<Model>>;
}

/** Puts the files of a folder to work. */
export async function atWork(
  folder: string,
  files: readonly SourceFile[],
  { plugins, script, store, reading, progress }: Tools,
): Promise<AtWork> {
  const outcomes = emptyMemo(store?.load() ?? new Map<string, Outcome>());
  const memo = reading ? { ...outcomes, read: reading.memo } : outcomes;
  const guests = await declaredInThreads(script, allowedGuests(folder, files, plugins));
  const all = [...plugins, ...guests.map(standInFor)];
  const computing = computingInThreads(script, guests);
  let kept = knownIn(memo.compute);
  return {
    files,
    plugins: all,
    memo,
    under: async (lens, reach = {}) => {
      const checked = await evaluate(files, all, memo, computing, {
        lens,
        reach,
        ...(progress ? { progress } : {}),
      });
      reading?.keep();
      const known = knownIn(memo.compute);
      if (known > kept) store?.save(memo.compute);
      kept = known;
      return checked;
    },
  };
}

/** How much is known of runs: of some the numbers alone, which may become all. */
function knownIn(outcomes: ReadonlyMap<string, Outcome>): number {
  return outcomes.size + [...outcomes.values()].filter(isWhole).length;
}

/**
 * What a corpus says under a lens, ready to be told on that day; findings alone where it cannot be read at all. Refused
 * where it is in doubt what is withheld: it could be given out.
 */
export async function toldOf(
  folder: string,
  work: AtWork,
  { lens, reach, today }: { readonly lens: Lens; readonly reach: Reach; readonly today: string },
): Promise<Told | { readonly unreadable: readonly Finding[] } | { readonly refused: Text }> {
  const { model, findings } = await work.under(lens, reach);
  if (!model) return { unreadable: findings };
  const doubt = findings.find((one) => isDoubtful(model.graph, one))?.at;
  if (doubt)
    return {
      refused: say`Unexpected error in \`${"withhold"}\` of \`${doubt.file}\`, expected ids that are there: nothing is written before it is known what is withheld`,
    };
  return { folder, ...work, model, findings, today };
}

/** Whether a finding says that what is to be withheld cannot be read or is not there, in this corpus or in a companion. */
function isDoubtful({ settings, companions }: Graph, { level, rule, at }: Finding): boolean {
  if (level !== "error" || at === null) return false;
  // Of a companion only what bears on what is taken from it is told here.
  if (companions.some(({ folder }) => at.file === `${folder}/corpus.yaml`)) return rule !== "unreadable-file";
  return at.file === settings.file && entryAt(settings.node, at.start)?.key === "withhold";
}

/** The day it is here, YYYY-MM-DD. */
export function todayHere(now: Date = new Date()): string {
  const parts = [now.getFullYear(), now.getMonth() + 1, now.getDate()];
  return parts.map((one) => String(one).padStart(2, "0")).join("-");
}
