/** The chance that all dimensions fit: multiplied as if independent, and within Fréchet's bounds whatever their dependence. */
export interface Together {
  readonly independent: number;
  readonly bounds: readonly [number, number];
}

/** All chances together (Fréchet 1935, from memory); none at all is certain. */
export function together(chances: readonly number[]): Together {
  const sum = chances.reduce((total, chance) => total + chance, 0);
  const least = Math.min(1, ...chances);
  return {
    independent: chances.reduce((product, chance) => product * chance, 1),
    bounds: [Math.min(least, Math.max(0, sum - (chances.length - 1))), least],
  };
}
