/** A rule as the oracles read it: any names, any order. */
export type PlainRule = {
  readonly head: string;
  readonly positive: readonly string[];
  readonly negative: readonly string[];
};

/** A partial stable model: what is true in it, and what is not false in it. */
export type Partial3 = { readonly certain: ReadonlySet<string>; readonly possible: ReadonlySet<string> };

/** The least model of the rules none of whose negatives is in `assumed`, by going round until nothing is added. */
export function naiveLeast(rules: readonly PlainRule[], assumed: ReadonlySet<string>): Set<string> {
  const model = new Set<string>();
  for (let before = -1; before < model.size;) {
    before = model.size;
    for (const { head, positive, negative } of rules) {
      if (negative.some((atom) => assumed.has(atom))) continue;
      if (positive.every((atom) => model.has(atom))) model.add(head);
    }
  }
  return model;
}

/** The well-founded model by the plain alternating fixpoint: `true`, `undefined` or `false` for each atom named. */
export function naiveWellFounded(rules: readonly PlainRule[]): Map<string, "true" | "undefined" | "false"> {
  let certain = new Set<string>();
  let possible = naiveLeast(rules, certain);
  for (;;) {
    const next = naiveLeast(rules, possible);
    if (next.size === certain.size) break;
    certain = next;
    possible = naiveLeast(rules, certain);
  }
  const value = (atom: string) => (certain.has(atom) ? "true" : possible.has(atom) ? "undefined" : "false");
  return new Map([...atomsOf(rules)].map((atom) => [atom, value(atom)]));
}

/** Every partial stable model, by trying each subset of the atoms; for at most a dozen atoms. */
export function naivePartialStable(rules: readonly PlainRule[]): Partial3[] {
  const atoms = [...atomsOf(rules)];
  const models: Partial3[] = [];
  for (let mask = 0; mask < 2 ** atoms.length; mask++) {
    const certain = new Set(atoms.filter((_, bit) => (mask >> bit) & 1));
    const possible = naiveLeast(rules, certain);
    if (!isSubset(certain, possible)) continue;
    const again = naiveLeast(rules, possible);
    if (again.size === certain.size && isSubset(again, certain)) models.push({ certain, possible });
  }
  return models;
}

/** The models whose true atoms no other model's true atoms contain. */
export function naiveRegular(models: readonly Partial3[]): Partial3[] {
  return models.filter(
    (model) =>
      !models.some(
        (other) => other.certain.size > model.certain.size && isSubset(model.certain, other.certain),
      ),
  );
}

/** All atoms that the rules name. */
export function atomsOf(rules: readonly PlainRule[]): Set<string> {
  return new Set(rules.flatMap(({ head, positive, negative }) => [head, ...positive, ...negative]));
}

function isSubset(small: ReadonlySet<string>, large: ReadonlySet<string>): boolean {
  return [...small].every((atom) => large.has(atom));
}
