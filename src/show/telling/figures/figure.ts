import { say } from "../../../base/text/said/said.ts";
import type { Text } from "../../../base/text/said/said.ts";
import type { Graph } from "../../../link/graph.ts";
import type { Block, Manuscript } from "../blocks/block.ts";
import { withholdingSaid } from "../withholding.ts";
import { computedFigure } from "./captions/computed.ts";
import { imageFigure } from "./captions/image.ts";
import { aroundFigures, questionFigures } from "./captions/part.ts";
import { drawingFigure } from "./captions/to-scale.ts";
import type { Captioned, FigureDesk, PaperRoom } from "./desk.ts";
import type { Wanted } from "./wanted.ts";

/** The figures that something asked for comes to, on paper with some room; none where there is nothing of it that may be shown. */
export function captioned(desk: FigureDesk, wanted: Wanted, room: PaperRoom): readonly Captioned[] {
  const some = (one: Captioned | null): readonly Captioned[] => (one === null ? [] : [one]);
  switch (wanted.is) {
    case "computed":
      return some(computedFigure(desk, wanted.id));
    case "drawing":
      return some(drawingFigure(desk, wanted.ids, room));
    case "image":
      return some(imageFigure(desk, wanted.id));
    case "question":
      return questionFigures(desk, wanted.id, room);
    case "around":
      return aroundFigures(desk, wanted, room);
  }
}

/** What stands in a file beside a figure: its caption, what to be careful about, what its figures are of, and the sources it names. */
export function captionText(graph: Graph, figure: Captioned, notes: readonly Text[]): Manuscript {
  const { caption, cautions, computation, title, alt } = figure;
  const cites = caption.some((one) => typeof one === "object" && "is" in one && one.is === "citing");
  const withheld = withholdingSaid(graph);
  const blocks: readonly Block[] = [
    { is: "paragraph", of: caption },
    ...notes.map((note): Block => ({ is: "paragraph", of: [note] })),
    ...cautions.map((one): Block => ({ is: "caution", of: [one] })),
    { is: "heading", level: 2, of: [say`What it shows, for those who do not see it`] },
    { is: "paragraph", of: [alt] },
    ...(computation === null
      ? []
      : ([{ is: "heading", level: 2, of: [say`Computation`] }, { is: "computations" }] as const)),
    ...(cites ? ([{ is: "heading", level: 2, of: [say`References`] }, { is: "references" }] as const) : []),
    ...withheld.map((one): Block => ({ is: "paragraph", of: [one] })),
  ];
  return {
    title,
    authors: graph.settings.authors.map(({ name }) => name),
    language: graph.settings.language,
    blocks,
    computations: computation === null ? [] : [computation],
  };
}
