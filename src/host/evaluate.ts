import { build, compute } from "../build.ts";
import type { Checked, Lens, Memo, Model, Outcome, Reach, Run, SourceFile } from "../build.ts";
import type { Plugin } from "../plugin.ts";

/** Does runs somewhere and gives the outcome of each by its key. `done` is told how many are finished, 0 to all. */
export type Computing = (
  runs: readonly Run[],
  done: (finished: number) => void,
) => Promise<ReadonlyMap<string, Outcome>>;

/** Builds, computes what is missing, and builds again until nothing is. */
export async function evaluate(
  files: readonly SourceFile[],
  plugins: readonly Plugin[],
  memo: Memo,
  computing: Computing,
  options: { readonly lens?: Lens; readonly reach?: Reach; readonly progress?: (text: string) => void } = {},
): Promise<Checked<Model>> {
  for (;;) {
    const checked = build(files, plugins, memo, options.lens, options.reach);
    const missing = checked.model?.missing ?? [];
    if (missing.length === 0) return checked;
    const tell = (finished: number): void => options.progress?.(`computing ${finished} of ${missing.length}`);
    tell(0);
    const outcomes = await computing(missing, tell);
    for (const [key, outcome] of outcomes) memo.compute.set(key, outcome);
  }
}

/** Computing in this very thread, one run after another; `guest` does those of a corpus's own plug-ins. */
export function computingHere(
  plugins: readonly Plugin[],
  guest: (run: Run) => Promise<Outcome> | null = () => null,
): Computing {
  return async (runs, done) => {
    const outcomes = new Map<string, Outcome>();
    for (const run of runs) {
      outcomes.set(run.key, (await guest(run)) ?? compute(run, plugins, () => undefined));
      done(outcomes.size);
    }
    return outcomes;
  };
}

/** A memo that remembers nothing yet. */
export function emptyMemo(outcomes: ReadonlyMap<string, Outcome> = new Map()): Memo {
  return { read: new Map(), compute: new Map(outcomes) };
}
