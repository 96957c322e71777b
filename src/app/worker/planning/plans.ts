import { plugins } from "../plugins.ts";
import type { Memo, Model } from "../../../build.ts";
import type { Run } from "../../../build.ts";
import type { Plan } from "../../../plan/plan.ts";
import { planning } from "../../../plan/planning.ts";
import type { PlanFound } from "../../../plan/planning.ts";
import { inSlices } from "./slices.ts";
import type { Progress, Turns } from "./slices.ts";

/** The plans of models, each of the record as it is in the year looked at, whatever is supposed. */
export interface Plans {
  /** The plan of a model where it is made. */
  readonly made: (model: Model) => Plan | null;
  /** Begins the plan of a model, or goes on with it, unless it is made. */
  readonly make: (model: Model, told: Hearing) => Planning;
  /** The plan before of a model that is not whole yet; none is begun for it. */
  readonly before: (model: Model) => Planning;
  /** Nothing more is done until a plan is asked for again; what is half done is kept. */
  readonly stop: () => void;
  /** Plans of other files are not shown any more. */
  readonly forget: () => void;
}

/** Who hears how far a plan has come, and that it is made. */
export interface Hearing {
  readonly progress: (progress: Progress) => void;
  readonly done: () => void;
}

/** A plan as far as it is there: while numbers arrive, the one before them; and the runs it still asks for. */
export interface Planning {
  readonly plan: Plan | null;
  /** Null where it is the plan of this very model. */
  readonly progress: Progress | null;
  readonly missing: readonly Run[];
}

/** Plans that are made beside everything else that a worker does. */
export function plansBeside(memo: Memo["compute"], turns: Turns): Plans {
  const slices = inSlices<Model, PlanFound>((model) => planning({ ...model, plugins, memo }), turns);
  let before = new Map<string, Plan>();
  return {
    made: (model) => slices.made(model)?.plan ?? null,
    make: (model, told) => {
      if (slices.made(model) === null) slices.work(model, told);
      const found = slices.made(model);
      const key = JSON.stringify(model.lens);
      if (found === null)
        return { plan: before.get(key) ?? null, progress: slices.progress(model), missing: [] };
      before.set(key, found.plan);
      return { plan: found.plan, progress: null, missing: found.missing };
    },
    before: ({ lens }) => ({
      plan: before.get(JSON.stringify(lens)) ?? null,
      progress: { done: 0, of: 0 },
      missing: [],
    }),
    stop: slices.stop,
    forget: () => {
      before = new Map();
    },
  };
}

/** Takes turns by a message to oneself: it waits behind those that have come already, and not longer. */
export function turnsByMessage(): Turns {
  const { port1, port2 } = new MessageChannel();
  let next: (() => void) | null = null;
  port1.onmessage = () => {
    const now = next;
    next = null;
    now?.();
  };
  return {
    now: () => performance.now(),
    later: (then) => {
      next = then;
      port2.postMessage(null);
    },
  };
}
