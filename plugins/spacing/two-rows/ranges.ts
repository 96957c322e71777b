import {
  formatNumber,
  numberOf,
  fieldsOf,
  membersOf,
  refuseUnlessPositive,
  say,
  writtenUnit,
  type Computation,
  type ComputedNumber,
  type Json,
  type Measured,
  type Refusal,
  type Text,
} from "../../../src/plugin.ts";
import type { Row } from "../row.ts";

/** The smallest and the largest of a row of gaps; the larger end is null where a gap is only known to be at least so long. */
export type Reach = readonly [number, number | null];

/** Two rows of which only the reach is known, compared; the first may be enlarged. */
export interface Meeting {
  readonly own: Reach;
  readonly other: Reach;
  /** Whether the two reaches have a length in common as they are. */
  readonly meet: boolean;
  /** From the smallest to the largest factor, and how far the first row reaches with them. */
  readonly factors: readonly [number, number];
  readonly enlarged: Reach;
  /** Whether they meet with every factor between those two, with some, or with none. */
  readonly meetEnlarged: "all" | "some" | "none";
  /** The factors with which they would; the larger end is null where there is none. */
  readonly needed: Reach;
}

/** Whether two reaches have a length in common, as they are and with the first enlarged (methods D8); no p is to be had from such. */
export function meetingOf(
  own: Reach,
  other: Reach,
  factors: readonly [number, number] = [1, 1],
): Meeting | Refusal {
  const bad = refuseUnlessPositive([own[0], other[0], ...factors], say`gaps and factors`);
  if (bad !== null) return bad;
  const needed: Reach = [
    own[1] === null ? 0 : other[0] / own[1],
    other[1] === null ? null : other[1] / own[0],
  ];
  const [low, high] = [needed[0], needed[1] ?? Infinity];
  const [least, most] = factors;
  const all = least >= low && most <= high;
  return {
    own,
    other,
    meet: low <= 1 && high >= 1,
    factors,
    enlarged: [own[0] * least, own[1] === null ? null : own[1] * most],
    meetEnlarged: all ? "all" : most >= low && least <= high ? "some" : "none",
    needed,
  };
}

/** The reach of a row of gaps, ranges taken whole. */
export function reachOf({ measured, gaps }: Row): Reach {
  const [lows, highs] = [
    measured.map(({ quantity }) =>
      quantity.form === "range" ? (quantity.low ?? quantity.value) : quantity.value,
    ),
    measured.map(({ quantity }, i) =>
      gaps[i]?.observed
        ? quantity.form === "range"
          ? (quantity.high ?? quantity.value)
          : quantity.value
        : null,
    ),
  ];
  const largest = highs.filter((high) => high !== null);
  return [Math.min(...lows), largest.length < highs.length ? null : Math.max(...largest)];
}

/** What can be said of two rows of which the first has too few gaps for anything but its reach. */
export function meetingComputed(row: Row, other: Row, scale: Measured | undefined): Computation | Refusal {
  const { value = 1, low = null, high = null } = scale?.quantity ?? {};
  const found = meetingOf(reachOf(row), reachOf(other), [low ?? value, high ?? value]);
  if ("refused" in found) return found;
  const bare = (count: number): ComputedNumber => ({ value: count, low: null, high: null });
  const observed = row.gaps.filter((gap) => gap.observed).length;
  return {
    numbers: { n: bare(observed), censored: bare(row.gaps.length - observed) },
    leftOut: [...row.leftOut, ...other.leftOut],
    warnings: ["ranges-only"],
    data: { shown: { ...writtenUnit(row.measured[0]?.quantity) }, meeting: { ...found } as unknown as Json },
  };
}

/** The comparison of a computation that has no other; null where it has. */
export function meetingIn({ data }: Computation): Meeting | null {
  const found = fieldsOf(fieldsOf(data)["meeting"]);
  if (found["own"] === undefined) return null;
  const reach = (name: string): Reach => {
    const [low, high] = membersOf(found[name]);
    return [numberOf(low), typeof high === "number" ? high : null];
  };
  const factors = membersOf(found["factors"]).map(numberOf);
  const how = found["meetEnlarged"];
  return {
    own: reach("own"),
    other: reach("other"),
    meet: found["meet"] === true,
    factors: [factors[0] ?? 1, factors[1] ?? 1],
    enlarged: reach("enlarged"),
    meetEnlarged: how === "all" || how === "some" ? how : "none",
    needed: reach("needed"),
  };
}

/** The factors with which two rows meet: `from a factor of 1.06 on`. */
export function factorsWords([least, most]: Reach): Text {
  if (least === 0)
    return most === null ? say`with any factor` : say`up to a factor of ${formatNumber(most, 3)}`;
  return most === null
    ? say`from a factor of ${formatNumber(least, 3)} on`
    : say`with a factor of ${reachWords([least, most], 1)}`;
}

/** A reach in a unit of that size, with the unit where it is given: `50 to 100 cm`, `at least 106`. */
export function reachWords([low, high]: Reach, size: number, digits = 3, unit?: string): Text {
  const written = (n: number): string => formatNumber(n / size, digits);
  const inUnit = (text: string): string => (unit === undefined ? text : `${text} ${unit}`);
  if (high === null) return say`at least ${inUnit(written(low))}`;
  const [from, to] = [written(low), written(high)];
  return from === to ? inUnit(from) : say`${from} to ${inUnit(to)}`;
}
