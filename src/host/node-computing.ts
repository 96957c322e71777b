import { availableParallelism } from "node:os";
import { Worker } from "node:worker_threads";
import type { Outcome, Run } from "../derive/run.ts";
import type { Computing } from "./evaluate.ts";

type Said = { readonly key: string; readonly outcome?: Outcome };

/** Computing in threads of their own, as many as the machine has cores; they end with the last run. */
export function computingInThreads(script: URL): Computing {
  return async (runs, done) => {
    const waiting = [...runs];
    const outcomes = new Map<string, Outcome>();
    const hands = Math.min(runs.length, Math.max(1, availableParallelism()));
    await Promise.all(Array.from({ length: hands }, () => work(script, waiting, outcomes, done)));
    return outcomes;
  };
}

function work(
  script: URL,
  waiting: Run[],
  outcomes: Map<string, Outcome>,
  done: (finished: number) => void,
): Promise<void> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(script);
    const next = (): void => {
      const run = waiting.shift();
      if (run) worker.postMessage(run);
      else void worker.terminate().then(() => resolve());
    };
    worker.on("message", (said: Said) => {
      if (!said.outcome) return;
      outcomes.set(said.key, said.outcome);
      done(outcomes.size);
      next();
    });
    worker.on("error", reject);
    next();
  });
}
