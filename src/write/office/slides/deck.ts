import { escaped } from "../../../base/text/steering.ts";
import type Pptx from "pptxgenjs";
import type { Box, Leaf, Place } from "../../../show/telling/talk/layout/leaf.ts";
import { slideSizes } from "../../../show/telling/talk/layout/room.ts";
import type { Shape } from "../../../show/telling/talk/layout/room.ts";
import { print } from "../../pen/palette.ts";
import { base64 } from "../../visit/base64.ts";
import { addGrid } from "./grid.ts";
import { addStanding } from "./standing.ts";
import { inches, placed, textOf } from "./setting.ts";
import type { Languages } from "./setting.ts";

/** A picture for a slide: vector with a raster fallback, or a raster alone; its size in points. */
export interface SlidePicture {
  readonly svg: string | null;
  readonly png: Uint8Array | null;
  readonly jpeg: Uint8Array | null;
  readonly width: number;
  readonly height: number;
}

/** A talk to be made into a file. */
export interface Deck {
  readonly title: string;
  readonly corpus: string;
  readonly authors: readonly string[];
  readonly shape: Shape;
  readonly language: Languages;
  readonly leaves: readonly Leaf[];
  /** The picture of a box; null where it cannot be had. */
  readonly pictureOf: (box: Box) => SlidePicture | null;
}

/** A file as the library made it, and the rasters that belong in the place of its own, by their path in the file. */
export interface MadeDeck {
  readonly bytes: Uint8Array;
  readonly rasters: ReadonlyMap<string, Uint8Array>;
}

/** The titles of slides begin in one place, and are of few heights: each has a master of its own. */
function masterFor(title: Box | undefined): string {
  return title === undefined ? "Slide" : `Slide ${Math.round(title.y)} ${Math.round(title.height)}`;
}

function mastersOf(titles: readonly (Box | undefined)[]) {
  const named = titles.flatMap((title) => (title === undefined ? [] : [[masterFor(title), title] as const]));
  return [...new Map(named)].map(([name, place]) => ({ name, place }));
}

const isTitle = (box: Box): boolean => box.is === "text" && box.role === "title";

/** Makes slides with native text, tables and notes; every slide has a title for those who do not see it. */
export async function deckOf(deck: Deck): Promise<MadeDeck> {
  const { default: Presentation } = await import("pptxgenjs");
  const made = new Presentation();
  const size = slideSizes[deck.shape];
  made.defineLayout({ name: deck.shape, width: inches(size.width), height: inches(size.height) });
  made.layout = deck.shape;
  made.title = deck.title;
  made.subject = deck.corpus;
  made.author = deck.authors.join(", ");
  // The library escapes everything but this.
  made.company = escaped(deck.corpus);
  made.rtlMode = deck.language.mirrored;
  made.theme = { headFontFace: "Georgia", bodyFontFace: "Arial" };
  const titles = deck.leaves.map((leaf) => leaf.boxes.find((box) => isTitle(box)));
  for (const { name, place } of mastersOf(titles)) {
    made.defineSlideMaster({
      title: name,
      background: { color: print.sheet.slice(1) },
      objects: [
        { placeholder: { options: { name: "title", type: "title", ...placed(place), margin: 0 }, text: "" } },
      ],
    });
  }
  const rasters = new Map<string, Uint8Array>();
  for (const [at, leaf] of deck.leaves.entries()) {
    const slide = made.addSlide({ masterName: masterFor(titles[at]) });
    const media = { number: at + 1, count: 0 };
    for (const box of leaf.boxes) addBox(slide, box, deck, media, rasters);
    if (leaf.notes !== null && leaf.nth === 0) slide.addNotes(leaf.notes);
  }
  const bytes = await made.write({ outputType: "uint8array", compression: true });
  if (!(bytes instanceof Uint8Array)) throw new Error("deckOf: no bytes");
  return { bytes, rasters };
}

/** How many pictures of a slide there are already: the library names its files by that. */
interface Media {
  readonly number: number;
  count: number;
}

function addBox(
  slide: Pptx.Slide,
  box: Box,
  deck: Deck,
  media: Media,
  rasters: Map<string, Uint8Array>,
): void {
  switch (box.is) {
    case "text": {
      slide.addText(textOf(box.lines, deck.language), {
        ...placed(box),
        margin: 0,
        valign: "top",
        wrap: true,
        fit: "none",
        objectName: box.role,
        ...(isTitle(box) ? { placeholder: "title" } : {}),
      });
      return;
    }
    case "standing":
      return addStanding(slide, box.standing, box);
    case "grid":
      return addGrid(slide, box, deck.language);
    case "hairline":
      slide.addShape("line", {
        ...placed(box),
        objectName: "hairline",
        line: { color: print.hair.slice(1), width: 0.75 },
      });
      return;
    case "picture": {
      const picture = deck.pictureOf(box);
      if (picture !== null) addPicture(slide, picture, { box, alt: box.alt }, media, rasters);
    }
  }
}

function addPicture(
  slide: Pptx.Slide,
  picture: SlidePicture,
  { box, alt }: { readonly box: Place; readonly alt: string },
  media: Media,
  rasters: Map<string, Uint8Array>,
): void {
  const { svg, png, jpeg, width, height } = picture;
  const scale = Math.min(1, box.width / width, box.height / height);
  const place = placed({
    x: box.x + (box.width - width * scale) / 2,
    y: box.y + (box.height - height * scale) / 2,
    width: width * scale,
    height: height * scale,
  });
  const data =
    svg !== null
      ? `data:image/svg+xml;base64,${base64(new TextEncoder().encode(svg))}`
      : jpeg !== null
        ? `data:image/jpeg;base64,${base64(jpeg)}`
        : `data:image/png;base64,${base64(png ?? new Uint8Array())}`;
  media.count += 1;
  if (svg !== null && png !== null) {
    rasters.set(`ppt/media/image-${media.number}-${media.count}.png`, png);
    media.count += 1;
  }
  slide.addImage({ ...place, data, altText: alt, objectName: "picture" });
}
