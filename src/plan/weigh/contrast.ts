import { byText } from "../../base/order.ts";

/** What outcomes do to labels (methods J2). */
export interface Contrast {
  /** What has another label than now in at least one outcome. */
  readonly flips: readonly string[];
  /** What has different labels in different outcomes. */
  readonly discriminates: readonly string[];
}

/** Compares outcomes with the present and with one another; each outcome lists only the labels that it changes. */
export function contrastOf<Label>(outcomes: readonly ReadonlyMap<string, Label>[]): Contrast {
  const flips = [...new Set(outcomes.flatMap((one) => [...one.keys()]))].sort(byText);
  const discriminates = flips.filter((id) => {
    const first = outcomes[0]?.get(id);
    return outcomes.some((one) => one.get(id) !== first);
  });
  return { flips, discriminates };
}
