import type { Id } from "../../../base/finding.ts";
import type { Drawing } from "../../artefacts/drawing/drawing.ts";
import type { MapPage } from "../../map/scene.ts";
import type { Figure } from "../../../plugin.ts";

/** Something to be drawn, as data: what it is of, never how it is drawn. */
export type Picture =
  /** The figure of a computed number: plot data, its panels one below the other. */
  | { readonly is: "computed"; readonly derivation: Id; readonly figure: Figure }
  /** A part of the map, laid out. */
  | { readonly is: "map"; readonly map: Pick<MapPage, "scene" | "states" | "beaten"> }
  /** Things drawn to one scale. */
  | { readonly is: "drawing"; readonly drawing: Drawing }
  /** A picture that the corpus has as a file below `images/`, published and not withheld. */
  | { readonly is: "image"; readonly file: string; readonly credit: string | null };
