import type { Measured } from "../../../src/plugin.ts";
import { clearanceOf } from "./dimension.ts";
import { commonTo, sizeOf } from "./sizes.ts";
import { together } from "./together.ts";

/** One dimension of one socket and one peg. */
export interface Mating {
  readonly socket: Measured;
  readonly peg: Measured;
}

/** How well each peg would go into the sockets of the others. */
export interface Crosswise {
  /** How many sockets were tried with a peg of another. */
  readonly tried: number;
  /** The mean chance of such a peg to fit in all dimensions, as if independent. */
  readonly chance: number;
}

/** Dimensions of one socket and one peg that belong together. */
export function jointsIn(matings: readonly Mating[]): readonly (readonly Mating[])[] {
  const joints = new Map<string, Mating[]>();
  for (const one of matings) {
    const key = `${one.socket.artefact}\n${one.peg.artefact}`;
    const known = joints.get(key);
    if (known) known.push(one);
    else joints.set(key, [one]);
  }
  return [...joints.values()];
}

/** Every socket with the peg of every other joint that has the same dimensions, none of them left open by a bound; null where there is none. */
export function crosswise(matings: readonly Mating[], loosest: number | null): Crosswise | null {
  const joints = jointsIn(matings);
  let [tried, sum] = [0, 0];
  for (const sockets of joints) {
    for (const pegs of joints) {
      if (pegs[0]?.peg.artefact === sockets[0]?.peg.artefact || pegs.length !== sockets.length) continue;
      const chances = sockets.map(({ socket }) => {
        const peg = pegs.find((one) => one.socket.dimension === socket.dimension)?.peg;
        return peg === undefined ? null : chanceOf(socket, peg, loosest);
      });
      const known = chances.filter((chance) => chance !== null);
      if (known.length < chances.length) continue;
      tried += 1;
      sum += together(known).independent;
    }
  }
  return tried === 0 ? null : { tried, chance: sum / tried };
}

function chanceOf(socket: Measured, peg: Measured, loosest: number | null): number | null {
  const covariance = commonTo(socket.quantity, peg.quantity);
  const { chance } = clearanceOf(sizeOf(socket.quantity), sizeOf(peg.quantity), { loosest, covariance });
  return chance[0] === chance[1] ? chance[0] : null;
}
