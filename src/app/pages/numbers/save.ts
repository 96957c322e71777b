import type { Figure } from "../../../write/figure/figure.ts";
import { print } from "../../../write/pen/palette.ts";
import { saveSvg } from "../../parts/save.ts";

/** Width in px of a figure in a file, about that of a printed page's text. */
const WIDTH = 720;

/** Draws a figure in the colours of paper and hands it over as an SVG file named after its derivation. */
export async function saveFigure(figure: Figure, id: string): Promise<void> {
  const [{ draw }, { svgText }] = await Promise.all([
    import("../../../write/figure/draw.ts"),
    import("../../../write/figure/svg-text.ts"),
  ]);
  const svg = draw(figure, { document, width: WIDTH, palette: print, id: "figure" });
  saveSvg(svgText(svg), `${id.replace(/[^a-z0-9-]+/gi, "-")}.svg`);
}
