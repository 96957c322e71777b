import type { Band, BandName } from "../../scene.ts";
import type { Piece } from "../places/plan.ts";
import type { Tier } from "../ways/wire.ts";
import type { Heights } from "./heights.ts";

/** A row of the map with where it begins, under its lowest channel. */
interface Layer {
  readonly name: BandName;
  readonly floor: number;
  /** Boxes that are no beams stand in it: over it a new rank begins. */
  readonly full: boolean;
}

/** The bands from the top down, parted in the middle of the channels under their lowest rows, with hairlines between ranks. */
export function bandsOf(
  rows: readonly (readonly Piece[])[],
  tiers: readonly Tier[],
  { partingOver, height }: Heights,
  ground: number,
): readonly Band[] {
  const layers = rows.flatMap((row): readonly Layer[] => {
    const [first] = row;
    if (!first) return [];
    const floor = first.tier === 0 ? height : partingOver(first.tier - 1);
    const full = row.some(({ box }) => box.look.as !== "beam");
    return [{ name: first.box.band, floor, full }];
  });
  const bands: { name: BandName; top: number; bottom: number; hairlines: number[] }[] = [];
  for (const [at, { name, floor }] of layers.entries()) {
    const bottom = layers[at - 1]?.name === "things" ? ground : floor;
    const last = bands.at(-1);
    if (last?.name === name) {
      if (name === "claims" && layers[at - 1]?.full) last.hairlines.push(bottom);
    } else {
      if (last) last.top = bottom;
      bands.push({ name, top: 0, bottom: at === 0 ? height : bottom, hairlines: [] });
    }
  }
  return tiers.length === 0 ? [] : bands.reverse();
}
