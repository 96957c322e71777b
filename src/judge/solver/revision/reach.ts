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
 * Finds what edits reach. An atom is left alone as long as a reason for its value stays that was decided before it and
 * that the edit does not reach: for a true one a rule, for a false one something against each of its rules, or a need
 * of that rule which fell together with it. So one look at each, in the order in which they were decided, is enough.
 * An undefined atom has no such reason, and is reached by whatever stands in its rules.
 */
export function reachOf(base: Base): (edit: Laid) => Reach {
  const { program, rulesFor, values, order, fell, fallen } = base;
  const { atomCount, heads, neededBy, barredBy } = program;
  const queue = queueBy(order);
  // An atom is marked where its entry is the turn of the edit, so that nothing is wiped between edits.
  const mark = { joined: new Int32Array(atomCount), edited: new Int32Array(atomCount) };
  const waiting = new Int32Array(atomCount);
  const place = new Int32Array(atomCount);
  const editPlace = new Int32Array(atomCount);
  let turn = 0;

  /** Whether an atom of the program keeps a value that it had before a time. */
  const keeps = (atom: number, value: number, before: number): boolean =>
    atom < atomCount && values[atom] === value && order[atom]! < before && mark.joined[atom] !== turn;

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
    const isEdited = mark.edited[atom] === turn;
    const [own, start, row] = isEdited
      ? [edit, edit.start, editPlace[atom]!]
      : [program, rulesFor.start, atom];
    for (let at = start[row]!; at < start[row + 1]!; at++) {
      const rule = isEdited ? at : rulesFor.items[at]!;
      if (holds && stands(own, rule, before)) return true;
      if (!holds && !isDead(own, rule, atom, before)) return false;
    }
    return !holds;
  };

  return (edit) => {
    turn++;
    const atoms: number[] = [];
    const fresh = new Map<number, number>();
    const freshEdits = new Map<number, number>();
    const join = (atom: number): void => {
      if (atom >= atomCount) {
        if (!fresh.has(atom)) fresh.set(atom, atoms.push(atom) - 1);
      } else if (mark.joined[atom] !== turn) {
        mark.joined[atom] = turn;
        place[atom] = atoms.push(atom) - 1;
      }
    };
    const wait = (atom: number): void => {
      if (waiting[atom] === turn) return;
      waiting[atom] = turn;
      queue.push(atom);
    };
    const touch = (head: number, after: number): void => {
      if (mark.edited[head] === turn || mark.joined[head] === turn) return;
      if (values[head] === UNDEFINED) join(head);
      else if (after !== -1 && order[head]! > after) wait(head);
    };
    edit.heads.forEach((head, at) => {
      if (head >= atomCount) freshEdits.set(head, at);
      else [mark.edited[head], editPlace[head]] = [turn, at];
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
      if (mark.joined[atom] === turn || keepsReason(atom, edit)) continue;
      const set = fell[atom]!;
      if (set === -1) join(atom);
      else for (let at = fallen.start[set]!; at < fallen.start[set + 1]!; at++) join(fallen.items[at]!);
    }
    const found = (
      atom: number,
      isIn: Int32Array,
      at: Int32Array,
      more: ReadonlyMap<number, number>,
    ): number => (atom >= atomCount ? (more.get(atom) ?? -1) : isIn[atom] === turn ? at[atom]! : -1);
    return {
      atoms,
      placeOf: (atom) => found(atom, mark.joined, place, fresh),
      editedAt: (atom) => found(atom, mark.edited, editPlace, freshEdits),
    };
  };
}
