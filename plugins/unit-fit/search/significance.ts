import { quantile, type Random } from "../../../src/plugin.ts";
import type { Length } from "../lengths.ts";
import {
  gammaDraws,
  jitterDraws,
  kernelDraws,
  lognormalDraws,
  silverman,
  type Draw,
  type NullId,
} from "./nulls.ts";
import { scan, type Peak } from "./quantogram.ts";

/** What to simulate: the search, the peak it found, and how many sets to draw for each null. */
export interface Trial {
  readonly lengths: readonly Length[];
  readonly qMin: number;
  readonly qMax: number;
  readonly peak: Peak;
  readonly draws: number;
  /** Bandwidth of the kernel null; Silverman's when left out. */
  readonly bandwidth?: number | undefined;
  /** Width of the jitter, as a share; 0.15 when left out. */
  readonly jitter?: number | undefined;
}

/** How often data without a unit gave as high a peak in the same search. */
export interface Significance {
  readonly p: number;
  /** Standard error of p by the number of draws. */
  readonly se: number;
  /** The height that 5 % of the sets without a unit reached. */
  readonly crit95: number;
  /** Bandwidth used, and whether it was raised to half the unit; null for other nulls than `kde`. */
  readonly bandwidth: number | null;
  readonly raised: boolean;
}

/** Monte-Carlo significance of the best peak (methods A8), with a grid of 8 steps for each turn of the longest. */
export function significance(
  trial: Trial,
  id: NullId,
  random: Random,
  report: (done: number) => void,
): Significance {
  const { lengths, peak, draws } = trial;
  const wanted = trial.bandwidth ?? silverman(lengths.map((length) => length.value));
  const bandwidth = Math.max(wanted, peak.q / 2);
  const draw = drawsOf(trial, id, bandwidth, random);
  const { grid, fill, fillTwo } = scan(lengths, trial.qMin, trial.qMax, 8);
  const [first, second] = [new Float64Array(lengths.length), new Float64Array(lengths.length)];
  const [firstPhis, secondPhis] = [new Float64Array(grid.count), new Float64Array(grid.count)];
  const drawInto = (values: Float64Array): void => {
    for (let i = 0; i < values.length; i += 1) values[i] = draw(i);
  };
  const heights: number[] = [];
  for (let k = 0; k + 1 < draws; k += 2) {
    drawInto(first);
    drawInto(second);
    fillTwo(first, second, firstPhis, secondPhis);
    heights.push(maximum(firstPhis), maximum(secondPhis));
    if (k % 500 === 0) report(k / draws);
  }
  if (heights.length < draws) {
    drawInto(first);
    fill(first, firstPhis);
    heights.push(maximum(firstPhis));
  }
  const reached = heights.filter((highest) => highest >= peak.phi - 1e-9).length;
  const p = (1 + reached) / (draws + 1);
  return {
    p,
    se: Math.sqrt((p * (1 - p)) / draws),
    crit95: quantile(heights, 0.95),
    bandwidth: id === "kde" ? bandwidth : null,
    raised: id === "kde" && bandwidth > wanted,
  };
}

function drawsOf(trial: Trial, id: NullId, bandwidth: number, random: Random): Draw {
  if (id === "kde") return kernelDraws(trial.lengths, bandwidth, random);
  if (id === "gamma") return gammaDraws(trial.lengths, random);
  if (id === "lognormal") return lognormalDraws(trial.lengths, random);
  return jitterDraws(trial.lengths, trial.jitter ?? 0.15, random);
}

function maximum(values: Float64Array): number {
  let highest = -Infinity;
  for (let k = 0; k < values.length; k += 1) {
    const value = values[k] ?? -Infinity;
    if (value > highest) highest = value;
  }
  return highest;
}
