import {
  chiSquareAbove,
  isRefusal,
  refuse,
  say,
  type Computation,
  type ComputedNumber,
  type Id,
  type Inputs,
  type Json,
  type Recorded,
  type Refusal,
  type Settings,
  type Tools,
} from "../../src/plugin.ts";
import { fisherExact } from "./exact/fisher.ts";
import type { Comparison } from "./exact/fisher.ts";
import { clopperPearson, ruleOfThree, wilson } from "./exact/proportion.ts";
import { rateEnds, rateRatio } from "./exact/rates.ts";
import { sidesMeasured } from "./sides/measured.ts";
import { sidesObserved } from "./sides/observed.ts";
import type { Side, Sides } from "./sides/side.ts";

/** More things than this are not named one by one. */
const NAMED = 3;

/** The ratio of two rates, or the odds ratio of two shares, with its exact interval and p (methods F). */
export function computed(
  inputs: Inputs,
  settings: Settings,
  _tools: Tools,
  recorded?: Recorded,
): Computation | Refusal {
  const observations = recorded?.observations ?? {};
  const per = settings["per"]?.kind === "text" ? settings["per"].value : null;
  const bad = refuseMixed(inputs, observations, per);
  if (bad !== null) return bad;
  const seen = observations["first"];
  const sides =
    seen === undefined
      ? sidesMeasured(inputs["first"] ?? [], inputs["second"] ?? [], per)
      : sidesObserved(seen, observations["second"] ?? []);
  if (isRefusal(sides)) return sides;
  const { first, second } = sides;
  const total = { count: first.count + second.count, exposure: first.exposure + second.exposure };
  const nothing = total.count === 0 || (sides.of === "shares" && total.count === total.exposure);
  const outcome =
    sides.of === "rates"
      ? rateRatio(first, second)
      : fisherExact(first.count, first.exposure - first.count, second.count, second.exposure - second.count);
  const ratio = nothing ? null : ratioOf(outcome);
  return {
    numbers: {
      ...(ratio === null ? {} : { ratio }),
      p: { value: outcome.p, low: null, high: null },
    },
    leftOut: sides.leftOut,
    warnings: [
      ...sides.warnings,
      ...(nothing ? ["no-comparison"] : []),
      ...(!nothing && outcome.smallest > 0.05 ? ["comparison-too-small"] : []),
      ...(ratio !== null && ratio.high === null ? ["no-upper-end"] : []),
      ...(ratio !== null && isBeyondOne(ratio) !== outcome.p < 0.05 ? ["p-and-interval-differ"] : []),
      ...(sides.of === "rates" && areClustered(sides) ? ["clustered"] : []),
    ],
    data: {
      of: sides.of,
      per: sides.per,
      unit: sides.unit,
      size: sides.size,
      nothing,
      sides: [shown(first, sides), shown(second, sides)],
    },
  };
}

function refuseMixed(
  inputs: Inputs,
  observations: Recorded["observations"],
  per: string | null,
): Refusal | null {
  const names = ["first", "second"];
  const seen = names.filter((name) => name in observations);
  if (seen.length === 1)
    return refuse("mixed-kinds", say`One side is counted and the other observed, expected both alike.`);
  if (seen.length === 2 && per !== null)
    return refuse("mixed-kinds", say`Observations count by the things looked at, expected no \`per\`.`);
  const ids = names.map(
    (name) => new Set<Id>([...(inputs[name] ?? []), ...(observations[name] ?? [])].map((one) => one.id)),
  );
  const both = [...(ids[0] ?? [])].some((id) => ids[1]?.has(id));
  return both
    ? refuse("same-things", say`Something is counted on both sides, expected two sides that share nothing.`)
    : null;
}

/** Where the likeliest ratio is infinite the one in the middle stands for it, and there is no upper end. */
function ratioOf({ ratio, low, high, middle }: Comparison): ComputedNumber {
  return ratio === Infinity ? { value: middle, low, high: null } : { value: ratio, low, high };
}

/** Whether the interval of a ratio leaves out 1, where both sides are alike. */
function isBeyondOne({ low, high }: ComputedNumber): boolean {
  return (low ?? 0) > 1 || (high ?? Infinity) < 1;
}

/** Whether the counts of one side scatter more than chance would have them: Pearson's chi-square about each side's rate. */
function areClustered({ first, second }: Sides): boolean {
  let [chiSquare, df] = [0, 0];
  for (const { parts, count, exposure } of [first, second]) {
    if (parts.length < 2 || count === 0) continue;
    for (const part of parts) {
      const due = (count * part.exposure) / exposure;
      chiSquare += (part.count - due) ** 2 / due;
    }
    df += parts.length - 1;
  }
  return df > 0 && chiSquareAbove(chiSquare, df) < 0.05;
}

/** A side as the figure and the sentence read it; its rate per unit as the exposure was written, or its share. */
function shown({ count, exposure, parts, artefacts }: Side, { of, size }: Sides): Json {
  const looked = exposure / size;
  const [low, high] =
    of === "shares" ? clopperPearson(count, exposure) : rateEnds({ count, exposure: looked });
  return {
    count,
    exposure: looked,
    rate: count / looked,
    low,
    high,
    wilson: of === "shares" ? [...wilson(count, exposure)] : null,
    atMost: of === "shares" ? ruleOfThree(count, exposure) : null,
    records: parts.length,
    things: artefacts.length,
    artefacts: artefacts.slice(0, NAMED),
  };
}
