import type { Taking } from "./taking.ts";

/** Pending atoms in groups that share nothing still to be taken in, so that each can be searched alone. */
export function groupsOf(taking: Taking, pending: readonly number[]): readonly (readonly number[])[] {
  if (pending.length < 2) return [pending];
  const leader = pending.map((_, group) => group);
  const leaderOf = (group: number): number => {
    let at = group;
    while (leader[at] !== at) at = leader[at] ?? at;
    return at;
  };
  const ownerOf = { atom: new Map<number, number>(), record: new Map<number, number>() };
  /** Makes a group the owner, or joins it with the group that is; tells whether it was free. */
  const claims = (owners: Map<number, number>, what: number, group: number): boolean => {
    const owner = owners.get(what);
    if (owner === undefined) owners.set(what, group);
    else leader[leaderOf(group)] = leaderOf(owner);
    return owner === undefined;
  };
  pending.forEach((atom, group) => visit(taking, atom, group, ownerOf, claims));
  const groups = new Map<number, number[]>();
  pending.forEach((atom, group) => {
    const found = groups.get(leaderOf(group));
    if (found) found.push(atom);
    else groups.set(leaderOf(group), [atom]);
  });
  return [...groups.values()];
}

/** Goes over all that an atom may still lead to; what is settled is passed through and belongs to nobody. */
function visit(
  taking: Taking,
  from: number,
  group: number,
  ownerOf: Readonly<Record<"atom" | "record", Map<number, number>>>,
  claims: (owners: Map<number, number>, what: number, group: number) => boolean,
): void {
  const { cone, taken, chosen, has } = taking;
  const settled = new Set<number>();
  const waiting = [from];
  for (let atom = waiting.pop(); atom !== undefined; atom = waiting.pop()) {
    taking.left--;
    const ways = cone.options[atom] ?? [];
    const option = chosen[atom] ?? -1;
    if (taken[atom] === 1 && option >= 0) {
      if (settled.has(atom)) continue;
      settled.add(atom);
      waiting.push(...(ways[option] ?? []));
      continue;
    }
    const own = cone.record[atom] ?? -1;
    if (own >= 0 && has[own] === 0) claims(ownerOf.record, own, group);
    if (claims(ownerOf.atom, atom, group)) waiting.push(...ways.flat());
  }
}
