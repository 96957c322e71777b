import * as z from "zod";
import type { Json } from "../../base/json.ts";
import {
  betaBelow,
  betaQuantile,
  chiSquareAbove,
  choose,
  fisherAbove,
  fisherQuantile,
  formatNumber,
  formatP,
  linearRegression,
  logFactorial,
  mean,
  median,
  normalAbove,
  normalQuantileAbove,
  poissonMean,
  quantile,
  standardDeviation,
  studentQuantile,
  studentTwoSided,
} from "../../plugin.ts";

/** Most numbers that one question may bring or one answer may have. */
export const mostNumbers = 100_000;

const x = z.number();
const share = z.number().min(0).max(1);
const inner = z.number().gt(0).lt(1);
const df = z.number().gt(0).max(1e9);
const whole = z.int().min(0).max(1e6);
const sample = z.array(x).min(1).max(mostNumbers);
const columns = z.array(z.array(x).min(3).max(10_000)).min(1).max(12);

type Numeric = (given: unknown) => Json;

/** A function of the host with the list of what it takes; anything else is refused before it runs. */
function offer<T extends z.ZodTuple>(takes: T, does: (...given: z.output<T>) => unknown): Numeric {
  return (given) => does(...takes.parse(given)) as Json;
}

const regression: Numeric = offer(z.tuple([columns, sample]), (predictors, response) => {
  if (predictors.some((column) => column.length !== response.length))
    throw new RangeError("Columns of several lengths, expected as many values in each as in the response");
  if (response.length < predictors.length + 2)
    throw new RangeError("Too few values, expected at least two more than there are columns");
  return linearRegression(predictors, response);
});

/** What the host computes for a guest: the heavy numerics and how numbers are written, each by its name. */
export const numerics: Readonly<Record<string, Numeric>> = {
  mean: offer(z.tuple([sample]), mean),
  median: offer(z.tuple([sample]), median),
  quantile: offer(z.tuple([sample, share]), quantile),
  standardDeviation: offer(z.tuple([sample.min(2)]), standardDeviation),
  linearRegression: regression,
  normalAbove: offer(z.tuple([x]), normalAbove),
  normalQuantileAbove: offer(z.tuple([inner]), normalQuantileAbove),
  studentTwoSided: offer(z.tuple([x, df]), studentTwoSided),
  studentQuantile: offer(z.tuple([inner, df]), studentQuantile),
  chiSquareAbove: offer(z.tuple([x, df]), chiSquareAbove),
  fisherAbove: offer(z.tuple([x, df, df]), fisherAbove),
  fisherQuantile: offer(z.tuple([inner, df, df]), fisherQuantile),
  betaBelow: offer(z.tuple([x, df, df]), betaBelow),
  betaQuantile: offer(z.tuple([inner, df, df]), betaQuantile),
  poissonMean: offer(z.tuple([inner, whole]), poissonMean),
  choose: offer(z.tuple([whole, whole]), choose),
  logFactorial: offer(z.tuple([whole]), logFactorial),
  formatNumber: offer(z.tuple([x, z.int().min(1).max(15).default(4)]), formatNumber),
  formatP: offer(z.tuple([share]), formatP),
};

/** Most signs of one question: two hundred thousand numbers with all their digits. */
const longest = 5_000_000;

/** Answers one question of a guest, text in and text out: `{ value }`, or `{ trouble }` where it cannot be answered. */
export function answer(name: string, given: string): string {
  const numeric = Object.hasOwn(numerics, name) ? numerics[name] : undefined;
  if (!numeric) return JSON.stringify({ trouble: `Unknown function ${JSON.stringify(name.slice(0, 40))}` });
  if (given.length > longest) return JSON.stringify({ trouble: `${name}: too much at once` });
  try {
    const value = numeric(JSON.parse(given));
    const odd = typeof value === "number" && !Number.isFinite(value);
    return JSON.stringify(odd ? { trouble: `${name} has no finite value there` } : { value });
  } catch (error) {
    const why =
      error instanceof z.ZodError
        ? (error.issues[0]?.message ?? "")
        : error instanceof RangeError
          ? error.message
          : "not what it takes";
    return JSON.stringify({ trouble: `${name}: ${why}` });
  }
}
