/** How far a long work has come. */
export interface Progress {
  readonly done: number;
  readonly of: number;
}

/** What slices are measured by, and a way to go on once the messages that wait have been answered. */
export interface Turns {
  /** In ms, from any beginning. */
  readonly now: () => number;
  readonly later: (next: () => void) => void;
}

/** Works that are done a slice at a time, each for one thing; what was done of each is kept while its thing is. */
export interface Slices<Thing extends object, Result> {
  /** What a work came to; null where it is not done. */
  readonly made: (thing: Thing) => Result | null;
  readonly progress: (thing: Thing) => Progress;
  /** Does a slice at once, of so many ms, and the others one by one: tells after each how far it has come, or that it is done. */
  readonly work: (thing: Thing, told: Told, first?: number) => void;
  /** No slice is begun any more until a work is asked for; then it goes on from where it was. */
  readonly stop: () => void;
}

/** What is told of a work that its first slice did not end. */
export interface Told {
  readonly progress: (progress: Progress) => void;
  readonly done: () => void;
}

interface Work<Result> {
  readonly steps: Generator<Progress, Result, void>;
  progress: Progress;
  result: { readonly is: Result } | null;
}

/** How long a slice may take, in ms; its last step may take it over. */
const slice = 12;

/** Works that are begun by `begin`, and take turns with whatever else the thread has to do. */
export function inSlices<Thing extends object, Result>(
  begin: (thing: Thing) => Generator<Progress, Result, void>,
  { now, later }: Turns,
): Slices<Thing, Result> {
  const works = new WeakMap<Thing, Work<Result>>();
  /** The turn that is waited for; any other one that comes was stopped. */
  let turn = 0;

  const workOn = (thing: Thing): Work<Result> => {
    const known = works.get(thing);
    if (known) return known;
    const fresh: Work<Result> = { steps: begin(thing), progress: { done: 0, of: 0 }, result: null };
    works.set(thing, fresh);
    return fresh;
  };
  const advance = (work: Work<Result>, most = slice): void => {
    const end = now() + most;
    while (work.result === null && now() < end) {
      const step = work.steps.next();
      if (step.done === true) work.result = { is: step.value };
      else work.progress = step.value;
    }
  };
  const goOn = (work: Work<Result>, told: Told): void => {
    const mine = (turn += 1);
    later(() => {
      if (mine !== turn) return;
      advance(work);
      if (work.result !== null) return told.done();
      told.progress(work.progress);
      goOn(work, told);
    });
  };
  return {
    made: (thing) => works.get(thing)?.result?.is ?? null,
    progress: (thing) => works.get(thing)?.progress ?? { done: 0, of: 0 },
    work: (thing, told, first) => {
      const work = workOn(thing);
      turn += 1;
      advance(work, first);
      if (work.result === null) goOn(work, told);
    },
    stop: () => {
      turn += 1;
    },
  };
}
