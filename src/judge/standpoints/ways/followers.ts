import type { Rule } from "../../solver/program.ts";
import type { Part } from "../../solver/standpoints.ts";

/**
 * The atoms of a part that only follow from others: no atom of a circle leans on them, however far, so that each is
 * decided once all it leans on are. In an order in which each leans only on what is no follower or comes before it.
 */
export function followersIn({ atoms, rules }: Part): readonly number[] {
  const leans = atoms.map(() => new Set<number>());
  for (const { head, positive, negative } of rules) {
    for (const atom of [...positive, ...negative]) leans[head]?.add(atom);
  }
  const carried = atoms.map(() => 0);
  for (const set of leans) for (const atom of set) carried[atom] = (carried[atom] ?? 0) + 1;
  const found = [...carried.keys()].filter((atom) => carried[atom] === 0);
  for (let at = 0; at < found.length; at++) {
    for (const atom of leans[found[at] ?? -1] ?? []) {
      const left = (carried[atom] ?? 0) - 1;
      carried[atom] = left;
      if (left === 0) found.push(atom);
    }
  }
  return found.toReversed();
}

/** Some atoms with all they lean on, however far: nothing else of the part bears on how they are decided. */
export function leaningsOf({ atoms, rules }: Part, wanted: readonly number[]): Part {
  const rulesFor = atoms.map((): Rule[] => []);
  for (const rule of rules) rulesFor[rule.head]?.push(rule);
  const reached = new Set(wanted);
  for (const at of reached) {
    for (const { positive, negative } of rulesFor[at] ?? []) {
      for (const other of [...positive, ...negative]) reached.add(other);
    }
  }
  const kept = [...reached].sort((a, b) => a - b);
  const place = new Map(kept.map((one, local) => [one, local]));
  const placed = (ones: readonly number[]): readonly number[] => ones.map((one) => place.get(one) ?? -1);
  return {
    atoms: kept.flatMap((one) => atoms[one] ?? []),
    rules: kept
      .flatMap((one) => rulesFor[one] ?? [])
      .map(({ head, positive, negative }) => ({
        head: place.get(head) ?? -1,
        positive: placed(positive),
        negative: placed(negative),
      })),
  };
}
