import { inEnglish } from "../../../base/text/said/english.ts";
import type { Box, Leaf } from "../../../show/telling/talk/layout/leaf.ts";
import type { Setup } from "../../../show/telling/talk/layout/measured.ts";
import type { SlidePicture } from "../../../write/office/slides/deck.ts";
import { print } from "../../../write/pen/palette.ts";
import { drawingInEnglish, drawnOn } from "../../../write/telling/slides/drawn.ts";
import { svgOnSlide } from "../../../write/telling/slides/svg.ts";
import { imageOf } from "../../print/image.ts";
import { pngApart, pngOf } from "../../print/png.ts";
import { svgDocument } from "../../print/svg-document.ts";

/** Dots to the inch of the raster that stands in for a vector: 1920 across a wide slide. */
const dpi = 144;

type OfPicture = Extract<Box, { readonly is: "picture" }>;

/** Every picture of some leaves, drawn once each. */
export async function picturesFor(
  folder: string,
  leaves: readonly Leaf[],
  { mirrored }: Setup,
): Promise<ReadonlyMap<Box, SlidePicture>> {
  const document = svgDocument();
  const boxes = leaves.flatMap((leaf) => leaf.boxes.filter((box): box is OfPicture => box.is === "picture"));
  const made = new Map<Box, SlidePicture>();
  for (const [at, box] of boxes.entries()) {
    // Words longer than a slide leave no room for what they are about.
    if (box.width < 1 || box.height < 1) continue;
    const easel = {
      document,
      palette: print,
      told: inEnglish,
      words: drawingInEnglish,
      prefix: `p${at}-`,
      mirrored,
    };
    const drawn = drawnOn(box.picture, box, easel);
    if (drawn === null) {
      const image = box.picture.is === "image" ? await imageIn(folder, box.picture.file) : null;
      if (image !== null) made.set(box, image);
      continue;
    }
    const svg = svgOnSlide(drawn, box.alt);
    const png = await pngOf(svg, { width: (drawn.width / 72) * 25.4, dpi });
    made.set(box, { svg, png, jpeg: null, width: drawn.width, height: drawn.height });
  }
  return made;
}

/** A picture of the corpus, as large as it likes: it is fitted into its box. */
async function imageIn(folder: string, file: string): Promise<SlidePicture | null> {
  const image = await imageOf(folder, file);
  if ("refused" in image) return null;
  const { type, bytes, width, height } = image;
  const size = { width: width * enlarged, height: height * enlarged };
  if (type === "image/jpeg") return { svg: null, png: null, jpeg: bytes, ...size };
  if (type === "image/png") return { svg: null, png: bytes, jpeg: null, ...size };
  const svg = new TextDecoder().decode(bytes);
  const png = await pngApart(svg, { width: 320 * Math.min(1, width / height), dpi });
  return png && { svg, png, jpeg: null, ...size };
}

/** An image is fitted into its box from above: as far as this it is enlarged. */
const enlarged = 20;
