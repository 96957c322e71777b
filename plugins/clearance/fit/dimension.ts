import { normalQuantileAbove } from "../../../src/plugin.ts";
import { chanceBetween, type Spread } from "./spread.ts";

/** The size of one dimension of one part, in any one unit. */
export interface Size {
  /** The value, the middle of a range, or the bound. */
  readonly value: number;
  /** From the smallest to the largest of a range, all of it equally likely; 0 for a value or a bound. */
  readonly width: number;
  /** Standard uncertainty of normal errors. */
  readonly u: number;
  /** Whether it is at least (`more`) or at most (`less`) so much. */
  readonly open: "more" | "less" | null;
}

/** How much room there must be and may be, and what of both errors is common. */
export interface Room {
  readonly least?: number;
  readonly loosest?: number | null;
  readonly covariance?: number;
}

/** What can be said of one dimension (methods E); `undecidable` is one that a bound leaves open. */
export type Flag = "impossible" | "unlikely" | "uncertain" | "fits" | "undecidable";

/** The clearance of one dimension: socket less peg. */
export interface Clearance {
  readonly value: number;
  /** Combined standard uncertainty of the normal errors. */
  readonly u: number;
  readonly spread: Spread;
  /** Ends of the difference as far as ranges and bounds go, errors apart; null where a bound leaves it open. */
  readonly ends: readonly [number | null, number | null];
  /** 95 % interval; of ranges their whole reach, and the errors about it. */
  readonly interval: readonly [number | null, number | null];
  /** Chance to fit, from the least to the most that a bound leaves possible; alike where there is none. */
  readonly chance: readonly [number, number];
  readonly possible: boolean;
  readonly certain: boolean;
  readonly flag: Flag;
  /** Whether it would rather be too tight or too loose. */
  readonly side: "tight" | "loose";
}

const [IMPOSSIBLE, UNLIKELY, FITS] = [0.001, 0.05, 0.95];

/** The clearance between one dimension of a socket and of a peg, and whether it is at least `least` and at most `loosest`. */
export function clearanceOf(socket: Size, peg: Size, room: Room = {}): Clearance {
  const { least = 0, loosest = null, covariance = 0 } = room;
  const value = socket.value - peg.value;
  const u = Math.sqrt(Math.max(0, socket.u ** 2 + peg.u ** 2 - 2 * covariance));
  const spread: Spread = { centre: value, widths: [socket.width, peg.width], u };
  const opens = {
    up: socket.open === "more" || peg.open === "less",
    down: socket.open === "less" || peg.open === "more",
  };
  const half = (socket.width + peg.width) / 2;
  const reach = normalQuantileAbove(0.025) * u;
  const around = (by: number): Clearance["ends"] => [
    opens.down ? null : value - half - by,
    opens.up ? null : value + half + by,
  ];
  const interval = around(reach);
  const [low, high] = [interval[0] ?? -Infinity, interval[1] ?? Infinity];
  const possible = high >= least && (loosest === null || low <= loosest);
  const certain = low >= least && (loosest === null || high <= loosest);
  const chance = chanceOf(spread, opens, least, loosest);
  return {
    value,
    u,
    spread,
    ends: around(0),
    interval,
    chance,
    possible,
    certain,
    flag: flagOf(chance, half > 0, possible, certain),
    side: loosest !== null && value > (least + loosest) / 2 ? "loose" : "tight",
  };
}

/** A bound lets the clearance be any amount more, or less, than the stated sizes have it. */
function chanceOf(
  spread: Spread,
  { up, down }: { readonly up: boolean; readonly down: boolean },
  least: number,
  loosest: number | null,
): readonly [number, number] {
  if (up && down) return [0, 1];
  if (up) {
    const enough = loosest === null ? chanceBetween(spread, least, null) : 0;
    return [enough, loosest === null ? 1 : chanceBetween(spread, null, loosest)];
  }
  if (down) return [0, chanceBetween(spread, least, null)];
  const chance = chanceBetween(spread, least, loosest);
  return [chance, chance];
}

function flagOf([from, to]: Clearance["chance"], ranges: boolean, possible: boolean, certain: boolean): Flag {
  if (from > FITS || (ranges && certain)) return "fits";
  // How likely each part of a range is, is an assumption: it does not make impossible what an end allows.
  if (to < IMPOSSIBLE && !(ranges && possible)) return "impossible";
  if (to < UNLIKELY) return "unlikely";
  return from < to ? "undecidable" : "uncertain";
}
