import { inEnglish } from "../../base/text/said/english.ts";
import { worded } from "../../base/text/said/worded.ts";
import type * as plugin from "../../plugin.ts";
import { draw } from "../figure/draw.ts";
import type { Figure, Panel } from "../figure/figure.ts";
import { svgText } from "../figure/svg-text.ts";
import { onPaper, pageHeight, paper, pxPerMm, sizedTo } from "./paper.ts";
import type { Printed } from "./paper.ts";
import { inParts } from "./rows.ts";

/** What a drawing is made on: its width in mm, a document, and what begins every id in it. */
export interface Ground {
  readonly width: number;
  readonly document: Document;
  readonly name: string;
  /** The most that the plot of one panel is high, in mm, where its rows allow it. */
  readonly tallest?: number;
}

/** Draws the figure of a computed number, its panels one below the other. */
export function computedSvg(figure: plugin.Figure, ground: Ground): Printed {
  return drawn(worded(figure, inEnglish), ground);
}

/** The same on as many pages as its height needs: what goes over a page's foot goes on with the next panel, or the next rows of a long one. */
export function computedPages(figure: plugin.Figure, ground: Ground): readonly Printed[] {
  const whole = worded(figure, inEnglish);
  const one = drawn(whole, ground);
  if (one.height <= pageHeight) return [one];
  const heightOf = (panels: readonly Panel[]): number => drawn({ ...whole, panels }, ground).height;
  const pages: { readonly from: number; panels: readonly Panel[] }[] = [];
  whole.panels.forEach((panel, place) => {
    for (const part of partsOf(panel, (one) => heightOf([one]))) {
      const last = pages.at(-1);
      const isNext = last !== undefined && last.panels.length === place - last.from;
      if (isNext && heightOf([...last.panels, part]) <= pageHeight) last.panels = [...last.panels, part];
      else pages.push({ from: place, panels: [part] });
    }
  });
  const isLettered = whole.panels.length > 1;
  return pages.map(({ from, panels }, page) =>
    drawn(
      { ...whole, panels },
      { ...ground, name: `${ground.name}-${page + 1}` },
      isLettered ? from : undefined,
    ),
  );
}

function partsOf(panel: Panel, heightOf: (panel: Panel) => number): readonly Panel[] {
  const rows = panel.y.names?.length ?? 0;
  const height = heightOf(panel);
  if (rows < 2 || height <= pageHeight) return [panel];
  // About as many rows as the page holds, and fewer until they do.
  for (let most = Math.ceil((rows * pageHeight) / height); most > 1; most--) {
    const parts = inParts(panel, most);
    if (parts.every((one) => heightOf(one) <= pageHeight)) return parts;
  }
  return inParts(panel, 1);
}

function drawn(figure: Figure, ground: Ground, from?: number): Printed {
  const { width, name, tallest, document } = ground;
  const inPx = (mm: number): number => Math.floor((mm * pxPerMm) / onPaper);
  const px = inPx(width);
  const more = {
    ...(from === undefined ? {} : { from }),
    ...(tallest === undefined ? {} : { tallest: inPx(tallest) }),
  };
  const svg = draw(figure, { document, width: px, palette: paper, id: name, ...more });
  const height = (Number(svg.getAttribute("height")) / px) * width;
  return sizedTo(svgText(svg), width, height);
}
