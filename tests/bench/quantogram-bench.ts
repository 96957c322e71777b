import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { plain } from "../../plugins/unit-fit/lengths.ts";
import { scan } from "../../plugins/unit-fit/search/quantogram.ts";
import { median } from "../../src/base/numeric/sample.ts";
import { randomFrom } from "../../src/base/outcome/random.ts";

const LENGTHS = 200;
const UNITS = 2000;
const SETS = 1000;
const DIRECT_SETS = 40;
const ROUNDS = 3;

/** Goal 1: the quantograms of 1,000 sets of 200 lengths at 2,000 trial units. */
export default function bench() {
  const random = randomFrom(11);
  const sets = Array.from({ length: SETS }, () =>
    Float64Array.from({ length: LENGTHS }, () => 5 + 195 * random.uniform()),
  );
  // With a longest length of 200 these steps give 2,000 frequencies between 1/20 and 1.
  const lengths = [plain(200), ...Array.from({ length: LENGTHS - 1 }, () => plain(100))];
  const { grid, fillTwo } = scan(lengths, 1, 20, (UNITS - 1) / (200 * 0.95));
  const [first, second] = [new Float64Array(grid.count), new Float64Array(grid.count)];
  const ours = (): void => {
    for (let k = 0; k < SETS; k += 2) fillTwo(sets[k]!, sets[k + 1]!, first, second);
  };
  const direct = new Float64Array(grid.count);
  const formula = (): void => {
    for (let k = 0; k < DIRECT_SETS; k += 1) byFormula(sets[k]!, grid.from, grid.step, direct);
  };
  ours();
  const times = { ours: [] as number[], formula: [] as number[], matrix: [] as number[] };
  for (let round = 0; round < ROUNDS; round += 1) {
    times.ours.push(timed(ours));
    times.formula.push((timed(formula) * SETS) / DIRECT_SETS);
    const matrix = byMatrix();
    if (matrix !== null) times.matrix.push(matrix);
  }
  const own = median(times.ours);
  const row = (what: string, peer: number, goalRatio: number) => ({
    goal: "1",
    what,
    ours: own,
    peer,
    ratio: own / peer,
    goalRatio,
    unit: "ms",
  });
  const error = worstError(sets, grid.from, grid.step, fillTwo);
  return [
    row(`${grid.count} units, direct formula`, median(times.formula), 1 / 60),
    ...(times.matrix.length > 0
      ? [row("the same, numpy as one matrix product", median(times.matrix), 0.25)]
      : []),
    { goal: "1", what: "largest error of phi", ours: error, peer: null, goalFigure: 1e-9, unit: "" },
  ];
}

function byFormula(values: Float64Array, from: number, step: number, phis: Float64Array): void {
  const scale = Math.sqrt(2 / values.length);
  for (let k = 0; k < phis.length; k += 1) {
    const f = from + k * step;
    let sum = 0;
    for (const value of values) {
      const turns = value * f;
      sum += Math.cos(2 * Math.PI * (turns - Math.floor(turns)));
    }
    phis[k] = scale * sum;
  }
}

function worstError(
  sets: readonly Float64Array[],
  from: number,
  step: number,
  fillTwo: ReturnType<typeof scan>["fillTwo"],
): number {
  const count = Math.round(0.95 / step) + 1;
  const [first, second, direct] = [0, 1, 2].map(() => new Float64Array(count)) as [
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  let worst = 0;
  for (let k = 0; k < 20; k += 2) {
    fillTwo(sets[k]!, sets[k + 1]!, first, second);
    for (const [place, got] of [first, second].entries()) {
      byFormula(sets[k + place]!, from, step, direct);
      got.forEach((phi, at) => (worst = Math.max(worst, Math.abs(phi - direct[at]!))));
    }
  }
  return worst;
}

/** Milliseconds of the matrix version on one thread, told by its script; null where there is no numpy. */
function byMatrix(): number | null {
  const script = fileURLToPath(new URL("./quantogram-matrix.py", import.meta.url));
  const one = { OMP_NUM_THREADS: "1", OPENBLAS_NUM_THREADS: "1", MKL_NUM_THREADS: "1" };
  const run = spawnSync("python3", [script, String(LENGTHS), String(UNITS), String(SETS)], {
    encoding: "utf8",
    env: { ...process.env, ...one },
  });
  const told = Number.parseFloat(run.stdout ?? "");
  return run.status === 0 && Number.isFinite(told) ? told : null;
}

function timed(work: () => void): number {
  const begun = performance.now();
  work();
  return performance.now() - begun;
}
