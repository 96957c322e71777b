import type { Id } from "../../base/finding.ts";

/** The shortest way from a record down to the first that `ends`, both included; null where none is reached. */
export function wayTo(
  from: Id,
  next: (id: Id) => readonly Id[],
  ends: (id: Id) => boolean,
): readonly Id[] | null {
  return waysTo(from, next, ends, 1)[0] ?? null;
}

/** The shortest ways from a record down to each of the first `most` that `end`, in the order in which they are met. */
export function waysTo(
  from: Id,
  next: (id: Id) => readonly Id[],
  ends: (id: Id) => boolean,
  most = Infinity,
): readonly (readonly Id[])[] {
  const before = new Map<Id, Id | null>([[from, null]]);
  const waiting = [from];
  const found: (readonly Id[])[] = [];
  for (let at = 0; at < waiting.length && found.length < most; at++) {
    const id = waiting[at] ?? from;
    if (ends(id)) found.push(wayBack(id, before));
    for (const one of next(id)) {
      if (before.has(one)) continue;
      before.set(one, id);
      waiting.push(one);
    }
  }
  return found;
}

function wayBack(last: Id, before: ReadonlyMap<Id, Id | null>): readonly Id[] {
  const way: Id[] = [];
  for (let at: Id | null = last; at !== null; at = before.get(at) ?? null) way.unshift(at);
  return way;
}
