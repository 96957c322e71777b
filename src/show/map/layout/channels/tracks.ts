import { heapOf } from "./heap.ts";
import { runsOf, type Net, type Run } from "./nets.ts";

/** Two level stretches on one track keep this distance, in px. */
const apart = 10;

/** A run in its queue: what meets it, and what would rather lie under it. */
interface Waiting {
  readonly run: Run;
  readonly at: number;
  readonly meeting: Waiting[];
  /** What has to lie above it, and what crosses less when above it. */
  readonly overHard: readonly Run[];
  readonly overSoft: Waiting[];
  bound: number;
  wished: number;
  /** Least track, for what is placed under it. */
  least: number;
  placed: boolean;
}

/**
 * Gives the level stretches of one channel their tracks, and says how many there are: first of all no upright meets
 * another; attacks lie above what they meet; else whichever crosses less lies below; stretches that do not meet share
 * a track.
 */
export function giveTracks(nets: readonly Net[]): number {
  const waiting = runsOf(nets).map((run, at): Waiting => ({
    run,
    at,
    meeting: [],
    overHard: run.above,
    overSoft: [],
    bound: 0,
    wished: 0,
    least: 0,
    placed: false,
  }));
  const byRun = new Map(waiting.map((one) => [one.run, one]));
  pairUp(waiting);
  const over = (one: Waiting): readonly Waiting[] => one.overHard.flatMap((run) => byRun.get(run) ?? []);
  for (const one of waiting) for (const other of over(one)) other.bound++;
  return placeAll(waiting, over);
}

function placeAll(waiting: readonly Waiting[], over: (one: Waiting) => readonly Waiting[]): number {
  interface Entry {
    readonly one: Waiting;
    readonly wished: number;
  }
  const ready = heapOf<Entry>((a, b) =>
    a.wished !== b.wished
      ? a.wished < b.wished
      : a.one.run.left !== b.one.run.left
        ? a.one.run.left < b.one.run.left
        : a.one.at < b.one.at,
  );
  const offer = (one: Waiting): void => {
    if (one.bound === 0 && !one.placed) ready.push({ one, wished: one.wished });
  };
  for (const one of waiting) offer(one);
  let tracks = 0;
  for (let next = ready.pop(); next; next = ready.pop()) {
    const { one, wished } = next;
    if (one.placed || wished !== one.wished) continue;
    one.run.track = freeTrack(one);
    one.placed = true;
    tracks = Math.max(tracks, one.run.track + 1);
    for (const other of over(one)) {
      other.bound--;
      other.least = Math.max(other.least, one.run.track + 1);
      offer(other);
    }
    for (const other of one.overSoft) {
      other.wished--;
      other.least = Math.max(other.least, one.run.track + 1);
      offer(other);
    }
  }
  return tracks;
}

function freeTrack({ least, meeting }: Waiting): number {
  const taken = new Set(meeting.filter(({ placed }) => placed).map(({ run }) => run.track));
  let track = least;
  while (taken.has(track)) track++;
  return track;
}

/** Finds which stretches meet, and of each pair which had better lie under the other. */
function pairUp(waiting: readonly Waiting[]): void {
  const sorted = waiting.toSorted((a, b) => a.run.left - b.run.left || a.at - b.at);
  let open: Waiting[] = [];
  for (const one of sorted) {
    open = open.filter(({ run }) => run.right + apart > one.run.left);
    for (const other of open) {
      one.meeting.push(other);
      other.meeting.push(one);
      const better = cost(other.run, one.run) - cost(one.run, other.run);
      const [low, high] = better > 0 ? [one, other] : [other, one];
      if (better === 0 || low.run.above.includes(high.run) || high.run.above.includes(low.run)) continue;
      low.overSoft.push(high);
      high.wished++;
    }
    open.push(one);
  }
}

/** Crossings of two runs with the first below the second; an attack below a line counts more than any. */
function cost(low: Run, high: Run): number {
  const within = (x: number, { left, right }: Run): number => (left < x && x < right ? 1 : 0);
  const isAttack = ({ net }: Run): boolean => net.wire.knot.kind === "attack";
  let sum = isAttack(low) && !isAttack(high) ? 100 : 0;
  for (const x of low.heads) sum += within(x, high);
  for (const x of high.feet) sum += within(x, low);
  return sum;
}
