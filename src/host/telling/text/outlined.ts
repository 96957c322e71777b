import { allPrintFonts } from "../../print/fonts.ts";
import { settled } from "../../print/text/settled.ts";

/** A drawing with its letters as shapes: it looks the same where none of its fonts is at hand. Coordinates are to a hundredth of a px. */
export async function outlined(svg: string): Promise<string> {
  const { Resvg } = await import("@resvg/resvg-js");
  const drawing = new Resvg(settled(svg).svg, {
    font: {
      loadSystemFonts: false,
      fontFiles: allPrintFonts().map((one) => one.file),
      defaultFontFamily: "Source Sans 3",
      sansSerifFamily: "Source Sans 3",
      serifFamily: "Source Serif 4",
    },
  });
  return drawing
    .toString()
    .replace(/(?<= d=")[^"]*/g, (path) =>
      path.replace(/-?\d+\.\d+/g, (number) => String(Math.round(Number(number) * 100) / 100)),
    )
    .replace(/\n\s*/g, "\n");
}
