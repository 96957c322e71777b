import type { ResvgRenderOptions } from "@resvg/resvg-js";
import { allPrintFonts } from "./fonts.ts";
import { drawnApart } from "./images/apart.ts";
import { settled } from "./text/settled.ts";

/** How large a picture is printed: its width in mm, and how many dots an inch has. */
export interface Printed {
  readonly width: number;
  readonly dpi: number;
}

/** Draws an SVG as a PNG on white with the bundled fonts alone; the file says how many dots an inch has. */
export async function pngOf(svg: string, printed: Printed): Promise<Uint8Array> {
  const { Resvg } = await import("@resvg/resvg-js");
  const drawn = new Resvg(settled(svg).svg, optionsFor(printed));
  return withResolution(drawn.render().asPng(), printed.dpi);
}

/** The same of a drawing of the corpus, which nobody knows; null where it takes longer, in ms, than many times what a busy plan takes at its finest. */
export async function pngApart(svg: string, printed: Printed, patience = 30_000): Promise<Uint8Array | null> {
  const png = await drawnApart(settled(svg).svg, optionsFor(printed), patience);
  return png && withResolution(png, printed.dpi);
}

function optionsFor({ width, dpi }: Printed): ResvgRenderOptions {
  return {
    fitTo: { mode: "width", value: Math.round((width / 25.4) * dpi) },
    background: "#ffffff",
    font: {
      loadSystemFonts: false,
      fontFiles: allPrintFonts().map((one) => one.file),
      defaultFontFamily: "Source Sans 3",
      sansSerifFamily: "Source Sans 3",
      serifFamily: "Source Serif 4",
    },
  };
}

/** Puts the resolution into a PNG: a `pHYs` chunk behind the header, in dots per metre. */
function withResolution(png: Uint8Array, dpi: number): Uint8Array {
  const header = 8 + 25;
  const chunk = new Uint8Array(21);
  const view = new DataView(chunk.buffer);
  view.setUint32(0, 9);
  chunk.set(new TextEncoder().encode("pHYs"), 4);
  const dots = Math.round(dpi / 0.0254);
  view.setUint32(8, dots);
  view.setUint32(12, dots);
  view.setUint8(16, 1);
  view.setUint32(17, crc(chunk.subarray(4, 17)));
  const whole = new Uint8Array(png.length + chunk.length);
  whole.set(png.subarray(0, header));
  whole.set(chunk, header);
  whole.set(png.subarray(header), header + chunk.length);
  return whole;
}

/** The checksum of PNG: CRC-32 (ISO 3309). */
function crc(bytes: Uint8Array): number {
  let value = 0xffffffff;
  for (const byte of bytes) {
    value ^= byte;
    for (let bit = 0; bit < 8; bit++) value = (value >>> 1) ^ (value & 1 ? 0xedb88320 : 0);
  }
  return (value ^ 0xffffffff) >>> 0;
}
