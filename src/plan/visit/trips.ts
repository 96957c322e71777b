import { byText } from "../../base/order.ts";
import type { Planned, Trip } from "../plan.ts";
import { gainTogether } from "../together.ts";
import { permitsOf } from "./cautions.ts";
import { longestFirst } from "./lead-time.ts";
import type { Place } from "./places.ts";

/** Whom a place is to be asked of. */
export const askedOf = ({ keeper, heldAt }: Place): string | null => keeper ?? heldAt;

/** The examinations by keeper, in the order of their names; one that takes several keepers is on the list of each. */
export function tripsOf(planned: readonly Planned[]): readonly Trip[] {
  const groups = new Map<string | null, Planned[]>();
  for (const one of planned) {
    const keepers = new Set(one.places.map(askedOf));
    for (const keeper of keepers.size > 0 ? keepers : [null]) {
      groups.set(keeper, [...(groups.get(keeper) ?? []), one]);
    }
  }
  return [...groups]
    .map(([keeper, those]) => tripTo(keeper, those))
    .toSorted(
      (a, b) =>
        Number(a.keeper === null) - Number(b.keeper === null) || byText(a.keeper ?? "", b.keeper ?? ""),
    );
}

function tripTo(keeper: string | null, those: readonly Planned[]): Trip {
  const gentlest = those.toSorted(
    (a, b) => Number(a.examination.destructive) - Number(b.examination.destructive),
  );
  const costs = those.flatMap((one) => one.examination.cost ?? []);
  const here = (one: Planned): readonly Place[] => one.places.filter((place) => askedOf(place) === keeper);
  return {
    keeper,
    examinations: gentlest.map((one) => one.examination.id),
    cost: costs.length > 0 ? costs.reduce((sum, one) => sum + one, 0) : null,
    uncosted: those.length - costs.length,
    permits: [...new Set(gentlest.flatMap((one) => permitsOf(one.examination, here(one))))],
    together: gainTogether(gentlest),
    leadTimes: longestFirst(those.flatMap((one) => here(one).flatMap((place) => place.leadTime ?? []))),
  };
}
