import { closeSync, readSync } from "node:fs";
import { say } from "../../base/text/said/said.ts";
import type { Text } from "../../base/text/said/said.ts";
import { endlessIn } from "../../show/artefacts/picture/endless/endless.ts";
import { openEnclosed } from "../enclosed.ts";
import { drawnApart } from "./images/apart.ts";
import { cleanSvg } from "./images/drawing.ts";
import { cleanJpeg } from "./images/jpeg.ts";
import type { CleanJpeg } from "./images/jpeg.ts";
import { cleanPng } from "./images/png-chunks.ts";

/** A picture of the corpus as it may be handed on: nothing is left in it but what is seen. */
export interface ImageFile {
  readonly type: "image/svg+xml" | "image/png" | "image/jpeg";
  readonly bytes: Uint8Array;
  /** In px, upright. */
  readonly width: number;
  readonly height: number;
}

/** The longest side of a photograph that had to be turned, in px: 190 mm at 300 dots to the inch. */
const longest = 2244;

/** The most pixels of a picture: as much as a machine of today can unpack. */
const mostPixels = 200_000_000;

/** The bytes of a picture file of a corpus, without what was written about it (Exif, places, editors' notes), upright; or why there are none. */
export async function imageOf(folder: string, file: string): Promise<ImageFile | { readonly refused: Text }> {
  const bytes = bytesOf(folder, file);
  if (bytes === null)
    return { refused: say`Unknown picture \`${file}\`, expected a file in \`${"images/"}\`` };
  const ending = (/\.([a-z]+)$/i.exec(file)?.[1] ?? "").toLowerCase();
  if (ending === "svg") return svgImage(bytes, file);
  const png = cleanPng(bytes);
  const jpeg = png === null ? cleanJpeg(bytes) : null;
  const one = png ?? jpeg;
  if (one !== null && one.width * one.height > mostPixels)
    return { refused: say`Unexpected size of picture \`${file}\`, expected at most ${"200"} million pixels` };
  if (png !== null) return { type: "image/png", ...png };
  if (jpeg === null)
    return { refused: say`Unexpected kind of picture \`${file}\`, expected a PNG, a JPEG or an SVG` };
  return upright(jpeg);
}

function bytesOf(folder: string, file: string): Uint8Array | null {
  const open = openEnclosed(folder, file);
  if (open === null || !open.type.startsWith("image/")) {
    if (open !== null) closeSync(open.open);
    return null;
  }
  try {
    const bytes = new Uint8Array(open.bytes);
    let at = 0;
    while (at < bytes.length) {
      const read = readSync(open.open, bytes, at, bytes.length - at, at);
      if (read === 0) break;
      at += read;
    }
    return bytes.subarray(0, at);
  } finally {
    closeSync(open.open);
  }
}

/** As what a drawing is tried, and how long that may take in ms: a hundred times as long as what a busy plan takes. */
const [trial, patience] = [
  { fitTo: { mode: "width", value: 1000 }, font: { loadSystemFonts: false } } as const,
  10_000,
];

async function svgImage(bytes: Uint8Array, file: string): Promise<ImageFile | { readonly refused: Text }> {
  const clean = cleanSvg(new TextDecoder().decode(bytes), innerImages());
  const why = clean && endlessIn(clean.svg);
  if (why === "repeated")
    return { refused: say`Unexpected drawing \`${file}\` that repeats itself, expected fewer parts` };
  if (why === "filtered")
    return { refused: say`Unexpected filters in drawing \`${file}\`, expected none that take so long` };
  if (clean === null || (await drawnApart(clean.svg, trial, patience)) === null)
    return { refused: say`Unreadable drawing \`${file}\`, expected an SVG` };
  const { svg, width, height } = clean;
  return { type: "image/svg+xml", bytes: new TextEncoder().encode(svg), width, height };
}

/** What cleans the pictures within one drawing like any other; null for one that is fetched, is of another kind, or is too much with those before it. */
function innerImages(): (address: string) => string | null {
  const known = new Map<string, string | null>();
  let pixels = 0;
  return (address) => {
    const before = known.get(address);
    if (before !== undefined) return before;
    const [, data] = /^data:image\/(?:png|jpe?g);base64,([A-Za-z0-9+/=\s]+)$/.exec(address.trim()) ?? [];
    const bytes = data === undefined ? null : new Uint8Array(Buffer.from(data, "base64"));
    const [png, jpeg] = bytes === null ? [null, null] : [cleanPng(bytes), cleanJpeg(bytes)];
    const one = png ?? jpeg;
    pixels += one === null ? 0 : one.width * one.height;
    const kept =
      one === null || pixels > mostPixels
        ? null
        : `data:image/${png === null ? "jpeg" : "png"};base64,${Buffer.from(one.bytes).toString("base64")}`;
    known.set(address, kept);
    return kept;
  };
}

/** What each orientation does to the picture, as a matrix over its own width and height (Exif 2.32, tag 0x0112). */
const turns: Readonly<Record<number, (w: number, h: number) => string>> = {
  2: (w) => `matrix(-1 0 0 1 ${w} 0)`,
  3: (w, h) => `matrix(-1 0 0 -1 ${w} ${h})`,
  4: (_, h) => `matrix(1 0 0 -1 0 ${h})`,
  5: () => "matrix(0 1 1 0 0 0)",
  6: (_, h) => `matrix(0 1 -1 0 ${h} 0)`,
  7: (w, h) => `matrix(0 -1 -1 0 ${h} ${w})`,
  8: (w) => `matrix(0 -1 1 0 0 ${w})`,
};

/** A photograph with its pixels turned as its camera was held: many programs do not look at the note that says so. */
async function upright({ bytes, orientation, width, height }: CleanJpeg): Promise<ImageFile> {
  const turn = turns[orientation];
  if (turn === undefined) return { type: "image/jpeg", bytes, width, height };
  const [across, down] = orientation >= 5 ? [height, width] : [width, height];
  const scale = Math.min(1, longest / Math.max(across, down));
  const { Resvg } = await import("@resvg/resvg-js");
  const address = `data:image/jpeg;base64,${Buffer.from(bytes).toString("base64")}`;
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" width="${across}" height="${down}" viewBox="0 0 ${across} ${down}"><image width="${width}" height="${height}" transform="${turn(width, height)}" xlink:href="${address}"/></svg>`;
  const drawn = new Resvg(svg, {
    fitTo: { mode: "width", value: Math.round(across * scale) },
    font: { loadSystemFonts: false },
  }).render();
  return {
    type: "image/png",
    bytes: new Uint8Array(drawn.asPng()),
    width: drawn.width,
    height: drawn.height,
  };
}
