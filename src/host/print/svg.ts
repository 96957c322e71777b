import type { PrintFont } from "./fonts.ts";
import { woffOf } from "./text/woff.ts";
import { runsIn } from "./text/settled.ts";

/** An SVG with the fonts of its own words in it, as much of them as it needs: it looks the same on a machine that has none of them. */
export function svgWithFonts(svg: string): string {
  const used = new Map<PrintFont, Set<number>>();
  for (const { font, text } of runsIn(svg)) {
    const glyphs = used.get(font) ?? new Set<number>();
    // Each word by itself too: a renderer may shape words one by one.
    for (const part of [text, ...text.split(" ")]) for (const glyph of font.glyphs(part)) glyphs.add(glyph);
    used.set(font, glyphs);
  }
  const faces = [...used]
    .sort(([a], [b]) => (a.name < b.name ? -1 : 1))
    .map(([font, glyphs]) => faceOf(font, glyphs));
  return svg.replace(/<svg\b[^>]*>/, (root) => `${root}\n<style>${faces.join("")}</style>`);
}

function faceOf({ family, weight, bytes }: PrintFont, glyphs: ReadonlySet<number>): string {
  const woff = Buffer.from(
    woffOf(
      bytes(),
      [...glyphs].sort((a, b) => a - b),
    ),
  ).toString("base64");
  return `@font-face{font-family:"${family}";font-weight:${weight};src:url(data:font/woff;base64,${woff}) format("woff")}`;
}
