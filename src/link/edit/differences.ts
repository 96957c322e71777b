import { isList, saysSame } from "../../read/edit/written.ts";
import type { Written, WrittenMap } from "../../read/edit/written.ts";
import type { Step } from "../../read/yaml/tree.ts";

/** A value that is to be another; null takes it out. */
export interface Difference {
  readonly path: readonly Step[];
  readonly value: Written | null;
}

/** What must be changed for a record to say other things: the smallest values that differ. */
export function differences(
  was: WrittenMap,
  is: WrittenMap,
  at: readonly Step[] = [],
): readonly Difference[] {
  const names = new Set([...Object.keys(was), ...Object.keys(is)]);
  return [...names].flatMap((name) => between(fieldIn(was, name), fieldIn(is, name), [...at, name]));
}

/** The value under a name; null where there is none. */
export function fieldIn(map: WrittenMap, name: string): Written | null {
  return Object.hasOwn(map, name) ? (map[name] ?? null) : null;
}

function between(was: Written | null, is: Written | null, path: readonly Step[]): readonly Difference[] {
  if (saysSame(was, is)) return [];
  if (was === null || is === null || typeof was === "string" || typeof is === "string")
    return [{ path, value: is }];
  if (isList(was) && isList(is)) {
    // Of a list that grew or shrank nobody knows which entry became which.
    if (was.length !== is.length) return [{ path, value: is }];
    return was.flatMap((one, place) => between(one, is[place] ?? null, [...path, place]));
  }
  if (isList(was) || isList(is)) return [{ path, value: is }];
  return differences(was, is, path);
}
