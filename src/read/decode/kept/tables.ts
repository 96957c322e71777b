import { bare } from "../bare.ts";

/**
 * Plain values as tables: every text and number stands there once, and every list, map and object that says the same. A
 * value is a number: where it stands in one of the tables.
 */
export interface Tables {
  readonly strings: readonly string[];
  readonly numbers: Float64Array;
  readonly shapes: readonly Shape[];
  /** Lists, maps and objects one after another, each behind those it holds: a head, and the places of what it holds. */
  readonly nodes: Uint32Array;
}

/** What an object inherits from, by its place in `origins`, and the names of its fields. */
export type Shape = readonly [origin: number, ...names: string[]];

/** What plain objects inherit from: values of records have nothing but what stands there. */
export const origins: readonly (object | null)[] = [Object.prototype, bare, null];

/** Values that have no table; their places follow one another. */
export const constants: readonly unknown[] = [null, false, true, undefined];

/** What the two lowest bits of a place tell: in which table it lies. */
export const tableOf = { constants: 0, strings: 1, numbers: 2, nodes: 3 } as const;

/**
 * What the two lowest bits of a head tell; the others are how many things it holds, or the place of its shape. A row is a
 * list of places, of which no value is made.
 */
export const headOf = { list: 0, map: 1, object: 2, row: 3 } as const;

/** Bits that tell a kind, below a place or a number. */
export const kindBits = 2;

/** The kind in a place or a head. */
export const kindIn = (one: number): number => one & 3;
