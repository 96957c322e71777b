export {
  betaBelow,
  betaQuantile,
  chiSquareAbove,
  fisherAbove,
  fisherQuantile,
  normalAbove,
  normalQuantileAbove,
  poissonMean,
  studentQuantile,
  studentTwoSided,
} from "./distributions.ts";
export { squaredUniformTransform } from "./fresnel.ts";
export { cosinePairs, pairsAreQuicker, type CosinePairs } from "./nufft.ts";
export { highestBetween } from "./peak.ts";
export {
  SMALLEST_P,
  cosineSumAbove,
  cosineSumSeries,
  fraction,
  greenwoodDurand,
  resultant,
  resultantAbove,
  resultantSeries,
  type Resultant,
} from "./phases.ts";
export { integrate } from "./quadrature.ts";
export { linearRegression, type Regression } from "./regression.ts";
export { rootBetween } from "./root.ts";
export { mean, median, quantile, standardDeviation } from "./sample.ts";
export { addCosines, frequencyGrid, type FrequencyGrid } from "./spectrum.ts";
export { choose, logBallVolume, logFactorial } from "./volume.ts";
