import { say } from "../../../base/text/said/said.ts";
import type { Memo, Model, Outcome, Run } from "../../../build.ts";
import { endedBy, notTried, patience as guestPatience } from "../../../host/guest/work.ts";
import type { Done, Work } from "../../../host/guest/work.ts";
import type { Told } from "../messages.ts";
import { guestNamed } from "../plugins.ts";
import { paceBy } from "./pace.ts";

/** The numbers that a model still waits for: recalled where they were computed before, else computed one by one. */
export interface Numbers {
  /** The model's own numbers first, then those of the page that is looked at, then what the rules ask. */
  readonly computeFor: (model: Model, needed: readonly Run[]) => void;
  /** Outcomes that were computed at another time. */
  readonly remember: (outcomes: readonly (readonly [string, Outcome])[]) => void;
  /** From now on what is not known is first asked for, by its keys. */
  readonly recallFirst: () => void;
  /** What was asked for has come, as far as it is known. */
  readonly recalled: (outcomes: readonly (readonly [string, Outcome])[]) => void;
  /** Other files: the next model is not kept waiting for long. */
  readonly renew: () => void;
}

/** So many outcomes are asked for at once. */
const most = 500;

/** About so many signs of outcomes go into one document; the program takes no larger ones than 64 MB. */
const largest = 16 * 1024 * 1024;

/** Outcomes as documents for the memo: made here, since the window would stand still for as long as it takes. */
function* documentsOf(
  outcomes: readonly (readonly [string, Outcome])[],
): Generator<Uint8Array<ArrayBuffer>, void> {
  const encoder = new TextEncoder();
  let parts: string[] = [];
  let size = 0;
  for (const [at, [key, outcome]] of outcomes.entries()) {
    const part = `${JSON.stringify(key)}:${JSON.stringify(outcome)}`;
    parts.push(part);
    size += part.length;
    if (size < largest && at < outcomes.length - 1) continue;
    yield encoder.encode(`{"version":1,"compute":{${parts.join(",")}}}`);
    parts = [];
    size = 0;
  }
}

/** Computes beside a model, in one thread; `again` has the model built again with what came. */
export function numbersBeside(memo: Memo["compute"], tell: (told: Told) => void, again: () => void): Numbers {
  /** The one thread that computes, and the run it is at; it is ended when that is no longer wanted. */
  let thread: Worker | null = null;
  let running: string | null = null;
  /** Guests of which a run did not come to an end, by the hashes of their files, and what ends such a run. */
  const slow = new Set<string>();
  let waiting: ReturnType<typeof setTimeout> | undefined;
  /** Runs still to be computed for the model last built, those it needs itself first. */
  let queue: readonly Run[] = [];
  /** Keys of runs of the corpus as it stands, under no lens: their outcomes are kept for the next time. */
  let lasting = new Set<string>();
  let fresh: (readonly [string, Outcome])[] = [];
  /** Outcomes taken since the last build, and how many there are before the next. */
  let taken = 0;
  const pace = paceBy(() => performance.now());
  /** Keys that were asked for; null where all that is known came before the files. */
  let recalling: Set<string> | null = null;
  let asked = false;
  let isNew = false;

  const endThread = (): void => {
    clearTimeout(waiting);
    thread?.terminate();
    thread = null;
    running = null;
  };
  const newThread = (): Worker => {
    const worker = new Worker(new URL("../compute-worker.ts", import.meta.url), { type: "module" });
    worker.onmessage = ({ data }: MessageEvent<Done>) => {
      if ("outcome" in data) keep(data.key, data.outcome);
      else if ("done" in data) tell({ tell: "computing", key: data.key, done: data.done });
    };
    worker.onerror = (event) => {
      event.preventDefault();
      const key = running;
      endThread();
      if (key !== null) keep(key, { status: "failed", why: say`The computation ended before its time` });
    };
    return worker;
  };
  /** Whether an answer is waited for of what is known of the next runs. */
  const isAsking = (): boolean => {
    if (asked || recalling === null) return asked;
    const known = recalling;
    const [next] = queue;
    if (!next || known.has(next.key)) return false;
    const keys = queue.filter(({ key }) => !known.has(key)).map(({ key }) => key);
    const some = keys.slice(0, most);
    for (const key of some) known.add(key);
    asked = true;
    tell({ tell: "recall", keys: some });
    return true;
  };
  const computeNext = (): void => {
    const [run] = queue;
    if (!run || running !== null || isAsking()) return;
    const guest = guestNamed(run.plugin);
    if (guest && slow.has(guest.hash)) return keep(run.key, notTried(guest));
    thread ??= newThread();
    running = run.key;
    const given: Work = { run, guest };
    thread.postMessage(given);
    if (guest)
      waiting = setTimeout(() => {
        endThread();
        keep(run.key, endedBy(guest));
      }, guestPatience);
  };
  const keep = (key: string, outcome: Outcome): void => {
    const guest = guestNamed(queue.find((one) => one.key === key)?.plugin ?? "");
    if (guest && outcome.status === "failed" && outcome.passing) slow.add(guest.hash);
    running = null;
    clearTimeout(waiting);
    memo.set(key, outcome);
    if (lasting.has(key)) fresh.push([key, outcome]);
    queue = queue.filter((one) => one.key !== key);
    if (queue.length === 0 && fresh.length > 0) {
      for (const document of documentsOf(fresh)) tell({ tell: "computed", document });
      fresh = [];
    }
    taken += 1;
    if (queue.length > 0 && !pace.isDue(taken)) return computeNext();
    pace.build(again);
  };
  const remember = (outcomes: readonly (readonly [string, Outcome])[]): void => {
    for (const [key, outcome] of outcomes) memo.set(key, outcome);
  };
  return {
    computeFor: (model, needed) => {
      const runs = [...model.derivations.missing, ...needed, ...model.missing];
      queue = [...new Map(runs.map((run) => [run.key, run])).values()];
      if (Object.keys(model.lens).length === 0)
        lasting = new Set([...model.derivations.missing, ...model.missing].map((run) => run.key));
      taken = 0;
      if (running !== null && !queue.some((run) => run.key === running)) endThread();
      computeNext();
    },
    remember,
    recallFirst: () => {
      recalling ??= new Set();
    },
    recalled: (outcomes) => {
      asked = false;
      remember(outcomes);
      queue = queue.filter(({ key }) => !memo.has(key));
      isNew ||= outcomes.length > 0;
      // As long as the next may be known, it is asked for before anything is built again.
      if (isAsking()) return;
      if (!isNew) return computeNext();
      isNew = false;
      again();
    },
    renew: () => {
      pace.renew();
    },
  };
}
