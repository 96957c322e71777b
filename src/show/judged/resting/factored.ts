/** Sets told at once: one of each of these lists together. */
export type Choice = readonly (readonly string[])[];

/** Sets of one size in as few choices as come of joining those that differ in one place; none is added or lost. */
export function factored(sets: readonly (readonly string[])[]): readonly Choice[] {
  let rows: Choice[] = sets.map((set) => set.map((id) => [id]));
  for (let joined = true; joined;) {
    joined = false;
    const kept: Choice[] = [];
    for (const row of rows) {
      const at = kept.findIndex((other) => join(other, row) !== null);
      const both = at < 0 ? null : join(kept[at] ?? [], row);
      if (both === null) kept.push(row);
      else {
        kept[at] = both;
        joined = true;
      }
    }
    rows = kept;
  }
  return rows;
}

/** Two choices as one, where all but one list of each are the same; else null. */
function join(one: Choice, other: Choice): Choice | null {
  if (one.length !== other.length) return null;
  const key = (list: readonly string[]): string => list.join("\n");
  const left = other.map(key);
  const own = one.filter((list) => !left.includes(key(list)));
  const shared = one.filter((list) => left.includes(key(list)));
  const [first, ...more] = own;
  if (!first || more.length > 0) return null;
  const keys = shared.map(key);
  const theirs = other.find((list) => !keys.includes(key(list)));
  return theirs ? [[...first, ...theirs], ...shared] : null;
}
