import type { MapPage } from "../../show/map/scene.ts";
import { mapSvg } from "../../write/map/map-svg.ts";
import { light } from "../../write/pen/palette.ts";
import { saveSvg } from "../parts/save.ts";
import { inReadersWords } from "../words/reader/said.ts";
import { mapWords } from "../words/shown/map.ts";

/** Saves the map as it is looked at, whole, as an SVG file; a file runs from left to right in every language. */
export function saveMap({ scene, states, beaten }: MapPage, title: string): void {
  const text = mapSvg({
    scene,
    states,
    beaten,
    palette: light,
    title: mapWords.saved(title),
    told: inReadersWords,
  });
  saveSvg(text, mapWords.fileName);
}
