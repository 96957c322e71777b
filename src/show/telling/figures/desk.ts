import type { Text } from "../../../base/text/said/said.ts";
import type { Computed, Inlines } from "../blocks/block.ts";
import type { Picture } from "../blocks/picture.ts";
import type { Plugin } from "../../../plugin.ts";
import type { Reported } from "../../report/report.ts";
import type { Drawing } from "../../artefacts/drawing/drawing.ts";
import type { Scene } from "../../map/scene.ts";

/** What figures are made from: the model under the lens, the one of all years that maps are laid out from, and the plug-ins. */
export interface FigureDesk {
  readonly model: Reported;
  readonly whole: Reported;
  readonly plugins: readonly Plugin[];
}

/** What the paper that figures are drawn on has room for. */
export interface PaperRoom {
  /** Whether a part of the map stands on it with all its words, with short ones alone, or cannot be read. */
  readonly reads: (scene: Scene) => "whole" | "short" | "not";
  /** The scale of a drawing on it: `1:20`. */
  readonly scaleOf: (drawing: Drawing) => string;
}

/** A figure with a caption that stands by itself. */
export interface Captioned {
  readonly title: Text;
  readonly picture: Picture;
  /** What it shows, for those who do not see it. */
  readonly alt: Text;
  readonly caption: Inlines;
  /** What is to be careful about in reading it. */
  readonly cautions: readonly Text[];
  readonly computation: Computed | null;
}
