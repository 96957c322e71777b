/** What is used for what, from roots to a goal: `next[v]` lists what vertex `v` is used for. */
export interface Ways {
  readonly next: readonly (readonly number[])[];
  readonly roots: readonly number[];
  readonly goal: number;
}

/** An arc of the network with what it still lets through, and the place of the arc the other way. */
interface Arc {
  readonly to: number;
  free: number;
  readonly reverse: number;
}

/**
 * As many ways from distinct roots to the goal as there are that share no vertex but the goal (Menger 1927), each from
 * its root up: augmenting paths with reverse arcs on the network in which each vertex is split in two.
 */
export function disjointPaths(ways: Ways): readonly (readonly number[])[] {
  const { next, roots, goal } = ways;
  const arcs: Arc[][] = Array.from({ length: 2 * next.length + 1 }, () => []);
  const start = 2 * next.length;
  const join = (from: number, to: number): void => {
    const there = arcs[from] ?? [];
    const back = arcs[to] ?? [];
    there.push({ to, free: 1, reverse: back.length });
    back.push({ to: from, free: 0, reverse: there.length - 1 });
  };
  next.forEach((those, vertex) => {
    if (vertex === goal) return;
    join(2 * vertex, 2 * vertex + 1);
    for (const one of new Set(those)) join(2 * vertex + 1, 2 * one);
  });
  for (const root of new Set(roots)) if (root !== goal) join(start, 2 * root);
  while (augment(arcs, start, 2 * goal));
  const firsts = (arcs[start] ?? []).filter((arc) => arc.free === 0).map((arc) => arc.to / 2);
  return firsts.map((first) => {
    const path = [first];
    for (let at = first; at !== goal;) {
      const taken = (arcs[2 * at + 1] ?? []).find((arc) => arc.free === 0 && arc.to !== 2 * at);
      if (!taken) throw new Error("disjointPaths: a way that ends before the goal");
      at = taken.to / 2;
      path.push(at);
    }
    return path;
  });
}

/** Lets one more through along the shortest way that is free, taking back what stands against it. */
function augment(arcs: readonly Arc[][], start: number, end: number): boolean {
  const reached = new Map<number, Arc | null>([[start, null]]);
  for (const [at] of reached) {
    if (at === end) break;
    for (const arc of arcs[at] ?? []) if (arc.free > 0 && !reached.has(arc.to)) reached.set(arc.to, arc);
  }
  if (!reached.has(end)) return false;
  for (let arc = reached.get(end); arc;) {
    const other: Arc | undefined = arcs[arc.to]?.[arc.reverse];
    if (!other) throw new Error("augment: an arc without its reverse");
    arc.free -= 1;
    other.free += 1;
    arc = reached.get(other.to);
  }
  return true;
}

/** Every vertex that a root leads to on some way to the goal, the goal and the vertices in `without` left out. */
export function reaching(
  { next, roots, goal }: Ways,
  without: ReadonlySet<number> = new Set(),
): ReadonlySet<number> {
  const forward = new Set(roots.filter((root) => !without.has(root) && root !== goal));
  for (const at of forward)
    for (const one of at === goal ? [] : (next[at] ?? [])) if (!without.has(one)) forward.add(one);
  return forward;
}

/**
 * The smallest sets of vertices, roots among them, without which no root leads to the goal; none where they are larger
 * than three. Each has exactly one vertex of every disjoint path.
 */
export function smallestCuts(
  ways: Ways,
  paths: readonly (readonly number[])[],
): readonly (readonly number[])[] {
  if (paths.length === 0 || paths.length > 3) return [];
  const choices = paths.map((path) => path.slice(0, -1));
  const all = choices.reduce<readonly (readonly number[])[]>(
    (sets, choice) => sets.flatMap((set) => choice.map((vertex) => [...set, vertex])),
    [[]],
  );
  return all.filter((set) => !reaching(ways, new Set(set)).has(ways.goal));
}
