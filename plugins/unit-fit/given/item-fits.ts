import { multipleOf } from "./given-unit.ts";

/** An item to hold against a unit: a value with its error, a range, or a bound, which is not tested. */
export type Item =
  | { readonly kind: "value"; readonly value: number; readonly sd: number }
  | { readonly kind: "range"; readonly low: number; readonly high: number }
  | { readonly kind: "bound" };

/** How an item fits; null where it was not tested. `residual` and `u` are of values alone. */
export interface ItemFit {
  readonly n: number | null;
  readonly residual: number | null;
  readonly u: number | null;
  readonly fits: boolean | null;
  /** Chance that an item without the unit would fit as well. */
  readonly chance: number | null;
}

/** How a list of items fits a unit, and how likely that is by chance. */
export interface ItemFits {
  readonly items: readonly ItemFit[];
  readonly fitting: number;
  readonly tested: number;
  /** Items whose chance to fit anyhow is below one half. */
  readonly informative: number;
  /** Chance that as many items fit without the unit (Poisson-binomial). */
  readonly pChance: number;
}

/** Item-by-item fit to the unit q with its own uncertainty `uq`, within k standard uncertainties (methods A7). */
export function itemFits(items: readonly Item[], q: number, uq: number, k: number): ItemFits {
  const fits = items.map((item) => fitOf(item, q, uq, k));
  const chances = fits.flatMap(({ chance }) => (chance === null ? [] : [chance]));
  const fitting = fits.filter((fit) => fit.fits === true).length;
  return {
    items: fits,
    fitting,
    tested: chances.length,
    informative: chances.filter((chance) => chance < 0.5).length,
    pChance: atLeast(fitting, chances),
  };
}

function fitOf(item: Item, q: number, uq: number, k: number): ItemFit {
  if (item.kind === "bound") return { n: null, residual: null, u: null, fits: null, chance: null };
  if (item.kind === "range") return fitOfRange(item.low, item.high, q, k * uq);
  const n = multipleOf(item.value, q);
  const residual = item.value - n * q;
  const u = Math.hypot(item.sd, n * uq);
  return { n, residual, u, fits: Math.abs(residual) <= k * u, chance: Math.min(1, (2 * k * u) / q) };
}

function fitOfRange(low: number, high: number, q: number, reach: number): ItemFit {
  const first = Math.max(1, Math.ceil(low / (q + reach) - 1e-12));
  const last = q > reach ? Math.floor(high / (q - reach) + 1e-12) : Infinity;
  const fits = first <= last;
  const nearest = multipleOf((low + high) / 2, q);
  const n = fits ? Math.min(Math.max(nearest, first), last) : nearest;
  return { n, residual: null, u: null, fits, chance: Math.min(1, (high - low + 2 * reach * n) / q) };
}

/** Chance that at least m of independent events of these chances happen. */
export function atLeast(m: number, chances: readonly number[]): number {
  const exactly = [1, ...chances.map(() => 0)];
  for (const [i, chance] of chances.entries()) {
    for (let j = i + 1; j >= 0; j -= 1) {
      exactly[j] = (exactly[j] ?? 0) * (1 - chance) + (j > 0 ? (exactly[j - 1] ?? 0) * chance : 0);
    }
  }
  return Math.min(
    1,
    exactly.slice(m).reduce((sum, p) => sum + p, 0),
  );
}
