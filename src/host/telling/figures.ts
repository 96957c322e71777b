import { row, say } from "../../base/text/said/said.ts";
import type { Text } from "../../base/text/said/said.ts";
import { ofAllYears } from "../../show/judged/suppose/supposed.ts";
import { captioned, captionText } from "../../show/telling/figures/figure.ts";
import type { FigureDesk, PaperRoom } from "../../show/telling/figures/desk.ts";
import { wantedFigures } from "../../show/telling/figures/wanted.ts";
import type { Wanted } from "../../show/telling/figures/wanted.ts";
import { sightFor } from "../../write/pictures/section.ts";
import { scalesOf } from "../../write/pictures/to-scale.ts";
import { markdownOf } from "../../write/telling/markdown/markdown.ts";
import type { Made } from "../../write/telling/made.ts";
import { setWithSources } from "../../write/telling/set/sources.ts";
import { drawnFiles } from "./files/figure-files.ts";
import type { DrawnFiles } from "./files/figure-files.ts";
import { fileFormats, listIn, orderIn, widths } from "./files/figure-order.ts";
import type { Order } from "./files/figure-order.ts";
import type { Kind, Refusal, Told } from "./kind.ts";

/** Computed figures, parts of the map and drawings to scale for print, each with its caption in a file beside it. */
export const figures: Kind = {
  doc: "figures for print, each with its caption in a file beside it",
  formats: [...fileFormats],
  several: true,
  options: [
    {
      name: "of",
      takes: "ids",
      several: true,
      doc: "numbers, artefacts (A+B side by side), images, map:QUESTION, around:ID:STEPS; every computed number if left out",
    },
    { name: "width", takes: "mm", doc: `the width in mm: ${widths.join(", ")} (85 if left out)` },
    { name: "format", takes: "formats", several: true, doc: "svg, pdf, png, or several of them" },
    { name: "dpi", takes: "dpi", doc: "how fine a png is: 300, 600 (if left out) or 1200 dots to the inch" },
  ],
  reach: {},
  make: async (told, format, _name, asked) => {
    const order = orderIn(asked, format);
    if ("refused" in order) return order;
    const wanted = wantedFigures(told.model, listIn(asked["of"]));
    if ("refused" in wanted) return wanted;
    const desk = await deskOf(told);
    if (desk === null) return { refused: say`The corpus cannot be read without its lens.` };
    const made: Made[] = [];
    for (const one of wanted) {
      const files = await filesOf(told, desk, one, order);
      if ("refused" in files) return files;
      made.push(...files);
    }
    if (made.length === 0) return { refused: say`Nothing to draw, expected a number that was computed` };
    return made;
  },
};

async function deskOf({ model, plugins, under }: Told): Promise<FigureDesk | null> {
  const lens = ofAllYears(model.lens);
  const whole = model.lens.asOf === undefined ? model : (await under(lens)).model;
  return whole === null ? null : { model, whole, plugins };
}

async function filesOf(
  { folder, model }: Told,
  desk: FigureDesk,
  wanted: Wanted,
  order: Order,
): Promise<readonly Made[] | Refusal> {
  const found = captioned(desk, wanted, roomOn(order.width));
  if (found.length === 0) return { refused: nothingOf(wanted) };
  const made: Made[] = [];
  for (const [n, figure] of found.entries()) {
    const name = found.length === 1 ? wanted.name : `${wanted.name}-${n + 1}`;
    const drawn = await drawnFiles(folder, figure, name, order);
    if ("refused" in drawn) return drawn;
    const { graph } = model;
    const text = captionText(graph, figure, notesOn(drawn));
    const set = await setWithSources(text, graph, graph.citationStyle);
    made.push(...drawn.files, ...markdownOf(set, `${name}.caption`, new Map()));
  }
  return made;
}

function roomOn(width: number): PaperRoom {
  return {
    reads: (scene) => {
      const sight = sightFor({ scene }, width);
      return sight === null ? "not" : sight.distance === "near" ? "whole" : "short";
    },
    scaleOf: (drawing) => scalesOf(drawing, width),
  };
}

function nothingOf(wanted: Wanted): Text {
  const id = "id" in wanted ? wanted.id : wanted.ids.join("+");
  switch (wanted.is) {
    case "computed":
      return say`Nothing to draw of \`${id}\`, expected a number that was computed and has a figure`;
    case "drawing":
      return say`Nothing to draw of \`${id}\`, expected an artefact with a shape and its dimensions`;
    case "image":
      return say`Nothing to show of \`${id}\`, expected a picture that may be published`;
    default:
      return say`Nothing to draw of \`${id}\`, expected something that the map shows`;
  }
}

function notesOn({ pages, lacking }: DrawnFiles): readonly Text[] {
  return [
    ...(pages > 1 ? [say`It is on ${String(pages)} pages.`] : []),
    ...(lacking.length > 0
      ? [
          say`The fonts of PDF and PNG have no shape for ${row([...lacking], "comma")}: there an empty box stands for each; an SVG shows them where the reader's machine has a font for them.`,
        ]
      : []),
  ];
}
