import { useCallback, useEffect, useState } from "react";
import type { Commit, Committed, NoCommit } from "../../../../host/desk/commit.ts";
import type { Step } from "../../../../host/desk/state.ts";
import { send } from "../../../model/corpus.ts";
import type { Asked } from "../../../worker/messages.ts";
import type { Handed, Others } from "./compared.ts";

let thread: Worker | null = null;

/** Hands what is to be compared to this worker from now on. */
export function compareIn(worker: Worker): void {
  thread = worker;
}

function handOver(one: Handed): void {
  const message: Asked = { ask: "compare", handed: one };
  thread?.postMessage(message);
}

/** The last commit; where there is none, why; null before it is known. */
export type CommitTold = Commit | NoCommit | null;

async function got<T>(path: string): Promise<T | null> {
  const { status, text } = await send(path, undefined, "GET");
  return status === 200 ? (JSON.parse(text) as T) : null;
}

/** The last commit, asked for again whenever files were read or the window is looked at; its files go to the worker. */
export function useCommitted(known: string | null, reading: number): CommitTold {
  const [told, setTold] = useState<CommitTold>(null);
  const looked = useLooked();
  useEffect(() => {
    let left = false;
    void got<Committed>("committed").then((answer) => {
      if (left) return;
      setTold(answer === null ? "unreadable" : (answer.commit ?? answer.why));
      if (answer?.commit && answer.commit.hash !== known) {
        const before = { files: answer.files, whole: true };
        handOver({ of: "commit", key: answer.commit.hash, before, after: null });
      }
    });
    return () => void (left = true);
  }, [known, reading, looked]);
  return told;
}

/** The steps made at the desk, the newest first; null before they are known. */
export function useSteps(reading: number): readonly Step[] | null {
  const [steps, setSteps] = useState<readonly Step[] | null>(null);
  const looked = useLooked();
  useEffect(() => {
    let left = false;
    void got<{ readonly steps: readonly Step[] }>("history").then((answer) => {
      if (!left) setSteps((answer?.steps ?? []).toReversed());
    });
    return () => void (left = true);
  }, [reading, looked]);
  return steps;
}

/** Another number whenever the window comes to the front again: a commit alone changes no file that is followed. */
function useLooked(): number {
  const [looked, setLooked] = useState(0);
  useEffect(() => {
    const again = (): void => setLooked((n) => n + 1);
    addEventListener("focus", again);
    return () => removeEventListener("focus", again);
  }, []);
  return looked;
}

/** Hands a step over, to be told by record; `lost` when a text of it is no longer kept. */
export function useStep(step: Step | null, steps: readonly Step[], known: string | null): "lost" | null {
  const [lost, setLost] = useState<string | null>(null);
  const key = step === null ? null : `${step.n} of ${steps[0]?.n ?? step.n}`;
  const hand = useCallback(async (): Promise<boolean> => {
    if (step === null || key === null) return true;
    const later = steps.filter((one) => one.n > step.n).toReversed();
    const [before, after] = await Promise.all([standing([step, ...later]), standing(later)]);
    if (!before || !after) return false;
    handOver({ of: `step-${step.n}`, key, before, after });
    return true;
  }, [step, steps, key]);
  useEffect(() => {
    let left = false;
    if (key !== null && key !== known)
      void hand().then((done) => {
        if (!left && !done) setLost(key);
      });
    return () => void (left = true);
  }, [key, known, hand]);
  return key !== null && lost === key ? "lost" : null;
}

/** The files as they stood before steps, which are in the order in which they were made. */
async function standing(steps: readonly Step[]): Promise<Others | null> {
  const hashes = new Map<string, string | null>();
  for (const { file, was } of steps.flatMap((one) => one.files)) if (!hashes.has(file)) hashes.set(file, was);
  const files = await Promise.all(
    [...hashes].map(async ([path, hash]) => {
      if (hash === null) return { path, text: null };
      const { status, text } = await send(`text?hash=${hash}`, undefined, "GET");
      return status === 200 ? { path, text } : null;
    }),
  );
  const kept = files.filter((one) => one !== null);
  return kept.length === files.length ? { files: kept, whole: false } : null;
}
