import { groupedBothWays, type Program } from "./program.ts";

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
 * The program of a framework given by places: argument `i` is atom `i`, its one rule is rule `i`, and `attackers[k]` is
 * against `attacked[k]`. The one observation that all lean on (`format.md` 5) holds whatever is attacked, and is left out.
 */
export function frameworkProgram(
  argumentCount: number,
  attackers: Int32Array,
  attacked: Int32Array,
): Program {
  const { byFrom, byTo } = groupedBothWays(argumentCount, attackers, attacked);
  const heads = new Int32Array(argumentCount);
  for (let argument = 0; argument < argumentCount; argument++) heads[argument] = argument;
  const nothing = { start: new Int32Array(argumentCount + 1), items: new Int32Array(0) };
  return {
    atomCount: argumentCount,
    ruleCount: argumentCount,
    heads,
    positive: nothing,
    negative: byTo,
    neededBy: nothing,
    barredBy: byFrom,
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
