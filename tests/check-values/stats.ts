import { linearRegression } from "../../src/plugin.ts";
import type { Methods } from "./case.ts";

interface Input {
  readonly dataset?: string;
  readonly data: readonly Readonly<Record<string, number>>[];
  readonly response?: string;
}

/** The response is named in a field of its own or in the words about the data set; else it is the last column. */
function responseOf({ dataset = "", data, response }: Input): string {
  const columns = Object.keys(data[0] ?? {});
  const named = response ?? /response ([^\s,;(]+)/.exec(dataset)?.[1] ?? "";
  return columns.includes(named) ? named : (columns.at(-1) ?? "");
}

function regression(input: unknown): unknown {
  const given = input as Input;
  const { data } = given;
  const response = responseOf(given);
  const names = Object.keys(data[0] ?? {}).filter((name) => name !== response);
  const needed = names.length + 2;
  if (data.length < needed) return { error: "too-few", needed };
  const column = (name: string): number[] => data.map((row) => row[name] ?? Number.NaN);
  if ([...names, response].some((name) => column(name).some(Number.isNaN))) return { error: "missing-value" };
  const fit = linearRegression(names.map(column), column(response));
  if (!fit) return { error: "no-variation" };
  const named = (list: readonly number[]) =>
    Object.fromEntries(["(Intercept)", ...names].map((name, i) => [name, list[i]]));
  return {
    coef: named(fit.coefficients),
    se: named(fit.errors),
    sigma: fit.sigma,
    r2: fit.r2,
    df: fit.df,
    n: data.length,
  };
}

/** The regression that scaling rests on, by itself. */
export const stats: Methods = { "stats.linearRegression": regression };
