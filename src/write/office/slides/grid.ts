import type Pptx from "pptxgenjs";
import type { Grid, GridRow, Place } from "../../../show/telling/talk/layout/leaf.ts";
import { cellInset, standingMark } from "../../../show/telling/talk/layout/grid.ts";
import { print } from "../../pen/palette.ts";
import { addStanding } from "./standing.ts";
import { inches, placed, textOf } from "./setting.ts";
import type { Languages } from "./setting.ts";

/** Adds a table as a native one, hairlines between its rows; the line of each standing is drawn beside its word. */
export function addGrid(slide: Pptx.Slide, grid: Grid & Place, language: Languages): void {
  const { columns, head, rows, standings, caption } = grid;
  const order = <T>(cells: readonly T[]): readonly T[] => (language.mirrored ? cells.toReversed() : cells);
  const all = [head, ...rows];
  const cellsOf = (row: GridRow, isHead: boolean): Pptx.TableCell[] => [
    ...order(
      row.cells.map((cell, at): Pptx.TableCell => {
        const marked = at === standings && !isHead ? standingMark.width + standingMark.gap : 0;
        const [inner, outer] = [cellInset.across + marked, cellInset.across];
        const [left, right] = language.mirrored ? [outer, inner] : [inner, outer];
        const line: Pptx.BorderProps = {
          type: "solid",
          pt: isHead ? 1 : 0.75,
          color: print[isHead ? "ink" : "hair"].slice(1),
        };
        const none: Pptx.BorderProps = { type: "none" };
        return {
          text: cell.runs.length === 0 ? [{ text: "" }] : textOf([cell], language),
          options: {
            margin: [cellInset.down, right, cellInset.down, left],
            border: [none, none, line, none],
            valign: "top",
          },
        };
      }),
    ),
  ];
  slide.addTable(
    all.map((row, at) => cellsOf(row, at === 0)),
    {
      ...placed(grid),
      colW: [...order(columns)].map(inches),
      rowH: all.map((row) => inches(row.height)),
      objectName: caption,
    },
  );
  if (standings === null) return;
  const before = columns.slice(0, standings).reduce((sum, width) => sum + width, 0);
  const x = grid.x + before + cellInset.across;
  let y = grid.y + head.height;
  for (const { standing, height } of rows) {
    const place = { x, y: y + cellInset.down + 6, width: standingMark.width, height: 12 };
    const at = language.mirrored ? { ...place, x: 2 * grid.x + grid.width - place.x - place.width } : place;
    if (standing !== null) addStanding(slide, standing, at);
    y += height;
  }
}
