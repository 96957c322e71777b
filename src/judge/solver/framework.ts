import { grouped, groupedWhenAsked, requireAtoms, type Program } from "./program.ts";

/** An argument framework by name: who attacks whom. */
export type Framework = {
  readonly arguments: readonly string[];
  readonly attacks: readonly (readonly [attacker: string, attacked: string])[];
};

/** The program of a framework given by name (Dung 1995); argument `i` is atom `i`. An unknown name throws. */
export function frameworkOf({ arguments: names, attacks }: Framework): Program {
  const place = placesOf(names, "argument");
  const attackers = Int32Array.from(attacks, ([attacker]) => place(attacker));
  const attacked = Int32Array.from(attacks, ([, target]) => place(target));
  return frameworkProgram(names.length, attackers, attacked);
}

/**
 * The program of a framework given by places, as `format.md` 5 puts it into the format: argument `i` is atom `i`,
 * all lean on one observation, the last atom, and `attackers[k]` is against `attacked[k]`.
 */
export function frameworkProgram(
  argumentCount: number,
  attackers: Int32Array,
  attacked: Int32Array,
): Program {
  const atomCount = argumentCount + 1;
  for (const places of [attackers, attacked]) requireAtoms(argumentCount, places);
  const counted = new Int32Array(atomCount + 1);
  for (let atom = 0; atom < atomCount; atom++) counted[atom] = atom;
  counted[atomCount] = argumentCount;
  // Rule `i` is for atom `i`; each but the last needs the last atom, and so the last is needed by each but its own.
  const neededFrom = new Int32Array(atomCount + 1);
  neededFrom[atomCount] = argumentCount;
  return {
    atomCount,
    ruleCount: atomCount,
    heads: counted.subarray(0, atomCount),
    positive: { start: counted, items: new Int32Array(argumentCount).fill(argumentCount) },
    negative: groupedWhenAsked(atomCount, attacked, attackers),
    neededBy: { start: neededFrom, items: counted.subarray(0, argumentCount) },
    barredBy: grouped(atomCount, attackers, attacked),
  };
}

/** Finds the place of each name; a name that stands twice or is asked for and unknown throws. */
export function placesOf(names: readonly string[], what: string): (name: string) => number {
  const places = new Map(names.map((name, place) => [name, place]));
  if (places.size < names.length) throw new Error(`Duplicate ${what}, expected each name once`);
  return (name) => {
    const place = places.get(name);
    if (place === undefined)
      throw new Error(`Unknown ${what} \`${name}\`, expected one of the ${names.length} named`);
    return place;
  };
}
