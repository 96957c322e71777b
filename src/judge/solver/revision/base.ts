import { rulesByHead, transposed, type Program, type Rows } from "../program.ts";
import { FALSE, decidedInOrder } from "../well-founded.ts";

/** A program with its well-founded model, and why each atom has its value: what edits of it are measured against. */
export type Base = {
  readonly program: Program;
  readonly rulesFor: Rows;
  readonly values: Uint8Array;
  /** When each atom was decided: after all that decides it; -1 where it is undefined. */
  readonly order: Int32Array;
  /** The number of the set that an atom fell with for want of support, each needing another of it; -1 for none. */
  readonly fell: Int32Array;
  /** The atoms of each such set. */
  readonly fallen: Rows;
};

/** What is known of a program already. */
export type Known = { readonly decided?: Pick<Base, "values" | "order">; readonly rulesFor?: Rows };

/** Evaluates a program once for all edits of it, as far as it is not known. */
export function baseOf(program: Program, known: Known = {}): Base {
  const { values, order } = known.decided ?? decidedInOrder(program);
  const rulesFor = known.rulesFor ?? rulesByHead(program);
  return { program, rulesFor, values, order, ...fallenTogether(program, rulesFor, values, order) };
}

/**
 * Atoms that fell at one time lean on one another, but not all on all: they are parted into sets that share no rule
 * that needs one of them, so that each set is unfounded by itself.
 */
function fallenTogether(
  { atomCount, positive }: Program,
  rulesFor: Rows,
  values: Uint8Array,
  order: Int32Array,
): Pick<Base, "fell" | "fallen"> {
  const leader = new Int32Array(atomCount).fill(-1);
  const leaderOf = (atom: number): number => {
    let at = atom;
    while (leader[at] !== at) at = leader[at] = leader[leader[at]!]!;
    return at;
  };
  for (let atom = 0; atom < atomCount; atom++) if (values[atom] === FALSE) leader[atom] = atom;
  for (let atom = 0; atom < atomCount; atom++) {
    if (values[atom] !== FALSE) continue;
    for (let next = rulesFor.start[atom]!; next < rulesFor.start[atom + 1]!; next++) {
      const rule = rulesFor.items[next]!;
      for (let at = positive.start[rule]!; at < positive.start[rule + 1]!; at++) {
        const need = positive.items[at]!;
        if (order[need] === order[atom]) leader[leaderOf(need)] = leaderOf(atom);
      }
    }
  }
  const size = new Int32Array(atomCount);
  for (let atom = 0; atom < atomCount; atom++) if (leader[atom] !== -1) size[leaderOf(atom)]!++;
  const fell = new Int32Array(atomCount).fill(-1);
  const number = new Int32Array(atomCount).fill(-1);
  const members: number[] = [];
  let sets = 0;
  for (let atom = 0; atom < atomCount; atom++) {
    if (leader[atom] === -1 || size[leaderOf(atom)]! < 2) continue;
    const set = number[leaderOf(atom)] === -1 ? (number[leaderOf(atom)] = sets++) : number[leaderOf(atom)]!;
    fell[atom] = set;
    members.push(atom);
  }
  const start = new Int32Array(members.length + 1);
  for (let at = 0; at <= members.length; at++) start[at] = at;
  const sole = { start, items: Int32Array.from(members, (atom) => fell[atom]!) };
  const rows = transposed(sole, sets);
  return { fell, fallen: { start: rows.start, items: rows.items.map((at) => members[at]!) } };
}
