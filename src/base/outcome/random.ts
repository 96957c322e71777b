import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";

/** Draws from a seeded stream: the same seed gives the same draws on every machine. */
export interface Random {
  /** Uniform in [0, 1). */
  readonly uniform: () => number;
  /** Standard normal, by the polar method of Marsaglia & Bray 1964 (from memory). */
  readonly normal: () => number;
  /** Whole number in 0..n-1. */
  readonly below: (n: number) => number;
}

/** A stream of draws by xoroshiro128+ from a 32-bit seed. */
export function randomFrom(seed: number): Random {
  const generator = xoroshiro128plus(seed);
  const uniform = (): number => uniformFloat64(generator);
  let spare: number | null = null;
  const normal = (): number => {
    if (spare !== null) {
      const kept = spare;
      spare = null;
      return kept;
    }
    for (;;) {
      const x = 2 * uniform() - 1;
      const y = 2 * uniform() - 1;
      const s = x * x + y * y;
      if (s <= 0 || s >= 1) continue;
      const factor = Math.sqrt((-2 * Math.log(s)) / s);
      spare = y * factor;
      return x * factor;
    }
  };
  return { uniform, normal, below: (n) => Math.floor(uniform() * n) };
}
