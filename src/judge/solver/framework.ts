import { grouped, programFrom, type Program } from "./program.ts";

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
  const heads = new Int32Array(atomCount);
  const start = new Int32Array(atomCount + 1);
  for (let atom = 0; atom < atomCount; atom++) heads[atom] = start[atom] = atom;
  start[atomCount] = argumentCount;
  const items = new Int32Array(argumentCount).fill(argumentCount);
  return programFrom(atomCount, heads, { start, items }, grouped(atomCount, attacked, attackers));
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
