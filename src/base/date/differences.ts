/** The event that all years are counted from: astronomical year 0 at its beginning. */
export const zero = "0";

/** The year of `to` less the year of `from` is at most `most`, or where `strict` less than that. */
export interface Difference {
  readonly from: string;
  readonly to: string;
  readonly most: number;
  readonly strict?: boolean;
}

/** What is said of dates in one breath: it is true or not as a whole. */
export interface Statement {
  readonly id: string;
  readonly says: readonly Difference[];
}

/** One step of a circle: the difference, and the statement that says it. */
export interface Step<S extends Statement> {
  readonly difference: Difference;
  readonly statement: S;
}

/** Between which years an event lies, as numbers on the line of time; null where an end is open. */
export interface Bounds {
  readonly low: number | null;
  readonly high: number | null;
  /** The event lies before `high`, never at it. */
  readonly highStrict: boolean;
}

/** Less than any difference of dates that people record; sums of parts of years differ by less. */
const nothing = 1e-9;

/**
 * Statements that lead from some event round to before itself, in the order of the steps; null when all can be true.
 * Bellman-Ford (methods G; Dechter, Meiri & Pearl 1991), a sum of 0 being a contradiction where a step is strict.
 */
export function circleIn<S extends Statement>(statements: readonly S[]): readonly Step<S>[] | null {
  const steps = statements.flatMap((statement) =>
    statement.says.map((difference) => ({ difference, statement })),
  );
  const net = netOf(steps.map((step) => step.difference));
  const paths = pathsFrom(net, null);
  return paths.circle === null ? null : paths.circle.flatMap((edge) => steps[edge] ?? []);
}

/** The tightest bounds of every event (shortest paths from and to the zero point); null when not all can be true. */
export function boundsOf(statements: readonly Statement[]): ReadonlyMap<string, Bounds> | null {
  const differences = statements.flatMap((statement) => statement.says);
  const forth = netOf(differences);
  if (pathsFrom(forth, null).circle !== null) return null;
  const back = netOf(differences.map((one) => ({ ...one, from: one.to, to: one.from })));
  const highs = pathsFrom(forth, zero);
  const lows = pathsFrom(back, zero);
  const bounds = new Map<string, Bounds>();
  for (const [event, place] of forth.places) {
    if (event === zero) continue;
    const high = highs.length[place] ?? Infinity;
    const low = lows.length[back.places.get(event) ?? -1] ?? Infinity;
    bounds.set(event, {
      // A length of 0 is no year of -0.
      low: low === Infinity ? null : 0 - low,
      high: high === Infinity ? null : high,
      highStrict: (highs.strict[place] ?? 0) > 0,
    });
  }
  return bounds;
}

interface Net {
  readonly places: ReadonlyMap<string, number>;
  readonly from: Int32Array;
  readonly to: Int32Array;
  readonly most: Float64Array;
  readonly strict: Uint8Array;
}

function netOf(differences: readonly Difference[]): Net {
  const places = new Map<string, number>();
  const placeOf = (event: string): number => {
    const known = places.get(event) ?? places.size;
    places.set(event, known);
    return known;
  };
  return {
    from: Int32Array.from(differences, (one) => placeOf(one.from)),
    to: Int32Array.from(differences, (one) => placeOf(one.to)),
    most: Float64Array.from(differences, (one) => one.most),
    strict: Uint8Array.from(differences, (one) => (one.strict === true ? 1 : 0)),
    places,
  };
}

interface Paths {
  readonly length: Float64Array;
  /** How many strict steps the shortest path has. */
  readonly strict: Int32Array;
  /** Edges of a circle that gets shorter each time round, in order. */
  readonly circle: readonly number[] | null;
}

/** Shortest paths from one event, or from everywhere at once. */
function pathsFrom(net: Net, start: string | null): Paths {
  const { from, to, most } = net;
  const count = net.places.size;
  const length = new Float64Array(count).fill(start === null ? 0 : Infinity);
  const strict = new Int32Array(count);
  const by = new Int32Array(count).fill(-1);
  const begin = start === null ? undefined : net.places.get(start);
  if (begin !== undefined) length[begin] = 0;
  for (let round = 0; round <= count; round++) {
    let shorter = false;
    for (let edge = 0; edge < from.length; edge++) {
      const [a, b] = [from[edge] ?? 0, to[edge] ?? 0];
      const reach = (length[a] ?? Infinity) + (most[edge] ?? 0);
      const steps = (strict[a] ?? 0) + (net.strict[edge] ?? 0);
      const known = length[b] ?? Infinity;
      const less = reach < known - nothing || (reach < known + nothing && steps > (strict[b] ?? 0));
      if (reach === Infinity || !less) continue;
      length[b] = reach;
      strict[b] = steps;
      by[b] = edge;
      shorter = true;
    }
    if (!shorter) break;
    const circle = circleAlong(by, from);
    if (circle !== null) return { length, strict, circle };
  }
  return { length, strict, circle: null };
}

/** A circle among the last steps of the paths, which there is only where paths get shorter without end. */
function circleAlong(by: Int32Array, from: Int32Array): readonly number[] | null {
  const seenIn = new Int32Array(by.length);
  for (let start = 0; start < by.length; start++) {
    let at = start;
    while (seenIn[at] === 0 && (by[at] ?? -1) >= 0) {
      seenIn[at] = start + 1;
      at = from[by[at] ?? 0] ?? 0;
    }
    if (seenIn[at] !== start + 1) continue;
    return edgesRound(at, by, from);
  }
  return null;
}

function edgesRound(start: number, by: Int32Array, from: Int32Array): readonly number[] {
  const edges: number[] = [];
  let at = start;
  do {
    const edge = by[at] ?? 0;
    edges.unshift(edge);
    at = from[edge] ?? start;
  } while (at !== start);
  return edges;
}
