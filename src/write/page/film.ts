import { escaped } from "../../base/text/steering.ts";
import { speakerOf } from "../../link/names/spoken.ts";
import type { Film } from "../../show/telling/page/film.ts";
import { nameColumn } from "../map/film/band-names.ts";
import { drawMap } from "../map/map.ts";
import { widthOf } from "../map/measure.ts";
import { ofThePage } from "../pen/screen.ts";
import { svgPen } from "../pen/svg-pen.ts";
import { merged, rangesOf } from "./merged.ts";
import { toSheet } from "./paper.ts";
import type { Paper } from "./paper.ts";

/** Film left free around the drawing, in px. */
const margin = 24;

/** The map of a question as inline SVG of all years at once, the last to be seen; its boxes lead to their sheets. */
export function filmSvg(paper: Paper, { scene, stages }: Film, name: string): string {
  const column = nameColumn + 8;
  const window = {
    x: -column,
    y: -margin,
    width: scene.width + margin + column,
    height: scene.height + 2 * margin,
  };
  const drawings = stages.map(({ states, beaten }) => {
    const pen = svgPen(ofThePage);
    drawMap(pen, { scene, states, beaten, window, distance: "near", scale: 1 });
    return partsOf(pen.drawn()).map((one) => leading(paper, one));
  });
  const last = stages.length - 1;
  const parts = merged(drawings).map(({ text, of }) => {
    if (of.length === stages.length) return text;
    const hidden = of.includes(last) ? "" : ' display="none"';
    return text.replace(/^<\w+/, (tag) => `${tag} data-y="${rangesOf(of)}"${hidden}`);
  });
  const box = [window.x, window.y, window.width, window.height].map((one) => Math.round(one * 100) / 100);
  return `<svg role="group" aria-label="${escaped(name)}" width="${box[2] ?? 0}" height="${box[3] ?? 0}" viewBox="${box.join(" ")}">\n${parts.join("\n")}\n</svg>`;
}

/** What was drawn, by elements; what is of one box stays together, but for the boxes in it, since no link may stand in another. */
function partsOf(drawn: string): readonly string[] {
  const parts: string[] = [];
  const heads: string[] = [];
  let open: string[] = [];
  const close = (): void => {
    const head = heads.at(-1);
    if (head !== undefined && open.length > 0) parts.push([head, ...open, "</g>"].join("\n"));
    open = [];
  };
  for (const line of drawn.split("\n")) {
    if (line.startsWith("<g id=")) {
      close();
      heads.push(line);
    } else if (line === "</g>" && heads.length > 0) {
      close();
      heads.pop();
    } else if (heads.length > 0) open.push(line);
    else parts.push(line);
  }
  return parts;
}

/** A box as a link to the sheet of what it shows, and every font by its class: fonts are named once for the page. */
function leading(paper: Paper, part: string): string {
  const [head = "", id = ""] = /^<g id="[^"]*" data-record="([^"]*)">/.exec(part) ?? [];
  const named = part.replace(/<text ([^>]*)>([^<]*)<\/text>/g, (_, attributes: string, text: string) =>
    lettered(attributes, text),
  );
  if (head === "") return named;
  const record = speakerOf(unescaped(id));
  const inside = named.slice(head.length, -"</g>".length);
  return paper.places.has(record) ? `<a href="${toSheet(record)}">${inside}</a>` : `<g>${inside}</g>`;
}

/** Words in as much room as they were laid out in, whatever fonts the reader's machine has. */
function lettered(attributes: string, text: string): string {
  const family = / font-family="([^"]*)"/.exec(attributes);
  const face = family?.[1]?.includes("Serif") === true ? "serif" : "sans";
  const size = Number(/ font-size="([^"]*)"/.exec(attributes)?.[1] ?? 0);
  const weight = attributes.includes(' font-weight="600"') ? 600 : 400;
  const width = Math.round(widthOf(unescaped(text), { face, weight }, size) * 10) / 10;
  const room = width > 0 ? ` textLength="${width}" lengthAdjust="spacingAndGlyphs"` : "";
  return `<text ${attributes.replace(family?.[0] ?? "", "")} class="${face}"${room}>${text}</text>`;
}

function unescaped(text: string): string {
  return text
    .replace(/&lt;/g, "<")
    .replace(/&gt;/g, ">")
    .replace(/&quot;/g, '"')
    .replace(/&amp;/g, "&");
}
