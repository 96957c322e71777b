import type { Id } from "../../../base/finding.ts";
import type { Text } from "../../../base/text/said/said.ts";
import type { WrittenMap } from "../../../read/edit/written.ts";
import type { Point, Taken } from "./points.ts";

/** By what the scale of a picture is set. */
export type ScaleWay = "bar" | "known" | "printed";

/** The scale as it is being set: texts are as typed. */
export interface ScaleAsked {
  readonly way: ScaleWay;
  /** The length of the bar: `20.0 cm`. */
  readonly length: string;
  /** The measurement that tells how long something in the picture is. */
  readonly known: Id | null;
  /** The printed ratio `1:150`, pixels to the inch, and what both together are good to (1 s): `1 %`. */
  readonly ratio: string;
  readonly perInch: string;
  readonly within: string;
  /** Both ends of the length, once for each time they were pointed at. */
  readonly readings: readonly (readonly Point[])[];
}

/** Something that is being measured on a picture. */
export interface PictureAsked {
  readonly image: Id;
  /** Of the picture, in its own pixels. */
  readonly width: number;
  readonly height: number;
  readonly scale: ScaleAsked;
  readonly taken: Taken;
  readonly readings: readonly (readonly Point[])[];
  /** What each coordinate of a point is good to, in pixels either way; empty for the usual. */
  readonly halfWidth: string;
  readonly of: Id | null;
  readonly dimension: string;
  readonly between: string;
  readonly unit: string;
  readonly basis: string;
  readonly by: Id | null;
  readonly year: string;
}

/** Where something that was typed is amiss. */
export interface PictureTrouble {
  readonly at:
    "length" | "known" | "ratio" | "perInch" | "within" | "halfWidth" | "points" | "dimension" | "year";
  readonly message: Text;
}

/** Another measurement of the same dimension, held against the one that is being taken. */
export interface ComparedLine {
  readonly id: Id;
  readonly figure: string;
  readonly si: string;
  readonly by: Text;
  readonly year: Text | null;
  /** How the two lie: they agree, they would be told as in conflict, or they cannot be compared. */
  readonly verdict: "agrees" | "conflicts" | "apart";
  /** The difference, in words; null where nothing can be compared. */
  readonly difference: string | null;
  /** In conflict, but not when the error of the scale is taken in, which the finding leaves out. */
  readonly withinScale: boolean;
}

/** What comes of what is being measured. */
export interface PictureTold {
  readonly troubles: readonly PictureTrouble[];
  /** How the length of the bar is read, in SI with 1 s. */
  readonly lengthRead: string | null;
  /** The scale, and what it is uncertain by. */
  readonly scale: Text | null;
  readonly figure: {
    /** In SI with the whole uncertainty (1 s), and each reading. */
    readonly si: string;
    readonly readings: readonly string[];
    /** What is its own of that, and what it has in common with others of its picture. */
    readonly own: Text;
    readonly shared: Text | null;
  } | null;
  readonly cautions: readonly Text[];
  readonly compared: readonly ComparedLine[];
  /** What is to be written; null before it is whole. */
  readonly record: WrittenMap | null;
}
