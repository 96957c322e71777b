import {
  SMALLEST_P,
  kindWords,
  refuse,
  refuseFewer,
  refuseUnlessPositive,
  say,
  writtenUnit,
  type Computation,
  type ComputedNumber,
  type Inputs,
  type Json,
  type Refusal,
  type Settings,
} from "../../src/plugin.ts";
import { crosswise, jointsIn, type Mating } from "./fit/crosswise.ts";
import { clearanceOf, type Clearance, type Size } from "./fit/dimension.ts";
import { commonTo, sizeOf } from "./fit/sizes.ts";
import { together } from "./fit/together.ts";

/** The clearance of each dimension of a socket and a peg, and the chance that all of them fit (methods E). */
export function computed(inputs: Inputs, settings: Settings): Computation | Refusal {
  const sockets = inputs["socket"] ?? [];
  const pegs = inputs["peg"] ?? [];
  const matings = sockets.flatMap((socket, i): readonly Mating[] => {
    const peg = pegs[i];
    return peg === undefined ? [] : [{ socket, peg }];
  });
  const loosest = loosestIn(settings);
  const bad = refuseFewer(matings.length, 1, say`pairs of dimensions`) ?? refuseSizes(matings, settings);
  if (bad !== null) return bad;
  const rows = matings.map(({ socket, peg }) => {
    const [outer, inner] = [sizeOf(socket.quantity), sizeOf(peg.quantity)];
    const covariance = commonTo(socket.quantity, peg.quantity);
    return {
      socket,
      peg,
      outer,
      inner,
      covariance,
      found: clearanceOf(outer, inner, { loosest, covariance }),
    };
  });
  const found = rows.map((row) => row.found);
  const least = leastOf(found);
  const fit = fitOf(found);
  const chances = found.map(({ chance }) => chance);
  return {
    numbers: {
      ...(least === null ? {} : { clearance: least }),
      ...(fit === null ? {} : { "p-fit": fit }),
    },
    leftOut: [],
    warnings: [
      ...(found.some(({ flag }) => flag === "undecidable") ? ["left-open"] : []),
      ...(rows.some(({ outer, inner }) => outer.width > 0 || inner.width > 0) ? ["ranges"] : []),
      ...(matings.some(({ socket, peg }) => socket.dimension !== peg.dimension) ? ["unlike-dimensions"] : []),
      ...(rows.some(({ covariance }) => covariance > 0) ? ["common-error"] : []),
    ],
    data: {
      shown: { ...writtenUnit(sockets[0]?.quantity) },
      joints: jointsIn(matings).length,
      crosswise: { ...crosswise(matings, loosest) },
      bounds: [
        together(chances.map(([from]) => from)).bounds[0],
        together(chances.map(([, to]) => to)).bounds[1],
      ],
      rows: rows.map(({ socket, peg, outer, inner, found: one }) => ({
        dimension: socket.dimension,
        pegDimension: peg.dimension,
        socket: socket.artefact,
        peg: peg.artefact,
        outer: sizeShown(outer),
        inner: sizeShown(inner),
        ...clearanceShown(one),
      })),
    },
  };
}

function loosestIn({ loosest }: Settings): number | null {
  return loosest?.kind === "quantity" ? loosest.value.value : null;
}

function refuseSizes(matings: readonly Mating[], { loosest }: Settings): Refusal | null {
  const sizes = matings.flatMap(({ socket, peg }) => [socket.quantity, peg.quantity]);
  const given = loosest?.kind === "quantity" ? [loosest.value] : [];
  const wrong = [...sizes, ...given].find(({ kind }) => kind !== "length");
  if (wrong !== undefined) {
    const several = new Set(sizes.map(({ kind }) => kind)).size > 1;
    return refuse(
      several ? "mixed-dimensions" : "wrong-kind",
      say`Unexpected ${kindWords[wrong.kind]} (${wrong.text}) where parts are fitted together, expected lengths.`,
    );
  }
  return refuseUnlessPositive(
    [...sizes, ...given].map(({ value }) => value),
    say`sizes`,
  );
}

/**
 * The least clearance of all dimensions; an end that any of them leaves open is open, unless another is tighter there. A
 * clearance of so much or more is no value, and none is taken from it where there is another.
 */
function leastOf(found: readonly Clearance[]): ComputedNumber | null {
  const lows = found.map(({ interval }) => interval[0]);
  const highs = found.flatMap(({ interval }) => (interval[1] === null ? [] : [interval[1]]));
  const low = lows.reduce(
    (least, end) => (least === null || end === null ? null : Math.min(least, end)),
    Infinity,
  );
  const high = highs.length === 0 ? null : Math.min(...highs);
  const known = found.filter(({ ends }) => ends[1] !== null);
  const values = (known.length === 0 ? found : known).map(({ value }) => value);
  return low === null && high === null ? null : { value: Math.min(...values), low, high };
}

/** All chances multiplied; what a bound leaves open counts as fitting, and the number is then an upper one with its ends. */
function fitOf(found: readonly Clearance[]): ComputedNumber | null {
  if (found.every(({ flag }) => flag === "undecidable")) return null;
  const told = (chances: readonly number[]): number => {
    const { independent, bounds } = together(chances);
    return bounds[1] === 0 ? 0 : Math.max(SMALLEST_P, independent);
  };
  const value = told(found.map(({ chance, flag }) => (flag === "fits" ? chance[0] : chance[1])));
  if (found.every(({ chance }) => chance[0] === chance[1])) return { value, low: null, high: null };
  return {
    value,
    low: told(found.map(({ chance }) => chance[0])),
    high: told(found.map(({ chance }) => chance[1])),
  };
}

function sizeShown({ value, width, u, open }: Size): Json {
  return { value, width, u, open };
}

function clearanceShown(one: Clearance): { readonly [key: string]: Json } {
  const { value, u, spread, ends, interval, chance, possible, certain, flag, side } = one;
  const lists = { widths: [...spread.widths], ends: [...ends], interval: [...interval], chance: [...chance] };
  return { value, u, ...lists, possible, certain, flag, side };
}
