import type { Model, Run } from "../../../build.ts";
import type { Judgement } from "../../../judge/judge.ts";
import type { Plugin } from "../../../plugin.ts";
import { historyIn } from "../../../show/judged/history/history.ts";
import type { History, HistoryFound } from "../../../show/judged/history/history.ts";
import type { HistoryTold } from "../../../show/judged/history/page.ts";
import type { Memo } from "../../../build.ts";
import { inSlices } from "../planning/slices.ts";
import type { Progress, Turns } from "../planning/slices.ts";

/** The histories of models, which grow year by year beside everything else that a worker does. */
export interface Histories {
  /** The history of a model as far as it is there, and the runs it asks for; what is left is worked out after. */
  readonly through: (
    model: Model,
    hearing: Hearing,
  ) => { readonly told: HistoryTold; readonly missing: readonly Run[] };
  /** Histories of other files are not shown any more. */
  readonly forget: () => void;
  /** No year is begun until a history is asked for again; what is told already is kept. */
  readonly stop: () => void;
}

/** Who hears that a history has all its years; and, where `grown` is given, that it has some more. */
export interface Hearing {
  readonly grown?: () => void;
  readonly done: () => void;
}

/** A history that takes no longer than this is told whole at once, in ms. */
const atFirst = 250;

/** After so long it is told how far a history has come, in ms; then after half as long again each time. */
const between = 500;

/** What a history is worked out from, and what has come of it. */
interface Work {
  readonly model: Model;
  steps: History;
  toldAt: number;
  wait: number;
}

/** Histories that are worked out in slices. A history is that of a judgement: what the rules find makes no other of it. */
export function historiesBeside(
  memo: Memo["compute"],
  plugins: () => readonly Plugin[],
  turns: Turns,
): Histories {
  const works = new WeakMap<Judgement, Work>();
  function* years(work: Work): Generator<Progress, HistoryFound> {
    const { graph, lens, judgement } = work.model;
    const through = historyIn({ graph, plugins: plugins(), memo, lens }, judgement);
    for (;;) {
      const slice = through.next();
      if (slice.done === true) return slice.value;
      work.steps = slice.value.steps;
      yield slice.value.progress;
    }
  }
  const slices = inSlices<Work, HistoryFound>(years, turns);
  /** The last whole history under each lens: it is shown until one with more numbers is whole. */
  let before = new Map<string, HistoryFound>();
  const workOn = (model: Model): Work => {
    const work = works.get(model.judgement) ?? { model, steps: [], toldAt: turns.now(), wait: between };
    works.set(model.judgement, work);
    return work;
  };
  return {
    through: (model, { grown, done }) => {
      const work = workOn(model);
      const onProgress = (): void => {
        if (!grown || turns.now() - work.toldAt < work.wait) return;
        work.wait *= 1.5;
        grown();
      };
      const isBegun = slices.progress(work).of > 0;
      if (slices.made(work) === null)
        slices.work(work, { progress: onProgress, done }, isBegun ? undefined : atFirst);
      work.toldAt = turns.now();
      const found = slices.made(work);
      const key = JSON.stringify(model.lens);
      if (found !== null) {
        before.set(key, found);
        return { told: wholeOf(found, null), missing: found.missing };
      }
      const last = before.get(key);
      const progress = slices.progress(work);
      // The steps grow on: what is told is what there is now.
      const told = last ? wholeOf(last, progress) : soFar([...work.steps], progress);
      return { told, missing: [] };
    },
    forget: () => {
      before = new Map();
    },
    stop: slices.stop,
  };
}

function wholeOf({ history, missing }: HistoryFound, progress: Progress | null): HistoryTold {
  return { steps: history, pending: missing.length, progress, again: progress !== null };
}

function soFar(steps: History, progress: Progress): HistoryTold {
  return { steps, pending: 0, progress, again: false };
}
