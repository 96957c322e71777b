import { printFont } from "../../print/fonts.ts";
import type { PrintFont } from "../../print/fonts.ts";
import { woffOf } from "../../print/text/woff.ts";

/** Words in letters from the left, with figures, points and signs; other scripts are set in what the reader's machine has. */
const fromLeft = /^[\p{Script=Latin}\p{Script=Greek}\p{Script=Common}\p{Script=Inherited}]+$/u;
/** What somebody may type in search, whatever the text has. */
const typed = String.fromCharCode(...Array.from({ length: 95 }, (_, n) => 32 + n));

/**
 * Style rules that hold the letters of a text, given as HTML, in the book serif and the plain sans, as much of these fonts as it uses. The
 * semi-bold of the sans is left to the browser: it would be a fifth of the page.
 */
export function facesFor(html: string): string {
  const text = html.replace(/<[^>]*>/g, " ").replace(/&\S{2,5};/g, " ");
  // Only what is joined within a word differs from its letters: figures are not.
  const words = [...new Set(text.split(/[\s\d()[\],.;:]+/u))].filter((one) => fromLeft.test(one)).sort();
  const faces = [
    printFont("Source Serif 4", 400),
    printFont("Source Serif 4", 600),
    printFont("Source Sans 3", 400),
  ];
  return faces.map((font) => faceOf(font, [...typed, ...words])).join("\n");
}

function faceOf(font: PrintFont, words: readonly string[]): string {
  const glyphs = new Set<number>();
  for (const word of words) {
    // Letters by themselves, and joined as the font joins them.
    for (const part of [...new Set(word), word]) {
      if (font.has(part)) for (const glyph of font.glyphs(part)) glyphs.add(glyph);
    }
  }
  const kept = [...glyphs].sort((a, b) => a - b);
  const data = Buffer.from(woffOf(font.bytes(), kept)).toString("base64");
  return `@font-face{font-family:"${font.family}";font-weight:${font.weight};src:url(data:font/woff;base64,${data}) format("woff")}`;
}
