/** What became of a claim under some losses. */
export type Trial =
  /** It still stands, and any further losses that fell it have one of these among them. */
  | { readonly is: "standing"; readonly next: () => readonly number[] }
  | { readonly is: "gone" }
  /** Not to be told before a number is computed anew. */
  | { readonly is: "waiting" };

/** All minimal sets of losses that were looked for. */
export interface Found {
  /** Each in ascending order, the smaller sets first. */
  readonly sets: readonly (readonly number[])[];
  /** The size of sets up to which these are all there are. */
  readonly upTo: number;
  /** Why larger ones were not looked for, where they were not. */
  readonly stopped: "trials" | "spending" | null;
  /** Whether sets wait for numbers; those told are minimal all the same. */
  readonly waiting: boolean;
}

/** How far to look. */
export interface Bounds {
  /** The largest size of a set. */
  readonly most: number;
  /** Trials after which the sets of the size at hand are given up. */
  readonly trials: number;
  /** What sets ask for besides, by name, and how much of it the sets of one size above 1 may ask for. */
  readonly spending?: {
    readonly most: number;
    readonly asks: (losses: readonly number[]) => readonly string[];
  };
}

/**
 * All minimal sets of losses under which a claim does not stand, size by size, as the tree of hitting sets (Reiter
 * 1987): a claim that stands under some losses does so by a proof, and whatever fells it takes something from that.
 */
export function minimalSets(
  trial: (losses: readonly number[]) => Trial,
  { most, trials: mostTrials, spending }: Bounds,
): Found {
  const sets: (readonly number[])[] = [];
  const ended = new Set<string>();
  let waiting = false;
  let trials = 0;
  const start = trial([]);
  if (start.is === "gone") return { sets: [[]], upTo: most, stopped: null, waiting };
  if (start.is === "waiting") return { sets, upTo: 0, stopped: null, waiting: true };
  let standing: Standing[] = [{ losses: [], next: start.next }];

  for (let size = 1; size <= most; size++) {
    const level = setsAt(standing, ended);
    trials += level.length;
    const asked = new Set(size === 1 ? [] : level.flatMap((set) => spending?.asks(set) ?? []));
    const stopped = trials > mostTrials ? "trials" : asked.size > (spending?.most ?? 0) ? "spending" : null;
    if (stopped !== null) return { sets, upTo: size - 1, stopped, waiting };
    standing = [];
    for (const losses of level) {
      const result = trial(losses);
      if (result.is === "standing") standing.push({ losses, next: result.next });
      else ended.add(losses.join(" "));
      if (result.is === "gone") sets.push(losses);
      if (result.is === "waiting") waiting = true;
    }
    // Which larger sets are minimal hangs on those that wait.
    if (waiting) return { sets, upTo: size - 1, stopped: null, waiting };
  }
  return { sets, upTo: most, stopped: null, waiting };
}

/** What was tried and still stands, with the losses that may be tried besides. */
interface Standing {
  readonly losses: readonly number[];
  readonly next: () => readonly number[];
}

/** The sets that are one loss larger than those that stand, without those of which less has ended the claim. */
function setsAt(standing: readonly Standing[], ended: ReadonlySet<string>): readonly (readonly number[])[] {
  const sets = new Map<string, readonly number[]>();
  for (const { losses, next } of standing) {
    for (const loss of next()) {
      const set = [...losses, loss].sort((a, b) => a - b);
      const key = set.join(" ");
      if (!losses.includes(loss) && !sets.has(key) && !hasEnded(set, ended)) sets.set(key, set);
    }
  }
  return [...sets.values()];
}

/** Whether something smaller within a set has ended the claim or waits. */
function hasEnded(set: readonly number[], ended: ReadonlySet<string>): boolean {
  for (let kept = 1; kept < 2 ** set.length; kept++) {
    if (ended.has(set.filter((_, place) => (kept & (1 << place)) !== 0).join(" "))) return true;
  }
  return false;
}
