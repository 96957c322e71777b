import { refuse, say, type Refusal } from "../../../src/plugin.ts";

/**
 * The size that a part had before it shrank (wood that dried, clay that was fired), from its size now and the linear
 * shrinkage as a share, both with standard uncertainties: now / (1 − s), by first-order propagation (GUM 5.1.2).
 */
export function beforeShrinking(
  now: { readonly value: number; readonly u: number },
  shrinkage: { readonly value: number; readonly u: number },
): { readonly value: number; readonly u: number } | Refusal {
  const left = 1 - shrinkage.value;
  if (!(left > 0))
    return refuse("bad-shrinkage", say`Unexpected shrinkage of all or more, expected a share below 1.`);
  const value = now.value / left;
  return { value, u: Math.hypot(now.u / left, (value * shrinkage.u) / left) };
}
