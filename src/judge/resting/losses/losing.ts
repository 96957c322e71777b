import { rulesByHead } from "../../solver/program.ts";
import type { Program } from "../../solver/program.ts";
import { TRUE, wellFounded } from "../../solver/well-founded.ts";
import { masksOf } from "./mask.ts";
import { lossesOfProof } from "./proof.ts";

/** A program some of whose atoms may be lost, by the number of each loss. */
export interface Losing {
  /** Whether the goal holds when these losses are suffered. */
  readonly stands: (losses: readonly number[]) => boolean;
  /** Where it does: losses of which any that fell it besides have one among them. */
  readonly next: (losses: readonly number[]) => readonly number[];
}

/** What becomes of an atom when others are held false; `taken` lists the atoms that each loss takes. */
export function losingIn(program: Program, goal: number, taken: readonly (readonly number[])[]): Losing {
  const taking = masksOf(program.atomCount, taken.length);
  taken.forEach((atoms, loss) => {
    for (const atom of atoms) taking.add(atom, loss);
  });
  const rulesFor = rulesByHead(program);
  const withoutAll = (losses: readonly number[]): Uint8Array => {
    const without = new Uint8Array(program.atomCount);
    for (const loss of losses) for (const atom of taken[loss] ?? []) without[atom] = 1;
    return without;
  };
  return {
    stands: (losses) => wellFounded(program, { without: withoutAll(losses) })[goal] === TRUE,
    next: (losses) => lossesOfProof(program, goal, withoutAll(losses), taking, rulesFor),
  };
}
