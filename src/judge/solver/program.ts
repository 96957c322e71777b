/** Rows of whole numbers laid end to end: row `i` is `items[start[i]]` up to `items[start[i + 1]]`. */
export type Rows = { readonly start: Int32Array; readonly items: Int32Array };

/** One rule of a normal logic program: the head holds when every positive atom does and no negative one. */
export type Rule = {
  readonly head: number;
  readonly positive: readonly number[];
  readonly negative: readonly number[];
};

/** A normal logic program on the atoms 0 to `atomCount` - 1, with the rules found by each atom of their body. */
export type Program = {
  readonly atomCount: number;
  readonly ruleCount: number;
  /** The head of each rule. */
  readonly heads: Int32Array;
  /** The atoms that each rule needs. */
  readonly positive: Rows;
  /** The atoms that each rule needs to be false. */
  readonly negative: Rows;
  /** The rules that need each atom. */
  readonly neededBy: Rows;
  /** The rules that need each atom to be false. */
  readonly barredBy: Rows;
};

/** Options of every evaluation: the atoms marked in `without` are false, and none of their rules counts. */
export type Evaluation = { readonly without?: Uint8Array };

/** The rows of a list of lists. */
export function rowsOf(lists: readonly (readonly number[])[]): Rows {
  const start = new Int32Array(lists.length + 1);
  lists.forEach((list, row) => (start[row + 1] = start[row]! + list.length));
  const items = new Int32Array(start[lists.length]!);
  lists.forEach((list, row) => items.set(list, start[row]));
  return { start, items };
}

/** The rows read the other way: row `item` of the result lists the rows in which `item` stands, in order. */
export function transposed({ start: from, items: keys }: Rows, itemCount: number): Rows {
  const begins = beginsOf(itemCount, keys);
  const items = new Int32Array(keys.length);
  for (let row = 0, at = 0; row + 1 < from.length; row++) {
    for (const end = from[row + 1]!; at < end; at++) items[begins[keys[at]! + 1]!++] = row;
  }
  return { start: begins.subarray(0, itemCount + 1), items };
}

/** The members gathered by their key, each group in the order given; keys are 0 to `keyCount` - 1. */
export function grouped(keyCount: number, keys: Int32Array, members: Int32Array): Rows {
  return laid(beginsOf(keyCount, keys), keys, members);
}

/**
 * Pairs gathered by what each begins with and by what it ends with, both counted in one go. The rows by the ends are laid
 * out when they are first asked for, since an evaluation only counts them.
 */
export function groupedBothWays(
  keyCount: number,
  from: Int32Array,
  to: Int32Array,
): { readonly byFrom: Rows; readonly byTo: Rows } {
  const [fromBegins, toBegins] = [new Int32Array(keyCount + 2), new Int32Array(keyCount + 2)];
  for (let at = 0; at < from.length; at++) {
    fromBegins[from[at]! + 2]!++;
    toBegins[to[at]! + 2]!++;
  }
  const byFrom = laid(addedUp(fromBegins, from), from, to);
  const start = addedUp(toBegins, to).subarray(1);
  let items: Int32Array | null = null;
  const byTo: Rows = {
    start,
    get items() {
      return (items ??= grouped(keyCount, to, from).items);
    },
  };
  return { byFrom, byTo };
}

/** Lays members out by the places where the groups of their keys begin. */
function laid(begins: Int32Array, keys: Int32Array, members: Int32Array): Rows {
  const items = new Int32Array(keys.length);
  for (let at = 0; at < keys.length; at++) items[begins[keys[at]! + 1]!++] = members[at]!;
  return { start: begins.subarray(0, begins.length - 1), items };
}

/**
 * Where the group of each key begins when the groups are laid end to end, at the place after the key; once all members
 * are laid, each entry has moved to where the next group begins, and the places are those of the keys.
 */
function beginsOf(keyCount: number, keys: Int32Array): Int32Array {
  const begins = new Int32Array(keyCount + 2);
  for (let at = 0; at < keys.length; at++) begins[keys[at]! + 2]!++;
  return addedUp(begins, keys);
}

/** Where groups begin, from how many members each has, counted two places after the key. A key that is out of range throws. */
function addedUp(counts: Int32Array, keys: Int32Array): Int32Array {
  // One above the last or far below 0 was not counted, one just below 0 was counted before the first.
  const isBelow = counts[0] !== 0 || counts[1] !== 0;
  let sum = 0;
  for (let key = 2; key < counts.length; key++) counts[key] = sum += counts[key]!;
  if (isBelow || sum !== keys.length) requireAtoms(counts.length - 2, keys);
  return counts;
}

/** The rules for each atom. */
export function rulesByHead({ atomCount, ruleCount, heads }: Program): Rows {
  const rules = new Int32Array(ruleCount);
  for (let rule = 0; rule < ruleCount; rule++) rules[rule] = rule;
  return grouped(atomCount, heads, rules);
}

/** A program from a list of rules; an atom outside 0 to `atomCount` - 1 throws. */
export function programOf(atomCount: number, rules: readonly Rule[]): Program {
  const heads = Int32Array.from(rules, (rule) => rule.head);
  const positive = rowsOf(rules.map((rule) => rule.positive));
  const negative = rowsOf(rules.map((rule) => rule.negative));
  return programFrom(atomCount, heads, positive, negative);
}

/** A program from rules that are already rows; an atom outside 0 to `atomCount` - 1 throws. */
export function programFrom(atomCount: number, heads: Int32Array, positive: Rows, negative: Rows): Program {
  requireAtoms(atomCount, heads);
  const ruleCount = heads.length;
  return {
    atomCount,
    ruleCount,
    heads,
    positive,
    negative,
    neededBy: transposed(positive, atomCount),
    barredBy: transposed(negative, atomCount),
  };
}

/** The program with everything that its rules need to be false left out of them. */
export function withoutBars(program: Program): Program {
  const { atomCount, ruleCount } = program;
  const starts = new Int32Array(Math.max(ruleCount, atomCount) + 1);
  const nothing = (rows: number): Rows => ({ start: starts.subarray(0, rows + 1), items: new Int32Array(0) });
  return { ...program, negative: nothing(ruleCount), barredBy: nothing(atomCount) };
}

/** Throws where one of the atoms is none of 0 to `atomCount` - 1. */
export function requireAtoms(atomCount: number, atoms: Int32Array): void {
  for (let at = 0; at < atoms.length; at++) {
    // Read without a sign, an atom below 0 is above any count.
    if (atoms[at]! >>> 0 >= atomCount)
      throw new Error(`Unknown atom ${atoms[at]!}, expected 0 to ${atomCount - 1}`);
  }
}
