import { inEnglish } from "../../../base/text/said/english.ts";
import { say } from "../../../base/text/said/said.ts";
import type { Text } from "../../../base/text/said/said.ts";
import type { Captioned } from "../../../show/telling/figures/desk.ts";
import { picturePages } from "../../../write/pictures/picture.ts";
import type { Printed } from "../../../write/pictures/picture.ts";
import type { Made } from "../../../write/telling/made.ts";
import { imageOf } from "../../print/image.ts";
import { pdfOf } from "../../print/pdf.ts";
import { pngApart, pngOf } from "../../print/png.ts";
import { svgWithFonts } from "../../print/svg.ts";
import { signsLacking } from "../../print/text/settled.ts";
import { svgDocument } from "../../print/svg-document.ts";
import type { Refusal } from "../kind.ts";
import type { FileFormat, Order } from "./figure-order.ts";

/** The files of a figure, and what has to be said about them. */
export interface DrawnFiles {
  readonly files: readonly Made[];
  readonly pages: number;
  readonly lacking: readonly string[];
}

/** The highest that a drawing of the corpus stands on a page, in mm. */
const highest = 230;

/** Draws a figure in every format of an order; a photograph of the corpus is handed on as it is, cleaned. */
export async function drawnFiles(
  folder: string,
  { picture, title }: Captioned,
  name: string,
  order: Order,
): Promise<DrawnFiles | Refusal> {
  if (picture.is === "image") {
    const image = await imageOf(folder, picture.file);
    if ("refused" in image) return image;
    if (image.type !== "image/svg+xml") {
      const ending = image.type === "image/png" ? "png" : "jpg";
      return { files: [{ path: `${name}.${ending}`, content: image.bytes }], pages: 1, lacking: [] };
    }
    const svg = new TextDecoder().decode(image.bytes);
    const width = Math.min(order.width, (highest * image.width) / image.height);
    const own = { svg, width, height: (width * image.height) / image.width };
    const files = await inFormats(own, name, title, order, pngApart);
    if (files !== null) return { files, pages: 1, lacking: [] };
    return { refused: say`Unexpected drawing \`${picture.file}\`, expected one that is drawn sooner` };
  }
  const pages = picturePages(picture, { width: order.width, document: svgDocument() });
  const files: Made[] = [];
  for (const [n, page] of pages.entries())
    files.push(
      ...((await inFormats(page, pages.length === 1 ? name : `${name}-${n + 1}`, title, order, pngOf)) ?? []),
    );
  const lacking = new Set(pages.flatMap(({ svg }) => signsLacking(svg)));
  return { files, pages: pages.length, lacking: [...lacking] };
}

/** A page in every format of an order; null where it could not be drawn as pixels. */
async function inFormats(
  page: Printed,
  name: string,
  title: Text,
  order: Order,
  inPixels: typeof pngApart,
): Promise<readonly Made[] | null> {
  const files: Made[] = [];
  for (const format of order.formats) {
    const content = await contentOf(page, format, order.dpi, inEnglish(title), inPixels);
    if (content === null) return null;
    files.push({ path: `${name}.${format}`, content });
  }
  return files;
}

async function contentOf(
  { svg, width, height }: Printed,
  format: FileFormat,
  dpi: number,
  title: string,
  inPixels: typeof pngApart,
): Promise<string | Uint8Array | null> {
  // A drawing of the corpus has a style sheet of its own, which names fonts as it does.
  if (format === "svg") return svg.includes("<style") ? svg : svgWithFonts(svg);
  return format === "pdf" ? pdfOf(svg, { width, height, title }) : inPixels(svg, { width, dpi });
}
