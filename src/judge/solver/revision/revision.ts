import { programFrom, type Program } from "../program.ts";
import { FALSE, TRUE, UNDEFINED, wellFounded } from "../well-founded.ts";
import { baseOf, type Base, type Known } from "./base.ts";
import { laidOut, type Bodies, type Edit, type Laid } from "./edit.ts";
import { placesFor, reachOf, type Places, type Reach } from "./reach.ts";

export type { Body, Edit } from "./edit.ts";
export { placesFor } from "./reach.ts";

/** A program whose well-founded model is known, to be asked for the model of edits of it. */
export type Revisable = {
  readonly program: Program;
  readonly values: Uint8Array;
  /** The atoms whose value is another after an edit, with that value, and every new one with its own. */
  readonly revise: (edit: Edit) => ReadonlyMap<number, number>;
};

/**
 * Prepares a program for edits, each of the program as it is. An edit takes time in proportion to what it reaches:
 * that is cut out as a program of its own, in which all else has the value it had, and evaluated. Nothing reached
 * bears on the rest, so the two models together are the model of the whole (splitting: Lifschitz & Turner 1994, from
 * memory). Programs on the same atoms may share the room in which atoms find their places.
 */
export function revisable(
  program: Program,
  known: Known = {},
  places: Places = placesFor(program.atomCount),
): Revisable {
  const base = baseOf(program, known);
  const reach = reachOf(base, places);
  const revise = (edit: Edit): ReadonlyMap<number, number> => {
    const laid = laidOut(edit);
    return changedIn(base, laid, reach(laid));
  };
  return { program, values: base.values, revise };
}

function changedIn(base: Base, edit: Laid, reach: Reach): ReadonlyMap<number, number> {
  const changed = new Map<number, number>();
  if (reach.atoms.length === 0) return changed;
  const values = wellFounded(cutOut(base, edit, reach));
  reach.atoms.forEach((atom, place) => {
    const value = values[place]!;
    if (atom >= base.program.atomCount || base.values[atom] !== value) changed.set(atom, value);
  });
  return changed;
}

/** The program of what is reached. Whatever beyond it is undefined is one atom more, which holds unless it does. */
function cutOut({ program, rulesFor, values }: Base, edit: Laid, reach: Reach): Program {
  const { atoms, placeOf, editedAt } = reach;
  const open = atoms.length;
  const heads: number[] = [];
  const needs = { start: [0], items: [] as number[] };
  const bars = { start: [0], items: [] as number[] };
  let isOpen = false;
  /** Puts what is wanted of an atom into the rule under way; false where the atom is decided against it. */
  const take = (atom: number, into: number[], wanted: number): boolean => {
    const place = placeOf(atom);
    if (place !== -1) into.push(place);
    else if (values[atom] === UNDEFINED) {
      isOpen = true;
      into.push(open);
    } else return values[atom] === wanted;
    return true;
  };
  const close = (head: number): void => {
    heads.push(head);
    needs.start.push(needs.items.length);
    bars.start.push(bars.items.length);
  };
  const copy = (head: number, { positive, negative }: Bodies, rule: number): void => {
    let stays = true;
    for (let at = positive.start[rule]!; stays && at < positive.start[rule + 1]!; at++) {
      stays = take(positive.items[at]!, needs.items, TRUE);
    }
    for (let at = negative.start[rule]!; stays && at < negative.start[rule + 1]!; at++) {
      stays = take(negative.items[at]!, bars.items, FALSE);
    }
    if (stays) close(head);
    else {
      needs.items.length = needs.start[heads.length]!;
      bars.items.length = bars.start[heads.length]!;
    }
  };
  atoms.forEach((atom, head) => {
    const at = editedAt(atom);
    if (at !== -1)
      for (let rule = edit.start[at]!; rule < edit.start[at + 1]!; rule++) copy(head, edit, rule);
    else if (atom < program.atomCount) {
      const { start, items } = rulesFor;
      for (let next = start[atom]!; next < start[atom + 1]!; next++) copy(head, program, items[next]!);
    }
  });
  if (isOpen) {
    bars.items.push(open);
    close(open);
  }
  const rows = ({ start, items }: typeof needs) => ({
    start: Int32Array.from(start),
    items: Int32Array.from(items),
  });
  return programFrom(isOpen ? open + 1 : open, Int32Array.from(heads), rows(needs), rows(bars));
}
