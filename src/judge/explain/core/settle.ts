import { programOf } from "../../solver/program.ts";
import type { Program } from "../../solver/program.ts";
import { TRUE, UNDEFINED, wellFounded } from "../../solver/well-founded.ts";
import type { Residue } from "./residue.ts";

/** What would become of the goal. */
export type Outcome = "stands" | "falls" | "open";

/** Tells what would become of a residue's goal if one of its atoms held, and if it did not. */
export function settling(
  residue: Residue,
): (atom: number) => { readonly held: Outcome; readonly fell: Outcome } {
  const count = residue.atoms.length;
  const program = withSwitches(residue);
  const without = new Uint8Array(program.atomCount).fill(1, count);
  const outcome = (): Outcome => {
    const value = wellFounded(program, { without })[0];
    return value === TRUE ? "stands" : value === UNDEFINED ? "open" : "falls";
  };
  return (atom) => {
    without[count + atom] = 0;
    const held = outcome();
    without[count + atom] = 1;
    without[atom] = 1;
    const fell = outcome();
    without[atom] = 0;
    return { held, fell };
  };
}

/** The residue with a switch for each atom, a fact by which it holds; all are off but where one is tried. */
function withSwitches({ atoms, rules }: Residue): Program {
  const count = atoms.length;
  const switches = atoms.flatMap((_, atom) => [
    { head: atom, positive: [count + atom], negative: [] },
    { head: count + atom, positive: [], negative: [] },
  ]);
  return programOf(2 * count, [...rules, ...switches]);
}
