import { FALSE, TRUE, UNDEFINED } from "../well-founded.ts";
import type { Base } from "./base.ts";
import type { Bodies, Laid } from "./edit.ts";
import { queueBy } from "./queue.ts";

/** The atoms that an edit could decide otherwise, each with its place among them, or -1; and its place in the edit. */
export type Reach = {
  readonly atoms: readonly number[];
  readonly placeOf: (atom: number) => number;
  readonly editedAt: (atom: number) => number;
};

/**
 * Where each atom lies in lists that are made anew for each edit: among what it reaches, what it names, what waited. An
 * atom is in a list when it stands there at its place, so that nothing is wiped between edits (Briggs & Torczon 1993).
 */
export type Places = {
  readonly reached: Int32Array;
  readonly named: Int32Array;
  readonly waiting: Int32Array;
};

/** Places for the atoms of a program. */
export function placesFor(atomCount: number): Places {
  const places = (): Int32Array => new Int32Array(atomCount);
  return { reached: places(), named: places(), waiting: places() };
}

/** The place of an atom in a list, or -1. */
function placeIn(list: readonly number[], places: Int32Array, atom: number): number {
  const at = places[atom]!;
  return at < list.length && list[at] === atom ? at : -1;
}

/**
 * Finds what edits reach. An atom is left alone as long as a reason for its value stays that was decided before it and
 * that the edit does not reach: for a true one a rule, for a false one something against each of its rules, or a need
 * of that rule which fell together with it. So one look at each, in the order in which they were decided, is enough.
 * An undefined atom has no such reason, and is reached by whatever stands in its rules.
 */
export function reachOf(base: Base, places = placesFor(base.program.atomCount)): (edit: Laid) => Reach {
  const { program, rulesFor, values, order, fell, fallen } = base;
  const { atomCount, heads, neededBy, barredBy } = program;
  const queue = queueBy(order);
  let atoms: number[] = [];
  const isReached = (atom: number): boolean => placeIn(atoms, places.reached, atom) !== -1;

  /** Whether an atom of the program keeps a value that it had before a time. */
  const keeps = (atom: number, value: number, before: number): boolean =>
    atom < atomCount && values[atom] === value && order[atom]! < before && !isReached(atom);

  const stands = ({ positive, negative }: Bodies, rule: number, before: number): boolean => {
    for (let at = positive.start[rule]!; at < positive.start[rule + 1]!; at++) {
      if (!keeps(positive.items[at]!, TRUE, before)) return false;
    }
    for (let at = negative.start[rule]!; at < negative.start[rule + 1]!; at++) {
      if (!keeps(negative.items[at]!, FALSE, before)) return false;
    }
    return true;
  };

  const isDead = ({ positive, negative }: Bodies, rule: number, atom: number, before: number): boolean => {
    const set = fell[atom]!;
    for (let at = positive.start[rule]!; at < positive.start[rule + 1]!; at++) {
      const need = positive.items[at]!;
      if (need === atom || (set !== -1 && fell[need] === set) || keeps(need, FALSE, before)) return true;
    }
    for (let at = negative.start[rule]!; at < negative.start[rule + 1]!; at++) {
      if (keeps(negative.items[at]!, TRUE, before)) return true;
    }
    return false;
  };

  const keepsReason = (atom: number, edit: Laid): boolean => {
    const before = order[atom]!;
    const holds = values[atom] === TRUE;
    const edited = placeIn(edit.heads, places.named, atom);
    const isEdited = edited !== -1;
    const [own, start, row] = isEdited ? [edit, edit.start, edited] : [program, rulesFor.start, atom];
    for (let at = start[row]!; at < start[row + 1]!; at++) {
      const rule = isEdited ? at : rulesFor.items[at]!;
      if (holds && stands(own, rule, before)) return true;
      if (!holds && !isDead(own, rule, atom, before)) return false;
    }
    return !holds;
  };

  return (edit) => {
    const found: number[] = [];
    atoms = found;
    const waited: number[] = [];
    const fresh = new Map<number, number>();
    const freshEdits = new Map<number, number>();
    const join = (atom: number): void => {
      if (atom >= atomCount) {
        if (!fresh.has(atom)) fresh.set(atom, atoms.push(atom) - 1);
      } else if (!isReached(atom)) places.reached[atom] = atoms.push(atom) - 1;
    };
    const wait = (atom: number): void => {
      if (placeIn(waited, places.waiting, atom) !== -1) return;
      places.waiting[atom] = waited.push(atom) - 1;
      queue.push(atom);
    };
    const touch = (head: number, after: number): void => {
      if (placeIn(edit.heads, places.named, head) !== -1 || isReached(head)) return;
      if (values[head] === UNDEFINED) join(head);
      else if (after !== -1 && order[head]! > after) wait(head);
    };
    edit.heads.forEach((head, at) => {
      if (head >= atomCount) freshEdits.set(head, at);
      else places.named[head] = at;
    });
    edit.heads.forEach((head) => {
      if (head < atomCount && values[head] !== UNDEFINED) wait(head);
      else join(head);
    });
    for (const { items } of [edit.positive, edit.negative]) {
      for (const atom of items) if (atom >= atomCount) join(atom);
    }
    for (let spread = 0; ;) {
      for (; spread < atoms.length; spread++) {
        const atom = atoms[spread]!;
        if (atom >= atomCount) continue;
        const after = order[atom]!;
        for (const { start, items } of [neededBy, barredBy]) {
          for (let at = start[atom]!; at < start[atom + 1]!; at++) touch(heads[items[at]!]!, after);
        }
      }
      const atom = queue.pop();
      if (atom === -1) break;
      if (isReached(atom) || keepsReason(atom, edit)) continue;
      const set = fell[atom]!;
      if (set === -1) join(atom);
      else for (let at = fallen.start[set]!; at < fallen.start[set + 1]!; at++) join(fallen.items[at]!);
    }
    const placed = (
      atom: number,
      list: readonly number[],
      at: Int32Array,
      more: ReadonlyMap<number, number>,
    ): number => (atom >= atomCount ? (more.get(atom) ?? -1) : placeIn(list, at, atom));
    return {
      atoms: found,
      placeOf: (atom) => placed(atom, found, places.reached, fresh),
      editedAt: (atom) => placed(atom, edit.heads, places.named, freshEdits),
    };
  };
}
