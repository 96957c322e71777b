import type { MapPage } from "../../show/map/scene.ts";
import { mapSvg } from "../../write/map/map-svg.ts";
import { light } from "../../write/pen/palette.ts";
import { saveSvg } from "../parts/save.ts";
import { mapWords } from "../words/map.ts";

/** Saves the map as it is looked at, whole, as an SVG file. */
export function saveMap({ scene, states, beaten }: MapPage, title: string): void {
  const text = mapSvg({ scene, states, beaten, palette: light, title: mapWords.saved(title) });
  saveSvg(text, mapWords.fileName);
}
