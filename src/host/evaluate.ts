import { compute, groundOf, restingIn, stand, tellingOf } from "../build.ts";
import type { Checked, Known, Lens, Memo, Model, Outcome, Reach, Run, SourceFile } from "../build.ts";
import type { Plugin } from "../plugin.ts";
import type { Slice } from "../judge/resting/at-once.ts";
import { asAsked } from "../derive/run.ts";
import { readCorpus } from "../read/read.ts";

/** Does runs somewhere and gives the outcome of each by its key. `done` is told how many are finished, 0 to all. */
export type Computing = (
  runs: readonly Run[],
  done: (finished: number) => void,
) => Promise<ReadonlyMap<string, Outcome>>;

/** A lens, how far to look, and who is told how far a long run is. */
export interface Asking {
  readonly lens?: Lens;
  readonly reach?: Reach;
  readonly progress?: (text: string) => void;
}

/**
 * What `build` comes to once every number is there. What is read is read once, and each part is worked out again only
 * until it misses no more: the numbers themselves, what claims rest on, then what the rules say.
 */
export async function evaluate(
  files: readonly SourceFile[],
  plugins: readonly Plugin[],
  memo: Memo,
  computing: Computing,
  { lens = {}, reach = {}, progress = () => undefined }: Asking = {},
): Promise<Checked<Model>> {
  readInSteps(files, memo.read, progress);
  const ground = groundOf(files, memo.read, lens.suppose);
  if (!("graph" in ground)) return { model: null, findings: ground.findings };
  const tools = { plugins, memo: memo.compute };
  let computed = 0;
  const isMore = async (missing: readonly Run[]): Promise<boolean> => {
    if (missing.length === 0) return false;
    const all = computed + missing.length;
    const outcomes = await computing(missing, (done) =>
      progress(`Computing ${ofAll(computed + done, all, "number")}`),
    );
    for (const run of missing) {
      const outcome = outcomes.get(run.key);
      if (outcome) memo.compute.set(run.key, asAsked(outcome, run));
    }
    computed = all;
    return true;
  };

  let stood = stand(ground, plugins, memo.compute, lens);
  while (await isMore(stood.derivations.missing)) stood = stand(ground, plugins, memo.compute, lens);
  let resting = watched(restingIn(stood, tools, reach), progress);
  while (resting.waiting.size > 0 && (await isMore(resting.missing)))
    resting = watched(restingIn(stood, tools, reach, resting), progress);
  const known: Known = { resting: { ...resting, missing: [] }, rules: new Map() };
  for (;;) {
    const checked = watched(tellingOf(stood, tools, reach, known), progress);
    if (!(await isMore(checked.model?.missing ?? []))) return checked;
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

/** Files that are read between two words of how far it is. */
const atATime = 200;

/** Reads a large corpus some files at a time, which are remembered: what a file says does not hang on the others. */
function readInSteps(
  files: readonly SourceFile[],
  memo: Memo["read"],
  progress: (text: string) => void,
): void {
  const main = files.find(({ path }) => path === "corpus.yaml");
  if (!main || files.length <= atATime) return;
  for (let at = 0; at < files.length; at += atATime) {
    progress(`Reading ${ofAll(at, files.length, "file")}`);
    const some = files.slice(at, at + atATime);
    readCorpus(some.includes(main) ? some : [main, ...some], memo);
  }
}

/** Does what is done in slices, and tells how far it is. */
function watched<T>(work: Generator<Slice | void, T>, progress: (text: string) => void): T {
  for (;;) {
    const next = work.next();
    if (next.done === true) return next.value;
    if (!next.value) continue;
    const { looked, done, of } = next.value;
    progress(
      looked === "answers"
        ? `Trying what ${ofAll(done, of, "answer")} would not stand without`
        : `Looking through ${ofAll(done, of, "rule")}`,
    );
  }
}

function ofAll(done: number, all: number, what: string): string {
  return `${grouped(done)} of ${grouped(all)} ${what}${all === 1 ? "" : "s"}`;
}

function grouped(whole: number): string {
  return String(whole).replace(/\B(?=(?:\d{3})+$)/gu, ",");
}
