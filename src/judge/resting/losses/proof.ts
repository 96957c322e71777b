import { grouped, rulesByHead } from "../../solver/program.ts";
import type { Program, Rows } from "../../solver/program.ts";
import { FALSE, TRUE, UNDEFINED, decidedInOrder } from "../../solver/well-founded.ts";
import { masksOf, sizeOf, unite } from "./mask.ts";
import type { Masks } from "./mask.ts";

/**
 * The losses that take something from one proof of a true atom: from the rules it holds by, and from what answers
 * every rule of an atom that these need to be false. Among the ways to prove each atom, that which the fewest losses
 * touch is taken, from what is decided first to what is decided last. Without these losses the atom stays true,
 * whatever other rules go.
 */
export function lossesOfProof(
  program: Program,
  goal: number,
  without: Uint8Array,
  taking: Masks,
  rulesFor: Rows = rulesByHead(program),
): readonly number[] {
  const { atomCount, positive, negative } = program;
  const { values, order } = decidedInOrder(program, { without });
  const masks = masksOf(atomCount, taking.lossCount);
  const { wide } = masks;
  const now = new Uint32Array(wide);
  const best = new Uint32Array(wide);

  /** The losses of a rule by which a true atom holds; false where it was decided later. */
  const prove = (rule: number, slot: number): boolean => {
    now.fill(0);
    const fits = (atom: number, value: number): boolean => {
      if (values[atom] !== value || order[atom]! >= slot) return false;
      unite(now, 0, masks.bits, atom * wide, wide);
      return true;
    };
    for (let at = positive.start[rule]!; at < positive.start[rule + 1]!; at++)
      if (!fits(positive.items[at]!, TRUE)) return false;
    for (let at = negative.start[rule]!; at < negative.start[rule + 1]!; at++)
      if (!fits(negative.items[at]!, FALSE)) return false;
    return true;
  };
  const holds = (atom: number): void => {
    let least = Infinity;
    for (let at = rulesFor.start[atom]!; at < rulesFor.start[atom + 1]!; at++) {
      if (!prove(rulesFor.items[at]!, order[atom]!)) continue;
      const size = sizeOf(now, 0, wide);
      if (size < least) {
        least = size;
        best.set(now);
      }
    }
    unite(masks.bits, atom * wide, best, 0, wide);
    unite(masks.bits, atom * wide, taking.bits, atom * wide, wide);
  };
  /** What answers a rule of an atom that is false: another atom that falls with it, or the losses of what is known. */
  const answer = (rule: number, slot: number): number => {
    let least = Infinity;
    let beside = -1;
    const known = (atom: number): void => {
      const size = sizeOf(masks.bits, atom * wide, wide);
      if (size >= least) return;
      least = size;
      best.set(masks.bits.subarray(atom * wide, (atom + 1) * wide));
    };
    for (let at = positive.start[rule]!; at < positive.start[rule + 1]!; at++) {
      const atom = positive.items[at]!;
      if (values[atom] !== FALSE) continue;
      if (order[atom]! < slot) known(atom);
      else if (order[atom] === slot) beside = atom;
    }
    for (let at = negative.start[rule]!; at < negative.start[rule + 1]!; at++) {
      const atom = negative.items[at]!;
      if (values[atom] === TRUE && order[atom]! < slot) known(atom);
    }
    return least > 0 ? beside : -1;
  };
  /** Atoms that fall at one time, some of them each for want of another. */
  const fall = (atoms: Int32Array, slot: number): void => {
    const leans: (readonly [atom: number, on: number])[] = [];
    for (const atom of atoms) {
      if (without[atom] === 1) continue;
      for (let at = rulesFor.start[atom]!; at < rulesFor.start[atom + 1]!; at++) {
        const beside = answer(rulesFor.items[at]!, slot);
        if (beside >= 0) leans.push([atom, beside]);
        else unite(masks.bits, atom * wide, best, 0, wide);
      }
    }
    for (let grew = leans.length > 0; grew;) {
      grew = false;
      for (const [atom, on] of leans)
        if (unite(masks.bits, atom * wide, masks.bits, on * wide, wide)) grew = true;
    }
  };

  const decided = Int32Array.from({ length: atomCount }, (_, atom) => atom).filter(
    (atom) => values[atom] !== UNDEFINED,
  );
  const { start, items } = grouped(
    atomCount,
    decided.map((atom) => order[atom]!),
    decided,
  );
  for (let slot = 0; slot < atomCount && slot <= order[goal]!; slot++) {
    const atoms = items.subarray(start[slot], start[slot + 1]);
    if (atoms.length === 0) continue;
    if (values[atoms[0]!] === TRUE) for (const atom of atoms) holds(atom);
    else fall(atoms, slot);
  }
  return masks.lossesAt(goal);
}
