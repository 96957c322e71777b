import type { MapPage, Scene } from "../../show/map/scene.ts";
import { nameColumn } from "../map/film/band-names.ts";
import { drawMap } from "../map/map.ts";
import type { Distance, Frame } from "../map/sight.ts";
import { svgFile, svgPen } from "../pen/svg-pen.ts";
import { onPaper, pageHeight, paper, paperPen, pxPerMm, sizedTo } from "./paper.ts";
import type { Printed } from "./paper.ts";

/** Film left free around the section, in px on the screen. */
const margin = 10;
/** What names of three lines under the things take up from afar, in px on the screen. */
const namesBelow = 56;
/** Windows narrower than this have no column for the names of bands. */
const roomForNames = 620;
/** The farthest from which all words can be read, and the farthest for short ones. */
const nearEnough = 0.69;
const farthest = 0.36;

/** From where a section is drawn for paper. */
export interface PaperSight {
  readonly distance: Distance;
  /** Screen px for each px of the scene. */
  readonly scale: number;
  readonly window: Frame;
}

/** The nearest sight from which a section fits a width in mm, and a page's height; null where it could not be read any more. */
export function sightFor({ scene }: Pick<MapPage, "scene">, width: number): PaperSight | null {
  const [across, down] = [(width * pxPerMm) / onPaper, (pageHeight * pxPerMm) / onPaper];
  const names = across >= roomForNames ? nameColumn + 8 - margin : 0;
  const fits = Math.min(
    (across - 2 * margin - names) / scene.width,
    (down - margin - namesBelow) / scene.height,
  );
  const scale = Math.min(1, fits);
  if (scale < farthest) return null;
  const px = (screen: number): number => screen / scale;
  const room = Math.max(0, px(across) - scene.width - px(2 * margin + names));
  const window = {
    x: -px(margin + names) - room / 2,
    y: -px(margin),
    width: px(across),
    height: px(margin) + footOf(scene, scale),
  };
  return { distance: scale >= nearEnough ? "near" : "middle", scale, window };
}

/** How far down there is something: the ground under the things, or their names. */
function footOf({ boxes, height }: Scene, scale: number): number {
  const ground = height + margin / scale;
  if (scale >= nearEnough) return ground;
  const things = boxes.flatMap(({ look, y, height: own }) => (look.as === "thing" ? [y + own] : []));
  return Math.max(ground, ...things.map((one) => one + namesBelow / scale));
}

/** Draws a part of the map for paper at a width in mm; what is too large for it is seen from as far as it can be read, and printed smaller. */
export function sectionSvg(
  map: Pick<MapPage, "scene" | "states" | "beaten">,
  width: number,
  name: string,
  title: string,
): Printed {
  const { distance, scale, window } = sightFor(map, width) ?? whole(map);
  const pen = svgPen(paper, name);
  const { scene, states, beaten } = map;
  const toPaper = (width * pxPerMm) / window.width;
  drawMap(paperPen(pen, toPaper), { scene, states, beaten, distance, scale, window });
  const svg = svgFile(window, title, pen.drawn());
  return sizedTo(svg, width, (window.height * toPaper) / pxPerMm);
}

function whole({ scene }: Pick<MapPage, "scene">): PaperSight {
  const px = (screen: number): number => screen / farthest;
  const names = nameColumn + 8;
  return {
    distance: "middle",
    scale: farthest,
    window: {
      x: -px(names),
      y: -px(margin),
      width: scene.width + px(margin + names),
      height: px(margin) + footOf(scene, farthest),
    },
  };
}
