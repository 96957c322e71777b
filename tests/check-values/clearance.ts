import { clearanceOf } from "../../plugins/clearance/fit/dimension.ts";
import type { Size } from "../../plugins/clearance/fit/dimension.ts";
import { beforeShrinking } from "../../plugins/clearance/fit/shrinkage.ts";
import { together } from "../../plugins/clearance/fit/together.ts";
import type { Methods } from "./case.ts";
import { orError } from "./unit-fit.ts";

interface Pair {
  readonly slot: number;
  readonly uSlot: number;
  readonly peg: number;
  readonly uPeg: number;
}

interface Measured extends Pair {
  readonly slotShrinkage?: number;
  readonly uShrinkage?: number;
  readonly minClearance: number;
  readonly maxClearance?: number | null;
}

interface Ranges {
  readonly slot?: readonly [number, number];
  readonly slotAtLeast?: number;
  readonly peg: readonly [number, number];
  readonly minClearance: number;
}

const sized = (value: number, u: number): Size => ({ value, width: 0, u, open: null });
const range = ([low, high]: readonly [number, number]): Size => ({
  value: (low + high) / 2,
  width: high - low,
  u: 0,
  open: null,
});

/** The methods of `clearance`. */
export const clearance: Methods = {
  "fit.clearance": (input) => {
    const one = input as Measured;
    const now = { value: one.slot, u: one.uSlot };
    const shrunk = { value: one.slotShrinkage ?? 0, u: one.uShrinkage ?? 0 };
    return orError(beforeShrinking(now, shrunk), (slot) => {
      const room = { least: one.minClearance, loosest: one.maxClearance ?? null };
      const found = clearanceOf(sized(slot.value, slot.u), sized(one.peg, one.uPeg), room);
      return {
        clearance: found.value,
        u: found.u,
        pFit: found.chance[0],
        ci95: found.interval,
        flag: found.flag,
        slotOriginal: slot.value,
        uSlotOriginal: slot.u,
      };
    });
  },
  "fit.clearanceRange": (input) => {
    const { slot, slotAtLeast, peg, minClearance } = input as Ranges;
    const socket = slot ? range(slot) : ({ ...sized(slotAtLeast ?? Number.NaN, 0), open: "more" } as const);
    const found = clearanceOf(socket, range(peg), { least: minClearance });
    return {
      clearance: found.interval,
      pFit_uniform: found.chance[0],
      possible: found.possible,
      certain: found.certain,
      flag: found.flag,
    };
  },
  "fit.combined": (input) => {
    const { dims, minClearance } = input as { readonly dims: readonly Pair[]; readonly minClearance: number };
    const p = dims.map(
      ({ slot, uSlot, peg, uPeg }) =>
        clearanceOf(sized(slot, uSlot), sized(peg, uPeg), { least: minClearance }).chance[0],
    );
    const all = together(p);
    return { p, pAll_independent: all.independent, pAll_bounds: all.bounds };
  },
};
