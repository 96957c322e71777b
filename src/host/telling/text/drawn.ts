import type { Id } from "../../../base/finding.ts";
import type { Graph } from "../../../link/graph.ts";
import type { Picture } from "../../../show/telling/blocks/picture.ts";
import { withheldIn } from "../../../show/withhold.ts";
import { pictureSvg } from "../../../write/pictures/picture.ts";
import type { Drawn, DrawnPlates } from "../../../write/telling/drawn.ts";
import type { SetText } from "../../../write/telling/set/set-text.ts";
import { imageOf } from "../../print/image.ts";
import { pngApart, pngOf } from "../../print/png.ts";
import { svgDocument } from "../../print/svg-document.ts";
import type { Told } from "../kind.ts";
import { outlined } from "./outlined.ts";

/** The breadth of a text on A4 and what stands there with a caption, in mm, and the dots of an inch of what is printed. */
const [breadth, highest, dpi] = [160, 215, 300];
/** What is plotted is drawn lower than by itself, in mm, so that a figure of two panels shares its page with the text about it. */
const plotted = { width: 140, tallest: 36 } as const;
/** What a photograph is printed with at least, so that it is not broader than it is sharp. */
const leastDpi = 150;

/** Draws the figures of a text. `inPixels`: also as pixels, for what cannot show lines. What may not be shown, or is no picture, is not among them. */
export async function drawnPlates(
  { folder, model }: Pick<Told, "folder" | "model">,
  set: SetText,
  inPixels: boolean,
): Promise<DrawnPlates> {
  const drawn = new Map<number, Drawn>();
  for (const block of set.blocks) {
    if (block.is !== "plate") continue;
    const { picture } = block;
    const isOurs = picture.is !== "image";
    const one = isOurs
      ? linesDrawn(picture, block.number)
      : await imageDrawn(folder, model.graph, picture.file);
    const whole = one && (await finished(one, inPixels ? (isOurs ? pngOf : pngApart) : null));
    if (whole !== null) drawn.set(block.number, whole);
  }
  return drawn;
}

/** Lines with their letters as shapes, and in pixels where that is asked for; null where they cannot be. */
async function finished(one: Drawn, inPixels: typeof pngApart | null): Promise<Drawn | null> {
  const { svg, width } = one;
  if (svg === null) return one;
  const bytes = inPixels && (await inPixels(svg, { width, dpi }));
  if (inPixels && bytes === null) return null;
  return { ...one, svg: await outlined(svg), raster: bytes && { type: "png", bytes } };
}

function linesDrawn(picture: Exclude<Picture, { readonly is: "image" }>, number: number): Drawn {
  const size = picture.is === "computed" ? plotted : { width: breadth };
  const paper = { ...size, document: svgDocument(), name: `figure-${number}` };
  return { ...pictureSvg(picture, paper), raster: null };
}

async function imageDrawn(folder: string, graph: Graph, file: string): Promise<Drawn | null> {
  if (!isPublished(graph, file)) return null;
  const image = await imageOf(folder, file);
  if ("refused" in image) return null;
  const { type, bytes } = image;
  const width = Math.min(breadth, (image.width / leastDpi) * 25.4, (highest * image.width) / image.height);
  const size = { width, height: (width * image.height) / image.width };
  if (type === "image/svg+xml") return { ...size, svg: new TextDecoder().decode(bytes), raster: null };
  return { ...size, svg: null, raster: { type: type === "image/png" ? "png" : "jpeg", bytes } };
}

/** Whether a picture file is one of the corpus that may be published, of things that are not withheld. */
function isPublished(graph: Graph, file: string): boolean {
  const withheld = withheldIn(graph);
  return graph.list("images").some(({ id, values }) => {
    const things: readonly Id[] = [values.of].flat();
    return values.file === file && values.publish === true && ![id, ...things].some(withheld);
  });
}
