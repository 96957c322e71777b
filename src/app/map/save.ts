import type { MapPage } from "../../show/map/scene.ts";
import { mapSvg } from "../../write/map/map-svg.ts";
import { light } from "../../write/pen/palette.ts";
import { mapWords } from "../words/map.ts";

/** Saves the map as it is looked at, whole, as an SVG file. */
export function saveMap({ scene, states, beaten }: MapPage, title: string): void {
  const text = mapSvg({ scene, states, beaten, palette: light, title: mapWords.saved(title) });
  const address = URL.createObjectURL(new Blob([text], { type: "image/svg+xml" }));
  const link = document.createElement("a");
  link.href = address;
  link.download = mapWords.fileName;
  link.click();
  // The browser has taken the file by the time the next task runs.
  setTimeout(() => URL.revokeObjectURL(address), 1000);
}
