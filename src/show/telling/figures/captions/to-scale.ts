import type { Id } from "../../../../base/finding.ts";
import { formatSI } from "../../../../base/quantity/quantity-print.ts";
import { row, say } from "../../../../base/text/said/said.ts";
import type { Text } from "../../../../base/text/said/said.ts";
import { paragraph } from "../../../../base/text/said/paragraph.ts";
import { drawingOf, drawingWithParts } from "../../../artefacts/drawing/drawing.ts";
import type { Drawing } from "../../../artefacts/drawing/drawing.ts";
import { sizeWords } from "../../../artefacts/si-words.ts";
import { takingOf } from "../../../artefacts/taken.ts";
import { shownUnder } from "../../../withhold.ts";
import type { Inlines } from "../../blocks/block.ts";
import type { Captioned, FigureDesk, PaperRoom } from "../desk.ts";
import { credit, dataFrom, joined } from "./credits.ts";
import { mergedSaid } from "./merged.ts";

/** Things drawn to scale, one with its parts or several side by side, with a caption; null where none of them has a shape that may be shown. */
export function drawingFigure({ model }: FigureDesk, ids: readonly Id[], room: PaperRoom): Captioned | null {
  const [only] = ids;
  const drawing =
    ids.length === 1 && only !== undefined && shownUnder(model)(only)
      ? drawingWithParts(model, only)
      : drawingOf(model, ids);
  const things = drawing?.groups.flat() ?? [];
  if (drawing === null || things.length === 0) return null;
  const { graph } = model;
  const title = say`${row(things.map((one) => one.name))}`;
  const used = things.flatMap(({ id }) =>
    [false, true].flatMap((supplied) => takingOf(model, id, false, supplied).taken.flatMap((one) => one.ids)),
  );
  return {
    title,
    picture: { is: "drawing", drawing },
    alt: paragraph(things.map((one) => one.words)),
    caption: joined([
      [{ is: "strong", of: [title, "."] }],
      [say`Drawn to scale from recorded dimensions, ${room.scaleOf(drawing)}; a scheme, no survey.`],
      legendOf(drawing),
      unitOf(drawing),
      undrawn(drawing),
      dataFrom(graph, used),
      credit(graph),
    ]),
    cautions: mergedSaid(
      model,
      things.map((one) => one.id),
    ),
    computation: null,
  };
}

/** What its lines mean, as far as they are in it. */
function legendOf({ groups }: Drawing): Inlines {
  const things = groups.flat();
  const states = things.flatMap((one) => one.outline.edges.map((edge) => edge.state));
  const told: readonly (Text | null)[] = [
    things.some((one) => one.thin.length > 0)
      ? say`Thin outlines: one standard uncertainty less and more.`
      : null,
    states.includes("broken") ? say`Jagged edges: preserved to there, a lower bound.` : null,
    states.includes("supplied") ? say`Dashed edges: reconstructed, or an upper bound.` : null,
    things.some((one) => one.form === "profile")
      ? say`Widths of a profile stand at equal steps from rim to base.`
      : null,
    groups.length > 1 ? say`The record gives parts no places; they stand side by side.` : null,
  ];
  return joined(told.map((one): Inlines => (one === null ? [] : [one])));
}

/** What the unit of the second bar is. */
function unitOf({ units }: Drawing): Inlines {
  const [unit] = units;
  if (unit === undefined) return [];
  const size = unit.u > 0 ? sizeWords(unit.size, unit.u, "length") : formatSI(unit.size, "length");
  return [say`Second bar: 1 ${unit.name} is ${size} (${unit.source}).`];
}

function undrawn({ undrawn: all }: Drawing): Inlines {
  return joined(
    all.map(({ name, lacks }): Inlines => [
      say`${name} is not drawn: nothing measured gives its ${row(lacks)}.`,
    ]),
  );
}
