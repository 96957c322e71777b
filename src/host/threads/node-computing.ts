import { availableParallelism } from "node:os";
import { Worker } from "node:worker_threads";
import type { Outcome, Run } from "../../derive/run.ts";
import type { Computing } from "../evaluate.ts";
import type { Declared } from "../guest/guest.ts";
import { answered } from "../guest/node-thread.ts";
import { endedBy, notTried } from "../guest/work.ts";

/** Computing in threads of their own, as many as the machine has cores; they serve as long as this does. */
export function computingInThreads(script: URL, guests: readonly Declared[] = []): Computing {
  const slow = new Set<string>();
  const idle: Worker[] = [];
  return async (runs, done) => {
    const waiting = [...runs];
    const outcomes = new Map<string, Outcome>();
    const keep = (run: Run, outcome: Outcome): void => {
      if (outcome.status === "failed" && outcome.passing) slow.add(run.plugin);
      outcomes.set(run.key, outcome);
      done(outcomes.size);
    };
    const next = (): Piece | null => {
      for (let run = waiting.shift(); run; run = waiting.shift()) {
        const plugin = run.plugin;
        const guest = guests.find((one) => one.name === plugin) ?? null;
        if (guest === null || !slow.has(plugin)) return { run, guest };
        // A guest that once took all its time would take it again for each of what may be hundreds of runs.
        keep(run, notTried(guest));
      }
      return null;
    };
    const hands = Math.min(runs.length, Math.max(1, availableParallelism()));
    await Promise.all(Array.from({ length: hands }, () => hand(script, idle, next, keep)));
    return outcomes;
  };
}

interface Piece {
  readonly run: Run;
  readonly guest: Declared | null;
}

/**
 * One thread, which does piece after piece; where a guest brought it down, another takes its place. At the end it waits
 * idle for the next runs, and keeps nobody from ending.
 */
async function hand(
  script: URL,
  idle: Worker[],
  next: () => Piece | null,
  keep: (run: Run, outcome: Outcome) => void,
): Promise<void> {
  let thread = idle.pop() ?? new Worker(script);
  thread.ref();
  for (let piece = next(); piece; piece = next()) {
    const said = await answered(thread, piece);
    if (said && "outcome" in said) keep(piece.run, said.outcome);
    else if (piece.guest) {
      thread = new Worker(script);
      keep(piece.run, endedBy(piece.guest));
    }
  }
  thread.unref();
  idle.push(thread);
}
