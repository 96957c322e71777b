import type { Id } from "../../base/finding.ts";
import type { Reported } from "../report/report.ts";
import { drawingOf } from "./drawing/drawing.ts";
import type { Drawing } from "./drawing/drawing.ts";
import { thingTree } from "./tree.ts";
import type { Thing } from "./tree.ts";

/** The tree of things, and those of them that are to be drawn side by side. */
export interface ArtefactsPage {
  readonly things: readonly Thing[];
  readonly drawing: Drawing | null;
}

/** The page of all things; `draw` names those to be drawn. */
export function artefactsPage(model: Reported, draw: readonly Id[]): ArtefactsPage {
  return { things: thingTree(model), drawing: draw.length > 0 ? drawingOf(model, draw) : null };
}
