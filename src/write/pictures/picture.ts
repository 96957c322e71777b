import type { Picture } from "../../show/telling/blocks/picture.ts";
import { computedPages, computedSvg } from "./computed.ts";
import type { Printed } from "./paper.ts";
import { sectionSvg } from "./section.ts";
import { toScalePages, toScaleSvg } from "./to-scale.ts";

export type { Printed } from "./paper.ts";

/** A picture that is drawn; an image is none: its bytes are the file's own. */
export type DrawnPicture = Exclude<Picture, { readonly is: "image" }>;

/** What a picture is drawn for: its width on paper in mm, a document to draw in, and what begins every id in it where several stand in one file. */
export interface Paper {
  readonly width: number;
  readonly document: Document;
  readonly name?: string;
  /** The most that the plot of one panel is high, in mm, where its rows allow it. */
  readonly tallest?: number;
}

/** Draws a picture for paper in one piece, black on white, however high it becomes; its size is in mm. */
export function pictureSvg(picture: DrawnPicture, on: Paper): Printed {
  const name = on.name ?? "picture";
  switch (picture.is) {
    case "computed":
      return computedSvg(picture.figure, { ...on, name });
    case "map":
      return sectionSvg(picture.map, on.width, `${name}-`, "A part of the map");
    case "drawing":
      return toScaleSvg(picture.drawing, on.width, `${name}-`);
  }
}

/** Draws a picture for paper in pieces that each stand on a page: none is higher than 230 mm. */
export function picturePages(picture: DrawnPicture, on: Paper): readonly Printed[] {
  const name = on.name ?? "picture";
  switch (picture.is) {
    case "computed":
      return computedPages(picture.figure, { ...on, name });
    case "map":
      return [pictureSvg(picture, on)];
    case "drawing":
      return toScalePages(picture.drawing, on.width, `${name}-`);
  }
}
