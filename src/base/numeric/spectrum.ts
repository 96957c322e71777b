/** Frequencies from + k step for k = 0 to count - 1, in cycles for each unit of the positions. */
export interface FrequencyGrid {
  readonly from: number;
  readonly step: number;
  readonly count: number;
}

/** An even grid over [from, to], both included, with steps no longer than `longest`. */
export function frequencyGrid(from: number, to: number, longest: number): FrequencyGrid {
  const steps = Math.max(1, Math.ceil((to - from) / longest - 1e-9));
  return { from, step: (to - from) / steps, count: steps + 1 };
}

const RESEED = 200;
const LANES = 4;

/**
 * Adds the sums over i of cos(2 pi (x_i f + turn)) on the grid to `sums`, by the three-term recurrence of
 * Chebyshev, four positions at a time, begun anew every 200 frequencies (error below 1e-11 for each position).
 * `weights`, where given, hold a factor for each position and frequency, a row of `grid.count` for a position.
 */
export function addCosines(
  positions: Float64Array,
  grid: FrequencyGrid,
  sums: Float64Array,
  turn: number,
  weights: Float64Array | null,
): void {
  const state = new Float64Array(3 * LANES);
  for (let first = 0; first < positions.length; first += LANES) {
    for (let start = 0; start < grid.count; start += RESEED) {
      const end = Math.min(grid.count, start + RESEED);
      seed(positions, first, grid, start, turn, state);
      if (weights === null) runPlain(state, sums, start, end);
      else runWeighted(state, sums, start, end, weights, first, grid.count);
    }
  }
}

// Lanes past the last position get amplitude 0, so that they add nothing.
function seed(
  positions: Float64Array,
  first: number,
  grid: FrequencyGrid,
  start: number,
  turn: number,
  state: Float64Array,
): void {
  for (let lane = 0; lane < LANES; lane += 1) {
    const x = positions[first + lane];
    if (x === undefined) {
      state.fill(0, 3 * lane, 3 * lane + 3);
      continue;
    }
    const turns = x * (grid.from + start * grid.step) + turn;
    const step = 2 * Math.PI * x * grid.step;
    const angle = 2 * Math.PI * (turns - Math.floor(turns));
    state[3 * lane] = Math.cos(angle);
    state[3 * lane + 1] = Math.cos(angle - step);
    state[3 * lane + 2] = 2 * Math.cos(step);
  }
}

function runPlain(state: Float64Array, sums: Float64Array, start: number, end: number): void {
  let [a = 0, pastA = 0, twiceA = 0, b = 0, pastB = 0, twiceB = 0] = state;
  let [c = 0, pastC = 0, twiceC = 0, d = 0, pastD = 0, twiceD = 0] = state.subarray(6);
  for (let k = start; k < end; k += 1) {
    sums[k] = (sums[k] ?? 0) + (a + b + (c + d));
    const nextA = twiceA * a - pastA;
    const nextB = twiceB * b - pastB;
    const nextC = twiceC * c - pastC;
    const nextD = twiceD * d - pastD;
    pastA = a;
    pastB = b;
    pastC = c;
    pastD = d;
    a = nextA;
    b = nextB;
    c = nextC;
    d = nextD;
  }
}

function runWeighted(
  state: Float64Array,
  sums: Float64Array,
  start: number,
  end: number,
  weights: Float64Array,
  first: number,
  row: number,
): void {
  for (let lane = 0; lane < LANES; lane += 1) {
    let now = state[3 * lane] ?? 0;
    let past = state[3 * lane + 1] ?? 0;
    const twice = state[3 * lane + 2] ?? 0;
    const offset = (first + lane) * row;
    for (let k = start; k < end; k += 1) {
      sums[k] = (sums[k] ?? 0) + (weights[offset + k] ?? 0) * now;
      const next = twice * now - past;
      past = now;
      now = next;
    }
  }
}
