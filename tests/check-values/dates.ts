import { inEnglish } from "../../src/base/text/said/english.ts";
import { parseYear } from "../../src/base/date/year.ts";
import { boundsOf } from "../../src/base/date/differences.ts";
import type { Difference, Statement } from "../../src/base/date/differences.ts";
import { allImpossible } from "../../src/base/date/minimal.ts";
import type { Methods } from "./case.ts";

interface Written {
  readonly events: readonly string[];
  readonly statements: Readonly<
    Record<string, readonly { readonly from_: string; readonly to: string; readonly maxDiff: number }[]>
  >;
}

function statementsIn({ statements }: Written): readonly Statement[] {
  return Object.entries(statements).map(([id, all]) => ({
    id,
    says: all.map(({ from_, to, maxDiff }): Difference => ({ from: from_, to, most: maxDiff })),
  }));
}

/** `dates.consistency`: the bounds of each event, or every minimal set of statements that cannot all be true. */
function consistency(input: unknown): unknown {
  const written = input as Written;
  const statements = statementsIn(written);
  const bounds = boundsOf(statements);
  if (bounds === null) {
    const sets = allImpossible(statements).map((set) => set.map((one) => one.id));
    return { consistent: false, minimalContradictions: sets };
  }
  const ends = written.events.map((event) => {
    const { low, high } = bounds.get(event) ?? { low: null, high: null };
    return [event, [low, high]] as const;
  });
  return { consistent: true, bounds: Object.fromEntries(ends) };
}

/** `dates.toAstronomical`: years as texts have them, and the years between the pairs the case names. */
function toAstronomical(input: unknown): unknown {
  const { years } = input as { readonly years: readonly string[] };
  const astronomical = years.map(yearOf);
  const spans = years.flatMap((from, at) =>
    years.map((to, other): readonly [string, number] => [
      `span_${from.replace(/ /g, "")}_to_${to.replace(/ /g, "")}`,
      (astronomical[other] ?? NaN) - (astronomical[at] ?? NaN),
    ]),
  );
  return { astronomical, ...Object.fromEntries(spans) };
}

function yearOf(text: string): number {
  const year = parseYear(text);
  if ("ok" in year) return year.ok;
  throw new Error(inEnglish(year.problem.message));
}

/** The methods of dates. */
export const dates: Methods = {
  "dates.consistency": consistency,
  "dates.toAstronomical": toAstronomical,
};
