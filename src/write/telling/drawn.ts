/** A figure of a text as it was drawn or taken from its file; sizes in millimetres. */
export interface Drawn {
  readonly width: number;
  readonly height: number;
  /** Null for a picture that has no lines, a photograph. */
  readonly svg: string | null;
  /** The same in pixels; null where only lines are asked for. */
  readonly raster: { readonly type: "png" | "jpeg"; readonly bytes: Uint8Array } | null;
}

/** The figures of a text by their numbers. One that is not there could not be drawn: its words stand for it. */
export type DrawnPlates = ReadonlyMap<number, Drawn>;
