import type { Figure } from "../../../plugin.ts";

/** Width in px of a figure in a file, about that of a printed page's text. */
const WIDTH = 720;

/** Draws a figure in the colours of paper and hands it over as an SVG file named after its derivation. */
export async function saveFigure(figure: Figure, id: string): Promise<void> {
  const [{ draw }, { svgText }, { print }] = await Promise.all([
    import("../../../write/figure/draw.ts"),
    import("../../../write/figure/svg-text.ts"),
    import("../../../write/pen/palette.ts"),
  ]);
  const svg = draw(figure, { document, width: WIDTH, palette: print, id: "figure" });
  const address = URL.createObjectURL(new Blob([svgText(svg)], { type: "image/svg+xml" }));
  const link = document.createElement("a");
  link.href = address;
  link.download = `${id.replace(/[^a-z0-9-]+/gi, "-")}.svg`;
  link.click();
  // The browser reads the address after the click has returned.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
