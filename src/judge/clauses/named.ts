import type { Id } from "../../base/finding.ts";
import { grouped } from "../solver/program.ts";

/** Finds arguments by their ids: places among all of them, in order. */
export interface Named {
  /** More than one where a position is that of several scholars. */
  readonly placesOf: (id: Id) => readonly number[];
  /** The last of them; -1 for what is no argument. */
  readonly placeOf: (id: Id) => number;
}

const nothing: readonly number[] = [];

/** Finds arguments by the atoms of their ids, which are all those from `own[0]` to before `end`; `own` has that of each. */
export function namedBy(atoms: ReadonlyMap<Id, number>, own: readonly number[], end: number): Named {
  const first = own[0] ?? end;
  const count = end - first;
  const keys = Int32Array.from(own, (atom) => atom - first);
  const { start, items } = grouped(count, keys, Int32Array.from(own.keys()));
  const rowOf = (id: Id): number => {
    const row = (atoms.get(id) ?? -1) - first;
    return row < count ? row : -1;
  };
  return {
    placesOf: (id) => {
      const row = rowOf(id);
      return row < 0 ? nothing : [...items.subarray(start[row], start[row + 1])];
    },
    placeOf: (id) => {
      const row = rowOf(id);
      return row < 0 ? -1 : (items[(start[row + 1] ?? 0) - 1] ?? -1);
    },
  };
}
